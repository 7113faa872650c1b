package org.ohmstead.testbed;

import java.util.ArrayList;
import java.util.List;
import org.ohmstead.assessment.model.JarTypeFacts;

/** Invents an estate with known truth. The same laws and seed give the same estate. */
final class EstateGenerator {
    private static final int TYPES = 5;
    private final Laws laws;
    private final Dice dice;
    private final Instruments instruments;
    private final List<JarTypeFacts> types = new ArrayList<>();
    private final double[] perKelvin = new double[TYPES];
    private final double[] limitOffset = new double[TYPES];

    EstateGenerator(Laws laws, long seed) {
        this.laws = laws;
        this.dice = new Dice(seed);
        this.instruments = new Instruments(laws, seed);
        for (int t = 0; t < TYPES; t++) {
            perKelvin[t] = -dice.between(.004, .008);
            limitOffset[t] = dice.normal(laws.limitOfType());
            types.add(Build.type(t + 1, perKelvin[t], dice));
        }
    }

    Instruments instruments() {
        return instruments;
    }

    List<SimulatedString> estate() {
        List<SimulatedString> strings = new ArrayList<>();
        while (strings.size() < laws.strings()) {
            Depot depot = Depot.of(dice);
            int together = dice.between(1, 6);
            for (int s = 0; s < together && strings.size() < laws.strings(); s++) {
                strings.add(string(depot));
            }
        }
        return strings;
    }

    private SimulatedString string(Depot depot) {
        int type = dice.between(0, TYPES - 1);
        int since = dice.between(0, Math.max(0, depot.visits().size() / 3));
        List<Depot.Visit> visits = depot.visits().subList(since, depot.visits().size());
        Build build = Build.of(
                laws,
                types.get(type),
                perKelvin[type],
                limitOffset[type],
                visits.get(0).on(),
                dice);
        return new StringStory(laws, build, instruments, dice.child()).live(visits);
    }
}
