package org.ohmstead.demo;

import java.util.List;
import java.util.Map;

/**
 * When a string was discharged in a test, and what its capacity does that no reading shows.
 *
 * @param monthsAgo of its tests, the oldest first
 * @param accepted whether it was tested when it came into service
 * @param records how many of the latest tests came with a recorder's file; the last one has its jars read in any case
 * @param fade share of capacity lost by today beside what the ohmic values show
 * @param hidden share that single jars have lost by today, likewise
 * @param stopped whether the last test was stopped at the rated time
 */
record CapacityStory(
        int site,
        String string,
        List<Integer> monthsAgo,
        boolean accepted,
        int records,
        double fade,
        Map<Integer, Double> hidden,
        boolean stopped) {

    private static final List<CapacityStory> TOLD = List.of(
            tested(0, "A", 62, 3).fromNew(),
            tested(1, "A", 61, 1).fromNew(),
            tested(2, "A", 50, 26, 2).recorded(1),
            tested(3, "A", 75, 14).fromNew(),
            tested(4, "B", 62, 2).recorded(1),
            tested(5, "B", 38, 3).recorded(1),
            tested(6, "A", 64, 4).untilRatedTime(),
            tested(7, "A", 48).fromNew(),
            tested(8, "A", 70, 10).fromNew(),
            tested(9, "A", 80, 21).recorded(1),
            tested(10, "B", 40, 16).weakUnseen(22, 0.45),
            tested(11, "A", 66, 6).fading(0.12),
            tested(12, "A", 60, 1).recorded(1),
            tested(13, "B", 49, 25, 13, 2).recorded(1),
            tested(16, "A", 64, 5).recorded(1),
            tested(17, "C", 66, 6).fromNew().fading(0.09),
            tested(18, "C", 30, 5).recorded(1),
            tested(21, "C", 26, 3).recorded(1),
            tested(23, "A", 58, 3).recorded(1),
            tested(24, "B", 62, 38, 26, 14, 2).fromNew().fading(0.17),
            tested(26, "A", 45, 21),
            tested(28, "A", 9).weakUnseen(8, 0.40),
            tested(30, "B", 62, 2).fading(0.24),
            tested(34, "A", 28, 4).recorded(1),
            tested(37, "A", 48, 24, 12, 3).recorded(2),
            tested(39, "A", 55, 9).recorded(1));

    static List<CapacityStory> all() {
        return TOLD;
    }

    private static CapacityStory tested(int site, String string, Integer... monthsAgo) {
        return new CapacityStory(site, string, List.of(monthsAgo), false, 0, 0, Map.of(), false);
    }

    private CapacityStory fromNew() {
        return new CapacityStory(site, string, monthsAgo, true, records, fade, hidden, stopped);
    }

    private CapacityStory recorded(int latest) {
        return new CapacityStory(site, string, monthsAgo, accepted, latest, fade, hidden, stopped);
    }

    private CapacityStory fading(double share) {
        return new CapacityStory(site, string, monthsAgo, accepted, records, share, hidden, stopped);
    }

    private CapacityStory weakUnseen(int position, double share) {
        return new CapacityStory(site, string, monthsAgo, accepted, records, fade, Map.of(position, share), stopped);
    }

    private CapacityStory untilRatedTime() {
        return new CapacityStory(site, string, monthsAgo, accepted, records, fade, hidden, true);
    }
}
