package org.ohmstead.demo;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ohmstead.kernel.Conductor;

/** The cables between the tiers of the demo's racks: all alike. */
final class Cables {

    static final Conductor CONDUCTOR = new Conductor("95", Conductor.Flexibility.CLASS_5, 1.2, 2);

    /** 0.206 Ω/km × 1.2 m / 2 (IEC 60228, 95 mm², class 5); the real cable is a little better than the table's maximum. */
    static final double MICROOHMS_AT_20 = 0.97 * 0.206e3 * 1.2 / 2;

    private Cables() {}

    /** The link ordinals at which one tier ends and the next begins. */
    static Set<Integer> between(List<Integer> tiers) {
        Set<Integer> ordinals = new HashSet<>();
        int last = 0;
        for (int jars : tiers.subList(0, tiers.size() - 1)) {
            last += jars;
            ordinals.add(last);
        }
        return ordinals;
    }
}
