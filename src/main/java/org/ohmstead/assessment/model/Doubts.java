package org.ohmstead.assessment.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.ohmstead.assessment.model.Baseline.Origin;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.statistics.Quantiles;

/** Collects what makes a judgement less certain. */
final class Doubts {

    private final StringCase string;
    private final Panel panel;
    private final Limits limits;
    private final List<Doubt> found = new ArrayList<>();

    private Doubts(StringCase string, Limits limits) {
        this.string = string;
        this.panel = string.panel();
        this.limits = limits;
    }

    static List<Doubt> of(StringCase string, Limits limits) {
        Doubts doubts = new Doubts(string, limits);
        if (doubts.panel.last() < 0) {
            return List.of(new Doubt(Doubt.Kind.NO_SURVEY, "There is no survey."));
        }
        doubts.onTheSurvey(doubts.panel.survey(doubts.panel.last()));
        doubts.onTheBaselines();
        doubts.onTheLinks();
        return List.copyOf(doubts.found);
    }

    private void onTheSurvey(SurveyReadings now) {
        if (!now.onFloat()) {
            add(
                    Doubt.Kind.OFF_FLOAT,
                    "The last survey was taken off float: its ohmic values ask for a re-read at most.");
        }
        if (Double.isNaN(Panel.celsius(now))) {
            add(Doubt.Kind.TEMPERATURE_UNKNOWN, "No temperature was recorded in the last survey.");
        }
        otherKind(now);
        otherInstrument(now);
        temperatureOffBaseline(now);
        surveyShift();
    }

    private void otherKind(SurveyReadings now) {
        OhmicKind first = panel.survey(0).ohmicKind();
        if (first != now.ohmicKind()) {
            add(
                    Doubt.Kind.OTHER_OHMIC_KIND,
                    "The last survey read " + now.ohmicKind().words() + ", the first " + first.words()
                            + ": the two are not comparable, so each is held against its own kind only.");
        }
    }

    private void otherInstrument(SurveyReadings now) {
        int baseline = usualBaselineSurvey();
        String then = baseline < 0 ? null : panel.survey(baseline).instrument();
        if (then != null && now.instrument() != null && !then.equals(now.instrument())) {
            add(
                    Doubt.Kind.OTHER_INSTRUMENT,
                    "Read with instrument " + now.instrument() + ", the baseline with " + then
                            + ": part of a change may be the instrument.");
        }
    }

    private void temperatureOffBaseline(SurveyReadings now) {
        int baseline = usualBaselineSurvey();
        double apart = baseline < 0 ? Double.NaN : Panel.celsius(now) - Panel.celsius(panel.survey(baseline));
        if (Math.abs(apart) > limits.of(Limit.SURVEY_KELVIN)) {
            boolean corrected = !Double.isNaN(panel.history().plan().jarType().ohmicPerKelvin());
            add(
                    Doubt.Kind.TEMPERATURE_OFF_BASELINE,
                    "Taken " + Words.kelvin(Math.abs(apart)) + (apart > 0 ? " warmer" : " colder")
                            + " than the baseline survey"
                            + (corrected ? "; referred to 25 °C by the jar type's coefficient." : ", uncorrected."));
        }
    }

    private void surveyShift() {
        double shift = panel.last() < 1
                        || panel.survey(panel.last() - 1).ohmicKind()
                                != panel.survey(panel.last()).ohmicKind()
                ? Double.NaN
                : Math.expm1(panel.shift(panel.last() - 1, panel.last()));
        if (Math.abs(shift) > limits.of(Limit.SURVEY_SHIFT)) {
            add(
                    Doubt.Kind.SURVEY_SHIFT,
                    "The whole string moved by " + Words.change(shift)
                            + " since the survey before: temperature, probe or instrument rather than every jar at once.");
        }
    }

    private void onTheBaselines() {
        provisional();
        late();
        aboutPositions(
                Doubt.Kind.BASELINE_MISSING,
                jar -> jar.ohmic().last() != null && jar.ohmic().baseline() == null,
                "No baseline to compare with for");
        double ofType = medianRiseOverType();
        if (Math.abs(ofType) >= limits.of(Limit.JAR_RISE_NOTE)) {
            add(
                    Doubt.Kind.REFERENCE_UNFIT,
                    "The median jar stands " + Words.change(ofType)
                            + " against the jar type's reference: it may not fit this string; enter baselines.");
        }
    }

    private void provisional() {
        aboutPositions(
                Doubt.Kind.BASELINE_PROVISIONAL,
                jar -> hasOrigin(jar, Origin.PROVISIONAL) || hasOrigin(jar, Origin.JAR_TYPE),
                "The baseline is provisional for");
    }

    private void late() {
        aboutPositions(
                Doubt.Kind.BASELINE_LATE,
                jar -> hasOrigin(jar, Origin.SURVEY) && isLate(jar),
                "The baseline was taken more than " + limits.countOf(Limit.BASELINE_LATE_MONTHS)
                        + " months after the start, so earlier loss does not show, for");
    }

    private boolean isLate(JarCase jar) {
        Baseline shown = Objects.requireNonNull(jar.ohmic().baseline()).shown();
        return shown.takenOn() != null
                && shown.takenOn()
                        .isAfter(jar.spell().during().from().plusMonths(limits.countOf(Limit.BASELINE_LATE_MONTHS)));
    }

    private void onTheLinks() {
        aboutLinks(
                Doubt.Kind.CABLE_UNKNOWN,
                link -> link.isCable()
                        && link.last() != null
                        && Double.isNaN(link.last().conductor()),
                "The cable's own resistance is not known, so the whole reading is judged, for");
        aboutLinks(
                Doubt.Kind.CABLE_DOMINATES,
                link -> link.isCable() && link.last() != null && link.last().cableDominates(),
                "The cable dominates: by the conductor tables nothing is left for the joints of");
        aboutLinks(
                Doubt.Kind.STRAPS_MISSING,
                link -> link.strapsRead() > 0
                        && link.strapsRead() < link.joint().link().straps(),
                "Not every strap was read of");
    }

    private void aboutPositions(Doubt.Kind kind, Predicate<JarCase> whom, String words) {
        List<Integer> positions = string.jars().stream()
                .filter(whom)
                .map(jar -> jar.spell().position())
                .toList();
        if (!positions.isEmpty()) {
            add(
                    kind,
                    words
                            + (positions.size() == string.jars().size()
                                    ? " every jar."
                                    : " jar " + Words.list(positions) + "."));
        }
    }

    private void aboutLinks(Doubt.Kind kind, Predicate<LinkCase> whom, String words) {
        List<Integer> ordinals = string.links().stream()
                .filter(whom)
                .map(link -> link.joint().link().ordinal())
                .toList();
        if (!ordinals.isEmpty()) {
            add(kind, words + " link " + Words.list(ordinals) + ".");
        }
    }

    /** The survey most jars take their baseline from; -1 without any. */
    private int usualBaselineSurvey() {
        double[] surveys = string.jars().stream()
                .filter(jar ->
                        jar.ohmic().baseline() != null && jar.ohmic().baseline().survey() >= 0)
                .mapToDouble(
                        jar -> Objects.requireNonNull(jar.ohmic().baseline()).survey())
                .toArray();
        return surveys.length == 0 ? -1 : (int) Quantiles.median(surveys);
    }

    private double medianRiseOverType() {
        return Quantiles.median(string.jars().stream()
                .filter(jar -> hasOrigin(jar, Origin.JAR_TYPE))
                .mapToDouble(jar -> jar.ohmic().rise())
                .toArray());
    }

    private static boolean hasOrigin(JarCase jar, Origin origin) {
        return jar.ohmic().baseline() != null && jar.ohmic().baseline().shown().origin() == origin;
    }

    private void add(Doubt.Kind kind, String words) {
        found.add(new Doubt(kind, words));
    }
}
