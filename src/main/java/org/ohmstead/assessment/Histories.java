package org.ohmstead.assessment;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.LinkPlan;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyRecord;

/** Puts together what the judge looks at from what the register and the ledger know. */
final class Histories {

    private Histories() {}

    /** @param today by the site's calendar: what the register has planned for later has not happened yet */
    static StringHistory of(StringBlueprint blueprint, List<SurveyRecord> surveys, LocalDate today) {
        List<JarSpell> spells = blueprint.occupancies().stream()
                .filter(jar -> !jar.during().from().isAfter(today))
                .map(jar -> new JarSpell(jar.position(), jar.serial(), jar.during(), orNaN(jar.baselineOhmic())))
                .toList();
        List<LinkRemake> remakes = blueprint.remakes().stream()
                .filter(remake -> !remake.remadeOn().isAfter(today))
                .map(remake -> new LinkRemake(remake.ordinal(), remake.remadeOn()))
                .toList();
        return new StringHistory(
                plan(blueprint),
                spells,
                remakes,
                surveys.stream().map(Histories::readings).toList());
    }

    private static StringPlan plan(StringBlueprint blueprint) {
        StringEntry string = blueprint.string().entry();
        return new StringPlan(
                blueprint.string().id(),
                jarType(blueprint.jarType().entry()),
                string.positions(),
                blueprint.links().stream()
                        .map(link -> new LinkPlan(link.ordinal(), link.kind(), link.straps(), link.conductor()))
                        .toList(),
                orNaN(string.floatSetpointVoltsPerCell()),
                orNaN(string.designLoadAmps()),
                orNaN(string.designMinutes()),
                string.inServiceOn());
    }

    private static JarTypeFacts jarType(JarTypeEntry type) {
        return new JarTypeFacts(
                type.code(),
                type.technology(),
                type.cellsPerJar(),
                type.nominalVolts(),
                type.ratedAmpereHours(),
                orNaN(type.floatVoltsPerCell()),
                orNaN(type.referenceOhmic()),
                type.referenceOhmicKind() == null ? OhmicKind.IMPEDANCE : type.referenceOhmicKind(),
                orNaN(type.ohmicPerKelvin()),
                orNaN(type.designLifeYears()),
                orNaN(type.designLifeCelsius()));
    }

    private static SurveyReadings readings(SurveyRecord survey) {
        SurveyFacts facts = survey.facts();
        return new SurveyReadings(
                survey.id(),
                facts.takenAt(),
                facts.takenOn(),
                facts.ohmicKind(),
                facts.instrument(),
                facts.ambientCelsius(),
                facts.stringVolts(),
                facts.rippleAmps(),
                facts.onFloat(),
                survey.readings().ohmic(),
                survey.readings().volts(),
                survey.readings().celsius(),
                survey.readings().linkMicroohms());
    }

    private static double orNaN(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }
}
