package org.ohmstead.testbed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
        return plans().map(Planned::live).toList();
    }

    /** The first strings of the estate that are wanted; none but those lives through its years, which is what takes time. */
    List<SimulatedString> first(int count, int mostJars, int leastSurveys, int mostSurveys) {
        return plans().filter(planned -> planned.build().plan().positions() <= mostJars)
                .map(Planned::live)
                .filter(string -> string.history().surveys().size() >= leastSurveys
                        && string.history().surveys().size() <= mostSurveys)
                .limit(count)
                .toList();
    }

    /** A string of which all is settled but what befalls it. */
    private record Planned(Build build, StringStory story, List<Depot.Visit> visits) {
        SimulatedString live() {
            return story.live(visits);
        }
    }

    private Stream<Planned> plans() {
        List<Planned> plans = new ArrayList<>();
        while (plans.size() < laws.strings()) {
            Depot depot = Depot.of(dice);
            int together = dice.between(1, 6);
            for (int s = 0; s < together && plans.size() < laws.strings(); s++) {
                plans.add(plan(depot));
            }
        }
        return plans.stream();
    }

    private Planned plan(Depot depot) {
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
        return new Planned(build, new StringStory(laws, build, instruments, dice.child()), visits);
    }
}
