package org.ohmstead.intake.map;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ohmstead.intake.file.Fact;
import org.ohmstead.intake.file.Quantity;
import org.ohmstead.intake.file.Unit;

/** What a column may hold. */
public final class Holds {

    public static final String POSITION = "position";
    public static final String JAR_OHMIC = "jar ohmic";
    public static final String JAR_VOLTS = "jar volts";
    public static final String JAR_TEMPERATURE = "jar temperature";
    public static final String JAR_GRAVITY = "jar gravity";
    public static final String LINK = "link";
    public static final String VALUE = "value";
    public static final String QUANTITY = "quantity";
    public static final String UNIT = "unit";
    public static final String STRAP = "strap";

    /** Facts may also stand in columns: these may differ from row to row. */
    public static final List<String> ROW_FACTS = List.of("site", "string", "taken at", "taken by", "instrument");

    public static final List<String> WORDS = List.of(
            POSITION,
            JAR_OHMIC,
            JAR_VOLTS,
            JAR_TEMPERATURE,
            JAR_GRAVITY,
            LINK,
            "link 2",
            "link 3",
            "link 4",
            VALUE,
            QUANTITY,
            UNIT,
            STRAP,
            "site",
            "string",
            "taken at",
            "taken by",
            "instrument");

    private static final Pattern NUMBERED = Pattern.compile("link [2-8]");

    private Holds() {}

    public static boolean isKnown(String word) {
        return WORDS.contains(word) || isLink(word);
    }

    static boolean isReading(String word) {
        return isLink(word) || word.startsWith("jar ");
    }

    static boolean isLink(String word) {
        return word.equals(LINK) || NUMBERED.matcher(word).matches();
    }

    /** The unit in which a survey sheet keeps it; conductance stays conductance. */
    static Unit kept(String word, Unit written) {
        return switch (word) {
            case JAR_VOLTS -> Unit.VOLT;
            case JAR_TEMPERATURE -> Unit.CELSIUS;
            case JAR_GRAVITY -> Unit.GRAVITY;
            case JAR_OHMIC -> written.quantity() == Quantity.CONDUCTANCE ? Unit.SIEMENS : Unit.MILLIOHM;
            default -> Unit.MICROOHM;
        };
    }

    /** The unit that goes without saying, where neither map nor cell names one. */
    static Optional<Unit> implied(String word) {
        return switch (word) {
            case JAR_VOLTS -> Optional.of(Unit.VOLT);
            case JAR_GRAVITY -> Optional.of(Unit.GRAVITY);
            default -> Optional.empty();
        };
    }

    /** The title a survey sheet gives it. */
    static String title(String word, Unit kept) {
        return (word.startsWith("jar ") ? "jar" : word) + " " + kept.sign();
    }

    public static Optional<Fact> fact(String key) {
        return Arrays.stream(Fact.values())
                .filter(fact -> fact.key().equals(key))
                .findFirst();
    }
}
