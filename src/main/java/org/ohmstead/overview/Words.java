package org.ohmstead.overview;

import java.util.List;
import java.util.Locale;

/** Small pieces of English that several sentences need. */
final class Words {

    private static final List<String> NUMBERS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Words() {}

    /** In words up to twelve, in digits above. */
    static String number(long count) {
        return count >= 0 && count < NUMBERS.size() ? NUMBERS.get((int) count) : Figures.count(count);
    }

    /** "one string", "7 strings"; the plural is made with an s. */
    static String counted(long count, String thing) {
        return Figures.count(count) + " " + thing + (count == 1 ? "" : "s");
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** "a", "a and b", "a, b and c", "a, b and 4 more". */
    static String list(List<String> things, int most) {
        if (things.size() == 1) {
            return things.get(0);
        }
        boolean all = things.size() <= most;
        List<String> named = all ? things.subList(0, things.size() - 1) : things.subList(0, most - 1);
        String last = all ? things.get(things.size() - 1) : (things.size() - named.size()) + " more";
        return String.join(", ", named) + " and " + last;
    }
}
