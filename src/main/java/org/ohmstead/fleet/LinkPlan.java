package org.ohmstead.fleet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ohmstead.kernel.LinkKind;

/** The links that follow from a string's tiers: terminals at both ends, cables between tiers, straps elsewhere. */
final class LinkPlan {

    private LinkPlan() {}

    /**
     * @param tiers jars per tier in the order of the positions
     * @param strapsPerLink of the straps; terminals and cables are read as one
     */
    static List<LinkView> of(long stringId, List<Integer> tiers, int strapsPerLink) {
        Set<Integer> tierEnds = new HashSet<>();
        int positions = 0;
        for (int jars : tiers) {
            positions += jars;
            tierEnds.add(positions);
        }
        List<LinkView> links = new ArrayList<>();
        for (int ordinal = 0; ordinal <= positions; ordinal++) {
            LinkKind kind = kind(ordinal, positions, tierEnds);
            links.add(new LinkView(stringId, ordinal, kind, kind == LinkKind.STRAP ? strapsPerLink : 1, null));
        }
        return links;
    }

    private static LinkKind kind(int ordinal, int positions, Set<Integer> tierEnds) {
        if (ordinal == 0 || ordinal == positions) {
            return LinkKind.TERMINAL;
        }
        return tierEnds.contains(ordinal) ? LinkKind.TIER_CABLE : LinkKind.STRAP;
    }
}
