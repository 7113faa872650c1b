package org.ohmstead.intake.check;

import java.util.ArrayList;
import java.util.List;

/** Says which of many: "jar 17", "jars 3, 7–9". */
final class Words {

    private static final int MOST_SHOWN = 8;

    private Words() {}

    /** @param numbers ascending, at least one */
    static String counted(String noun, int[] numbers) {
        List<String> ranges = ranges(numbers);
        String shown = String.join(", ", ranges.subList(0, Math.min(MOST_SHOWN, ranges.size())));
        String more = ranges.size() > MOST_SHOWN ? " and more, " + numbers.length + " in all" : "";
        return noun + (numbers.length == 1 ? " " : "s ") + shown + more;
    }

    /** "1 jar", "60 jars". */
    static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    private static List<String> ranges(int[] numbers) {
        List<String> ranges = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= numbers.length; i++) {
            if (i == numbers.length || numbers[i] > numbers[i - 1] + 1) {
                ranges.add(range(numbers[from], numbers[i - 1]));
                from = i;
            }
        }
        return ranges;
    }

    private static String range(int first, int last) {
        return first == last ? "" + first : first + "–" + last;
    }
}
