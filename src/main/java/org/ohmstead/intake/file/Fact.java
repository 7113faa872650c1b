package org.ohmstead.intake.file;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The keys of a sheet's upper part: one a line, key, then value. */
public enum Fact {
    SITE("site"),
    STRING("string"),
    TAKEN_AT("taken at"),
    TAKEN_BY("taken by"),
    INSTRUMENT("instrument"),
    CALIBRATION_DUE("instrument calibration due"),
    OHMIC_KIND("ohmic kind"),
    OHMIC_FREQUENCY("ohmic frequency", Unit.HERTZ),
    AMBIENT("ambient", Unit.CELSIUS),
    STRING_VOLTS("string volts", Unit.VOLT),
    FLOAT_CURRENT("float current", Unit.AMPERE),
    RIPPLE_CURRENT("ripple current", Unit.AMPERE),
    RIPPLE_VOLTS("ripple volts", Unit.VOLT),
    INJECTED_CURRENT("injected current", Unit.AMPERE),
    CLAMPED_CURRENT("clamped current", Unit.AMPERE),
    ON_FLOAT("on float"),
    NOTE("note");

    private static final String CHOICES =
            Arrays.stream(values()).map(Fact::shown).collect(Collectors.joining(", "));

    private static final Fact[] ALL = values();

    private final String key;
    private final @Nullable Unit kept;

    Fact(String key) {
        this(key, null);
    }

    Fact(String key, @Nullable Unit kept) {
        this.key = key;
        this.kept = kept;
    }

    public String key() {
        return key;
    }

    /** The unit in which a number is kept; null for words and dates. */
    public @Nullable Unit kept() {
        return kept;
    }

    /** The fact whose key begins the given text; the longest one wins. */
    static Optional<Fact> startOf(String plain) {
        Fact longest = null;
        for (Fact fact : ALL) {
            if (fact.begins(plain) && (longest == null || fact.key.length() > longest.key.length())) {
                longest = fact;
            }
        }
        return Optional.ofNullable(longest);
    }

    private boolean begins(String plain) {
        return plain.startsWith(key) && (plain.length() == key.length() || plain.charAt(key.length()) == ' ');
    }

    public static String choices() {
        return CHOICES;
    }

    private String shown() {
        return kept == null ? key : key + " " + kept.sign();
    }
}
