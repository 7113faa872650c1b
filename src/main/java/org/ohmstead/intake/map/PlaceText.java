package org.ohmstead.intake.map;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which jar or link a row is about: "7", "Jar 7" is a jar, "7-8" the link between two, "+" and "-" the terminal links.
 *
 * @param ordinal of the jar, or of the jar before the link; {@link #LAST} for the negative terminal
 */
record PlaceText(int ordinal, boolean link) {

    static final int LAST = Integer.MAX_VALUE;
    private static final Pattern JAR = Pattern.compile("(?:[\\p{L}.#]{1,12} ?)?0{0,3}(\\d{1,4})");
    private static final Pattern BETWEEN =
            Pattern.compile("(?:[\\p{L}.#]{1,12} ?)?(\\d{1,4}) ?(?:-|–|/|>|→|to) ?(?:[\\p{L}.#]{1,12} ?)?(\\d{1,4})");

    static Optional<PlaceText> read(String text) {
        if (text.equals("+") || text.equals("-") || text.equals("−")) {
            return Optional.of(new PlaceText(text.equals("+") ? 0 : LAST, true));
        }
        Matcher between = BETWEEN.matcher(text);
        if (between.matches()) {
            int first = Integer.parseInt(between.group(1));
            int second = Integer.parseInt(between.group(2));
            return Math.abs(first - second) == 1
                    ? Optional.of(new PlaceText(Math.min(first, second), true))
                    : Optional.empty();
        }
        Matcher jar = JAR.matcher(text);
        return jar.matches() ? Optional.of(new PlaceText(Integer.parseInt(jar.group(1)), false)) : Optional.empty();
    }
}
