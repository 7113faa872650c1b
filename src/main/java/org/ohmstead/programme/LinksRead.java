package org.ohmstead.programme;

import java.util.Map;

/**
 * How many links a survey covered; a link is covered when all its straps were read.
 *
 * @param terminals of the two terminal links
 * @param intercell of those between jars
 */
record LinksRead(int terminals, int intercell) {

    /**
     * @param units number of jars
     * @param slotsPerLink how many elements each link takes in the survey
     * @param missing the elements that were not read, counted from 1
     * @param straps by ordinal, of links with several
     */
    static LinksRead of(int units, int slotsPerLink, Integer[] missing, Map<Integer, Integer> straps) {
        int[] read = new int[units + 1];
        java.util.Arrays.fill(read, slotsPerLink);
        for (int element : missing) {
            read[(element - 1) / slotsPerLink]--;
        }
        int terminals = 0;
        int intercell = 0;
        for (int ordinal = 0; ordinal <= units; ordinal++) {
            if (read[ordinal] >= Math.min(straps.getOrDefault(ordinal, 1), slotsPerLink)) {
                terminals += ordinal == 0 || ordinal == units ? 1 : 0;
                intercell += ordinal == 0 || ordinal == units ? 0 : 1;
            }
        }
        return new LinksRead(terminals, intercell);
    }
}
