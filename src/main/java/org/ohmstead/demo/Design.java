package org.ohmstead.demo;

import java.util.List;
import org.ohmstead.fleet.csv.JarTypeEntry;

/**
 * How the strings of a kind of site are built.
 *
 * @param load what they carry
 * @param strings how many stand there
 * @param tiers jars per tier
 */
record Design(
        String load,
        int strings,
        JarTypeEntry jarType,
        List<Integer> tiers,
        int strapsPerLink,
        double loadAmps,
        double minutes,
        int intervalMonths) {

    private static final List<Design> ALL = List.of(
            new Design("Protection, 110 V", 2, JarTypes.VENTED_200, List.of(28, 27), 1, 35, 300, 6),
            new Design("Telecoms, 48 V", 3, JarTypes.VENTED_500, List.of(12, 12), 1, 60, 480, 12),
            new Design("Uninterruptible supply, 480 V", 3, JarTypes.AGM_100, List.of(10, 10, 10, 10), 1, 210, 10, 6),
            new Design("Signalling, 110 V", 2, JarTypes.NICAD_180, List.of(23, 23, 23, 23), 1, 25, 480, 12),
            new Design("Protection, 125 V", 3, JarTypes.VENTED_500, List.of(15, 15, 15, 15), 2, 90, 240, 6),
            new Design("Uninterruptible supply, 384 V", 3, JarTypes.AGM_150, List.of(8, 8, 8, 8), 1, 260, 12, 6),
            new Design("Switchgear, 220 V", 2, JarTypes.NICAD_320, List.of(45, 45, 45, 45), 1, 55, 300, 12),
            new Design("Control centre, 240 V", 2, JarTypes.VENTED_1000, List.of(30, 30, 30, 30), 2, 240, 60, 6));

    private static final Design LARGEST =
            new Design("Data hall, 480 V", 1, JarTypes.VENTED_1000, List.of(40, 40, 40, 40, 40, 40), 2, 300, 30, 6);

    private static final int LARGEST_AT = 39;

    /** @param site number of the site */
    static Design of(int site) {
        return site == LARGEST_AT ? LARGEST : ALL.get(site % ALL.size());
    }

    int positions() {
        return tiers.stream().mapToInt(Integer::intValue).sum();
    }
}
