package org.ohmstead.overview;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyRecord;

/** The life of the jars at one position. */
final class JarLife {

    private JarLife() {}

    static UnitPage of(StringPage page, StringBlueprint blueprint, List<SurveyRecord> surveys, int position) {
        JarLine jar = page.jars().get(position - 1);
        OhmicKind kind = kind(jar, surveys);
        StringHistoryView history = StringHistories.of(blueprint, surveys, page.jars());
        String address = "/strings/" + page.plate().stringId() + "/jars/";
        return new UnitPage(
                page.plate(),
                "Jar " + position,
                jar.urgency(),
                kind.unit(),
                facts(jar),
                jar.reasons(),
                spells(blueprint, position),
                readings(surveys, history, position, kind),
                jar.ohmicKind() == kind ? jar.baseline() : null,
                position == 1 ? null : address + (position - 1),
                position == page.jars().size() ? null : address + (position + 1),
                jar.prospect(),
                jar.overruled());
    }

    private static OhmicKind kind(JarLine jar, List<SurveyRecord> surveys) {
        if (jar.ohmicKind() != null) {
            return jar.ohmicKind();
        }
        return surveys.isEmpty()
                ? OhmicKind.RESISTANCE
                : surveys.get(surveys.size() - 1).facts().ohmicKind();
    }

    private static List<StringPage.Fact> facts(JarLine jar) {
        return List.of(
                new StringPage.Fact(
                        "Last reading", Figures.ohmic(jar.ohmic(), jar.ohmicKind()), Figures.day(jar.readOn())),
                new StringPage.Fact("Baseline", Figures.ohmic(jar.baseline(), jar.ohmicKind()), jar.baselineFrom()),
                new StringPage.Fact("On its baseline", Figures.change(jar.changeOnBaseline()), "towards ageing"),
                new StringPage.Fact("On the string’s median", Figures.change(jar.changeOnMedian()), null),
                new StringPage.Fact("A year", Figures.change(jar.trendPerYear()), "robust slope"),
                new StringPage.Fact("Volts", Figures.volts(jar.volts()), null),
                new StringPage.Fact("Temperature", Figures.celsius(jar.celsius()), null),
                new StringPage.Fact("Serial", jar.serial() == null ? "not recorded" : jar.serial(), null));
    }

    private static List<UnitPage.Spell> spells(StringBlueprint blueprint, int position) {
        return blueprint.occupancies().stream()
                .filter(occupancy -> occupancy.position() == position)
                .map(occupancy -> new UnitPage.Spell(
                        Words.capital(occupancy.jar()),
                        occupancy.during().from(),
                        occupancy.during().until(),
                        (occupancy.reason() + " " + occupancy.leftReason()).strip()))
                .toList();
    }

    private static List<UnitPage.Reading> readings(
            List<SurveyRecord> surveys, StringHistoryView history, int position, OhmicKind kind) {
        List<UnitPage.Reading> all = new ArrayList<>();
        for (int row = 0; row < surveys.size(); row++) {
            SurveyRecord survey = surveys.get(row);
            Readings readings = survey.readings();
            boolean comparable = survey.facts().ohmicKind() == kind;
            all.add(new UnitPage.Reading(
                    survey.id(),
                    survey.facts().takenOn(),
                    comparable ? known(readings.ohmic()[position - 1]) : null,
                    comparable ? known(history.change()[row][position - 1]) : null,
                    known(readings.volts()[position - 1]),
                    known(readings.celsius()[position - 1])));
        }
        return all;
    }

    static @Nullable Double known(double value) {
        return Double.isNaN(value) ? null : value;
    }
}
