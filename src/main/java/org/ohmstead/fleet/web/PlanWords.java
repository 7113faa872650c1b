package org.ohmstead.fleet.web;

import java.util.ArrayList;
import java.util.List;
import org.ohmstead.fleet.csv.Column;
import org.ohmstead.fleet.csv.Sheets;

/** Says what a plan amounts to. */
final class PlanWords {

    private static final String NOTHING_YET = "Write the jars of each tier, such as 30+30, to see what it amounts to.";

    private PlanWords() {}

    /** As typed; what can't be read yet gives advice instead. */
    static String of(String tiers, String strapsPerLink) {
        try {
            List<Integer> jars = jars(tiers.strip());
            int straps = Integer.parseInt(strapsPerLink.isBlank() ? "1" : strapsPerLink.strip());
            return words(jars, straps);
        } catch (IllegalArgumentException e) {
            return NOTHING_YET;
        }
    }

    private static List<Integer> jars(String tiers) {
        Column<?, ?> column = Sheets.STRINGS.columns().get(Sheets.STRINGS.columnNumber("tiers") - 1);
        if (column.cell().reading().apply(tiers) instanceof List<?> read) {
            return read.stream().map(Integer.class::cast).toList();
        }
        throw new IllegalArgumentException(tiers);
    }

    private static String words(List<Integer> jars, int straps) {
        int positions = jars.stream().mapToInt(Integer::intValue).sum();
        List<String> cables = new ArrayList<>();
        int last = 0;
        for (int tier : jars.subList(0, jars.size() - 1)) {
            last += tier;
            cables.add(last + " and " + (last + 1));
        }
        String tiers = jars.size() == 1 ? "1 tier" : jars.size() + " tiers";
        int strapLinks = positions - 1 - cables.size();
        return positions + (positions == 1 ? " jar in " : " jars in ") + tiers + "; " + (positions + 1)
                + " links: 2 terminals, " + strapLinks + (strapLinks == 1 ? " link of " : " links of ") + straps
                + (straps == 1 ? " strap" : " straps")
                + (cables.isEmpty() ? "" : ", tier cables between " + String.join(", ", cables)) + ".";
    }
}
