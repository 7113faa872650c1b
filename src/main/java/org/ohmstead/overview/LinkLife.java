package org.ohmstead.overview;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.RemakeView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.ledger.SurveyRecord;

/** The life of one link. */
final class LinkLife {

    private LinkLife() {}

    static UnitPage of(StringPage page, StringBlueprint blueprint, List<SurveyRecord> surveys, int ordinal) {
        LinkLine link = page.links().stream()
                .filter(line -> line.ordinal() == ordinal)
                .findFirst()
                .orElseThrow(() -> org.ohmstead.kernel.NotFound.of("link", ordinal));
        String address = "/strings/" + page.plate().stringId() + "/links/";
        return new UnitPage(
                page.plate(),
                Words.capital(link.title()),
                link.urgency(),
                "µΩ",
                facts(link),
                link.reasons(),
                spells(blueprint, ordinal),
                readings(surveys, link),
                link.baseline(),
                ordinal == 0 ? null : address + (ordinal - 1),
                ordinal == page.jars().size() ? null : address + (ordinal + 1),
                link.prospect(),
                link.overruled());
    }

    private static List<StringPage.Fact> facts(LinkLine link) {
        return List.of(
                new StringPage.Fact("Kind", link.kind().words(), null),
                new StringPage.Fact("Last reading", Figures.microohms(link.combined()), Figures.day(link.readOn())),
                new StringPage.Fact(
                        "Cable’s own", Figures.microohms(link.conductor()), "taken out of every reading here"),
                new StringPage.Fact("Net of the cable", Figures.microohms(link.net()), null),
                new StringPage.Fact("Baseline", Figures.microohms(link.baseline()), null),
                new StringPage.Fact("On its baseline", Figures.change(link.changeOnBaseline()), null),
                new StringPage.Fact("On its kind’s average", Figures.change(link.changeOnKind()), null),
                new StringPage.Fact("Drop at design current", Figures.millivolts(link.dropMillivolts()), null),
                new StringPage.Fact("Heat at design current", Figures.quantity(link.heatWatts(), 2, "W"), null));
    }

    private static List<UnitPage.Spell> spells(StringBlueprint blueprint, int ordinal) {
        List<UnitPage.Spell> spells = new ArrayList<>();
        spells.add(new UnitPage.Spell("Made with the string", blueprint.string().inServiceOn(), null, ""));
        blueprint.remakes().stream()
                .filter(remake -> remake.ordinal() == ordinal)
                .forEach(remake -> spells.add(new UnitPage.Spell("Remade", remake.remadeOn(), null, note(remake))));
        return spells;
    }

    private static String note(RemakeView remake) {
        String values = "found " + Figures.microohms(remake.asFoundMicroohms()) + ", left "
                + Figures.microohms(remake.asLeftMicroohms()) + ". ";
        return (remake.asFoundMicroohms() == null && remake.asLeftMicroohms() == null ? "" : values) + remake.note();
    }

    private static List<UnitPage.Reading> readings(List<SurveyRecord> surveys, LinkLine link) {
        double own = link.conductor() == null ? 0 : link.conductor();
        return surveys.stream()
                .map(survey -> {
                    Double net = JarLife.known(inParallel(survey.readings().linkMicroohms()[link.ordinal()]) - own);
                    return new UnitPage.Reading(
                            survey.id(), survey.facts().takenOn(), net, change(net, link.baseline()), null, null);
                })
                .toList();
    }

    private static @Nullable Double change(@Nullable Double value, @Nullable Double baseline) {
        return value == null || baseline == null || baseline <= 0 ? null : value / baseline - 1;
    }

    /** Straps that were not read are left out. */
    static double inParallel(double... straps) {
        double siemens = 0;
        for (double strap : straps) {
            siemens += Double.isNaN(strap) ? 0 : 1 / strap;
        }
        return siemens > 0 ? 1 / siemens : Double.NaN;
    }
}
