package org.ohmstead.testbed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.assessment.model.forecast.EstateReplay;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.ForecastState;
import org.ohmstead.assessment.model.forecast.Forecaster;
import org.ohmstead.kernel.DateRange;

/** What is said as of a day owes nothing to what came later: an estate cut at any day gives the same rows up to it. */
class LookAheadTest {
    private static final int STRINGS = 6;
    private static final ForecastParameters SET = ForecastParameters.standard();

    private static List<StringHistory> estate(Laws laws, long seed) {
        return new EstateGenerator(laws, seed)
                .estate().subList(0, STRINGS).stream()
                        .map(SimulatedString::history)
                        .toList();
    }

    private record Row(LocalDate asOf, String text) {}

    private static List<Row> rows(List<StringHistory> estate) {
        List<Row> rows = new ArrayList<>();
        new EstateReplay(estate, SET)
                .run((string, survey, forecast) ->
                        rows.add(new Row(survey.takenOn(), string + "," + survey.surveyId() + "," + forecast)));
        return rows;
    }

    /** As the records stood on that day: no later survey, replacement or remake. */
    private static StringHistory cut(StringHistory whole, LocalDate day) {
        List<JarSpell> spells = whole.spells().stream()
                .filter(spell -> !spell.during().from().isAfter(day))
                .map(spell -> open(spell, day))
                .toList();
        return new StringHistory(
                whole.plan(),
                spells,
                whole.remakes().stream()
                        .filter(remake -> !remake.remadeOn().isAfter(day))
                        .toList(),
                whole.surveys().stream()
                        .filter(survey -> !survey.takenOn().isAfter(day))
                        .toList());
    }

    private static JarSpell open(JarSpell spell, LocalDate day) {
        boolean leftLater =
                spell.during().until() != null && spell.during().until().isAfter(day);
        return leftLater
                ? new JarSpell(
                        spell.position(),
                        spell.serial(),
                        DateRange.startingOn(spell.during().from()),
                        spell.baselineOhmic())
                : spell;
    }

    private static void changesNothingBeforeTheCut(Laws laws, long seed) {
        List<StringHistory> whole = estate(laws, seed);
        List<Row> all = rows(whole);
        Random random = new Random(seed);
        for (int trial = 0; trial < 6; trial++) {
            LocalDate day = all.get(random.nextInt(all.size())).asOf().plusDays(random.nextInt(3) - 1);
            List<Row> upToDay =
                    all.stream().filter(row -> !row.asOf().isAfter(day)).toList();
            assertThat(rows(whole.stream().map(history -> cut(history, day)).toList()))
                    .as("cut at " + day)
                    .isEqualTo(upToDay);
        }
    }

    @Test
    void withholdingLaterRecordsChangesNoEarlierRowOfAnOrdinaryEstate() {
        changesNothingBeforeTheCut(Laws.ordinary(), 11);
    }

    @Test
    void norOfAnEstateWithMuchUnrecordedWorkAndDriftingInstruments() {
        changesNothingBeforeTheCut(Laws.drifting(), 12);
    }

    /** Guards the test itself: rows do depend on what came before. */
    @Test
    void withholdingAnEarlierSurveyDoesChangeLaterRows() {
        List<StringHistory> whole = estate(Laws.ordinary(), 11);
        StringHistory first = whole.get(0);
        List<StringHistory> without = new ArrayList<>(whole);
        without.set(
                0, withSurveys(first, first.surveys().subList(1, first.surveys().size())));
        assertThat(rows(without).get(rows(without).size() - 1))
                .isNotEqualTo(rows(whole).get(rows(whole).size() - 1));
    }

    private static StringHistory withSurveys(StringHistory history, List<SurveyReadings> surveys) {
        return new StringHistory(history.plan(), history.spells(), history.remakes(), surveys);
    }

    private static byte[] stateFrom(StringHistory history) {
        Forecaster forecaster = Forecaster.of(history, SET);
        return forecaster.follow(history.surveys()).toBytes(SET);
    }

    /** Goes back to the state stored before the survey in question and takes the others in again. */
    private static byte[] rebuiltFrom(StringHistory before, StringHistory after, int from) {
        Forecaster forecaster = Forecaster.of(before, SET);
        ForecastState stored = forecaster.follow(before.surveys().subList(0, from));
        ForecastState state = ForecastState.fromBytes(stored.toBytes(SET), SET);
        assertThat(state).isNotNull();
        for (SurveyReadings survey :
                after.surveys().subList(from, after.surveys().size())) {
            state = Forecaster.of(after, SET).advance(state, survey);
        }
        return state.toBytes(SET);
    }

    @Test
    void aVoidedSurveyLeavesNoTrace() {
        StringHistory whole = estate(Laws.ordinary(), 13).get(1);
        List<SurveyReadings> others = new ArrayList<>(whole.surveys());
        others.remove(3);
        StringHistory voided = withSurveys(whole, others);
        assertThat(rebuiltFrom(whole, voided, 3)).isEqualTo(stateFrom(voided)).isNotEqualTo(stateFrom(whole));
    }

    @Test
    void anAmendedSurveyCountsAsIfItHadBeenHandedInLikeThat() {
        StringHistory whole = estate(Laws.ordinary(), 13).get(1);
        List<SurveyReadings> surveys = new ArrayList<>(whole.surveys());
        surveys.set(4, raised(surveys.get(4), 2, 1.3));
        StringHistory amended = withSurveys(whole, surveys);
        assertThat(rebuiltFrom(whole, amended, 4)).isEqualTo(stateFrom(amended)).isNotEqualTo(stateFrom(whole));
    }

    private static SurveyReadings raised(SurveyReadings survey, int index, double factor) {
        double[] ohmic = survey.ohmic().clone();
        ohmic[index] *= factor;
        return new SurveyReadings(
                survey.surveyId(),
                survey.takenAt(),
                survey.takenOn(),
                survey.ohmicKind(),
                survey.instrument(),
                survey.ambientCelsius(),
                survey.stringVolts(),
                survey.rippleAmps(),
                survey.onFloat(),
                ohmic,
                survey.volts(),
                survey.celsius(),
                survey.linkMicroohms());
    }
}
