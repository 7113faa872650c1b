package org.ohmstead.demo;

import java.util.Random;
import java.util.Set;

/** Readings of a string's links: terminals at both ends, cables between tiers, straps elsewhere. */
final class LinkSimulation {

    private static final double STRAP_MICROOHMS = 24;
    private static final double TERMINAL_MICROOHMS = 12;
    private static final double JOINTS_MICROOHMS = 11;
    private static final double COPPER_PER_KELVIN = 0.00393;
    private static final double REPEATABILITY = 0.018;

    private final DemoString string;
    private final Units units;
    private final Set<Integer> cables;

    LinkSimulation(DemoString string, Units units) {
        this.string = string;
        this.units = units;
        this.cables = Cables.between(string.design().tiers());
    }

    double[][] microohms(double yearsAgo, Room room, Random random) {
        double[][] links = new double[string.positions() + 1][];
        for (int ordinal = 0; ordinal < links.length; ordinal++) {
            links[ordinal] = link(ordinal, trouble(ordinal, yearsAgo), room, random);
        }
        return links;
    }

    private double[] link(int ordinal, double trouble, Room room, Random random) {
        double level = Math.exp(units.linkLevel()[ordinal]) * trouble;
        if (cables.contains(ordinal)) {
            double cable = Cables.MICROOHMS_AT_20 * (1 + COPPER_PER_KELVIN * (room.celsius() - 20));
            return new double[] {read(cable + JOINTS_MICROOHMS * level, random)};
        }
        if (ordinal == 0 || ordinal == string.positions()) {
            return new double[] {read(TERMINAL_MICROOHMS * level, random)};
        }
        double[] straps = new double[string.design().strapsPerLink()];
        for (int i = 0; i < straps.length; i++) {
            straps[i] = read(STRAP_MICROOHMS * level * straps.length, random);
        }
        return straps;
    }

    private double trouble(int ordinal, double yearsAgo) {
        double factor = 1;
        for (Trouble link : string.story().links()) {
            factor *= link.place() == ordinal ? link.ohmic().at(yearsAgo) : 1;
        }
        return factor;
    }

    private static double read(double microohms, Random random) {
        return Rounded.to(microohms * (1 + REPEATABILITY * random.nextGaussian()), 1);
    }
}
