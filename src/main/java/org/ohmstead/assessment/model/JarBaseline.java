package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Baseline.Origin;
import org.ohmstead.kernel.OhmicKind;

/**
 * Which baseline a jar's last reading is held against. The written rule, first that applies:
 *
 * <ol>
 *   <li>the value entered for this jar;
 *   <li>its first earlier reading of the same kind taken five months or more after its start (about six months, once it
 *       has settled on float);
 *   <li>its earliest earlier reading of the same kind, marked provisional;
 *   <li>the reference of the jar type, if it is of the same kind;
 *   <li>none: then there is no change to report.
 * </ol>
 *
 * A reading is never its own baseline.
 */
record JarBaseline(Baseline shown, double burden, int survey) {

    private static final int NO_SURVEY = -1;

    static @Nullable JarBaseline pick(Panel panel, JarSpell spell, List<Reading> readings, Limits limits) {
        if (readings.isEmpty()) {
            return null;
        }
        Reading last = readings.get(readings.size() - 1);
        if (spell.baselineOhmic() > 0 && last.kind() == enteredKind(panel, spell)) {
            return given(Origin.ENTERED, spell.baselineOhmic(), last.kind());
        }
        List<Reading> earlier = readings.subList(0, readings.size() - 1);
        LocalDate settled = spell.during().from().plusMonths(limits.countOf(Limit.BASELINE_MONTHS));
        return earlier.stream()
                .filter(reading -> !reading.takenOn().isBefore(settled))
                .findFirst()
                .map(reading -> taken(Origin.SURVEY, reading))
                .orElseGet(() -> earlier.isEmpty()
                        ? ofType(panel.history().plan().jarType(), last.kind())
                        : taken(Origin.PROVISIONAL, earlier.get(0)));
    }

    /** An entered value carries no kind: it is read as of the kind its jar was first surveyed with. */
    private static OhmicKind enteredKind(Panel panel, JarSpell spell) {
        return panel.history().surveys().stream()
                .filter(survey -> spell.during().contains(survey.takenOn()))
                .filter(survey -> Numbers.at(survey.ohmic(), spell.position() - 1) > 0)
                .findFirst()
                .map(SurveyReadings::ohmicKind)
                .orElse(panel.history().plan().jarType().referenceKind());
    }

    private static @Nullable JarBaseline ofType(JarTypeFacts type, OhmicKind kind) {
        boolean known = type.referenceOhmic() > 0 && type.referenceKind() == kind;
        return known ? given(Origin.JAR_TYPE, type.referenceOhmic(), kind) : null;
    }

    private static JarBaseline given(Origin origin, double value, OhmicKind kind) {
        return new JarBaseline(new Baseline(value, origin, null), Panel.burden(kind, value), NO_SURVEY);
    }

    private static JarBaseline taken(Origin origin, Reading reading) {
        return new JarBaseline(
                new Baseline(reading.value(), origin, reading.takenOn()), reading.burden(), reading.survey());
    }

    boolean isOfType() {
        return shown.origin() == Origin.JAR_TYPE;
    }

    /** Change of a burden against this one: 0.41 is 41 % over. */
    double rise(double other) {
        return other / burden - 1;
    }

    /** What a reading must show to stand so far over the baseline, in the unit of the kind. */
    double valueAt(OhmicKind kind, double rise) {
        return kind.risesWithAge() ? burden * (1 + rise) : 1 / (burden * (1 + rise));
    }
}
