package org.ohmstead.intake.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Surveys beside their own string's history; invented, seeded strings of 60 jars. Rates: {@code ops/bench/walks}. */
class HistoryChecksTest {

    private static final int JARS = 60;
    private static final int[] IN_ORDER = RememberedString.inOrder(JARS);

    private final RememberedString string = new RememberedString(11, JARS);

    @Test
    void aCleanWalkOfAKnownStringIsNotRemarkedOn() {
        for (int seed = 0; seed < 20; seed++) {
            RememberedString other = new RememberedString(seed, JARS);
            Walk walk = other.walked(Walk.along(JARS).recalling(other.surveys(4)), IN_ORDER);
            assertThat(walk.remarked()).isEmpty();
        }
    }

    @Test
    void aWalkFromTheOtherEndIsHeld() {
        int[] reversed = IntStream.range(0, JARS).map(k -> JARS - k).toArray();

        assertThat(remarkOn(RemarkCode.ORDER_REVERSED, reversed).seen()).contains("% sure");
    }

    @Test
    void aSkippedJarIsHeldAtItsPlaceAlthoughTheRowsCountUpToTheEnd() {
        int[] skipping = IntStream.rangeClosed(1, JARS)
                .map(row -> row < 23 ? row : Math.min(row + 1, JARS))
                .toArray();
        Remark remark = remarkOn(RemarkCode.ORDER_SKIPPED, skipping);

        assertThat(remark.seen()).containsPattern("jar 2[234] left out");
        assertThat(remark.place().line()).isPositive();
    }

    @Test
    void aJarReadTwiceIsHeld() {
        int[] twice = IntStream.rangeClosed(1, JARS)
                .map(row -> row <= 40 ? row : row - 1)
                .toArray();

        assertThat(remarkOn(RemarkCode.ORDER_READ_TWICE, twice).seen()).containsPattern("jar (39|40|41) read twice");
    }

    @Test
    void theReadingsOfANeighbourAreHeldUnderItsName() {
        RememberedString neighbour = new RememberedString(12, JARS);
        Walk walk = Walk.along(JARS).recalling(string.surveys(4)).beside("FEL-03 / A", neighbour.surveys(4));

        assertThat(neighbour
                        .walked(walk, IN_ORDER)
                        .remark(RemarkCode.ORDER_OTHER_STRING)
                        .seen())
                .contains("FEL-03 / A");
    }

    @Test
    void whatOneEarlierSurveyCannotTellIsSaidAndNotHeld() {
        Walk walk = string.walked(Walk.along(JARS).recalling(string.surveys(1)), IN_ORDER);

        assertThat(walk.remarked()).containsExactly(RemarkCode.ORDER_UNSEEN);
        assertThat(RemarkCode.ORDER_UNSEEN.severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void aSurveyWithTheValuesOfAnEarlierOneIsHeld() {
        List<EarlierSurvey> earlier = string.surveys(4);
        Walk walk = Walk.along(JARS).recalling(rounded(earlier));
        for (int jar = 1; jar <= JARS; jar++) {
            walk.ohmic(jar, String.format(Locale.ROOT, "%.3f", earlier.get(1).ohmic()[jar - 1]));
        }

        assertThat(walk.remark(RemarkCode.COPIED).seen()).isEqualTo("60 of 60 values as on 2025-02-16");
    }

    @Test
    void figuresCarriedOverWithALittleChangeAreDoubted() {
        List<EarlierSurvey> earlier = string.surveys(5);
        Walk walk = Walk.along(JARS).recalling(earlier);
        for (int jar = 1; jar <= JARS; jar++) {
            double touched = earlier.get(4).ohmic()[jar - 1] + 0.001 * (jar % 3 - 1);
            walk.ohmic(jar, String.format(Locale.ROOT, "%.4f", touched));
        }

        assertThat(walk.remarked()).contains(RemarkCode.COPIED_ALIKE);
    }

    @Test
    void anOlderSurveyCarriedOverIsDoubtedAsWellAsTheLast() {
        assertThat(of(40, LikenessContest.Origin.COPIED_TOUCHED)).isGreaterThanOrEqualTo(38);
        assertThat(of(40, LikenessContest.Origin.COPIED)).isEqualTo(40);
    }

    @Test
    void honestSurveysAreNotAccused() {
        assertThat(of(25, LikenessContest.Origin.HONEST)).isZero();
        assertThat(of(25, LikenessContest.Origin.HONEST_TWO_DIGITS)).isZero();
    }

    @Test
    void threeTimesTheUsualNoiseIsMostlyDoubted() {
        assertThat(of(40, LikenessContest.Origin.SCATTERED)).isGreaterThanOrEqualTo(24);
    }

    @Test
    void favouriteLastDigitsAreDoubtedInALongString() {
        assertThat(new LikenessContest(20)
                        .run(240, LikenessContest.Origin.TYPED)
                        .remarked())
                .isGreaterThanOrEqualTo(16);
    }

    @Test
    void favouriteDigitsThatEarlierSurveysHaveTooAreTheInstrumentsHabit() {
        Walk walk = Walk.along(JARS).recalling(evened(string.surveys(4)));
        Walk first = Walk.along(JARS);
        for (EarlierSurvey now : evened(string.surveys(1))) {
            for (int jar = 1; jar <= JARS; jar++) {
                String value = String.format(Locale.ROOT, "%.4f", now.ohmic()[jar - 1]);
                walk.ohmic(jar, value);
                first.ohmic(jar, value);
            }
        }

        assertThat(first.remark(RemarkCode.DIGITS_REGULAR).seen()).startsWith("last digits 0 to 9 come up ");
        assertThat(walk.remarked()).doesNotContain(RemarkCode.DIGITS_REGULAR);
    }

    @Test
    void fewerDigitsThanTheInstrumentShowedLastTimeAreDoubtedAndAnotherInstrumentMayShowFewer() {
        for (String instrument : List.of("", "TS-9")) {
            Walk walk = Walk.along(JARS).with("instrument", instrument).recalling(string.surveys(4));
            EarlierSurvey now = string.surveys(1).get(0);
            for (int jar = 1; jar <= JARS; jar++) {
                walk.ohmic(jar, String.format(Locale.ROOT, "%.2f", now.ohmic()[jar - 1]));
            }

            assertThat(walk.remarked().contains(RemarkCode.DIGITS_REGULAR)).isEqualTo(instrument.isEmpty());
        }
    }

    @Test
    void siemensInWholeTensAreAnInstrumentsOwnDigits() {
        Walk walk = Walk.along(JARS).titled("position,jar S,jar V,link µΩ").with("ohmic kind", "conductance");
        EarlierSurvey now = string.surveys(1).get(0);
        for (int jar = 1; jar <= JARS; jar++) {
            walk.ohmic(jar, String.format(Locale.ROOT, "%d", Math.round(100 / now.ohmic()[jar - 1]) * 10));
        }

        assertThat(walk.remarked()).doesNotContain(RemarkCode.DIGITS_REGULAR);
    }

    @Test
    void wildScatterIsDoubted() {
        Walk walk = string.walked(Walk.along(JARS).recalling(string.surveys(5)), IN_ORDER);
        List<EarlierSurvey> shaken = string.surveys(1);
        for (int jar = 1; jar <= JARS; jar++) {
            double factor = 1 + 0.09 * Math.sin(7.0 * jar * jar);
            walk.ohmic(jar, String.format(Locale.ROOT, "%.3f", shaken.get(0).ohmic()[jar - 1] * factor));
        }

        assertThat(walk.remarked()).contains(RemarkCode.SCATTER_HIGH);
    }

    @Test
    void valuesThatEndInOneDigitAreDoubtedUnlessTheyHardlyDiffer() {
        Walk made = Walk.along(JARS);
        Walk flat = Walk.along(JARS);
        for (int jar = 1; jar <= JARS; jar++) {
            made.ohmic(jar, String.format(Locale.ROOT, "%.3f", 0.385 + 0.01 * (jar % 6) + (jar == 9 ? 0.001 : 0)));
            flat.ohmic(jar, jar % 9 == 0 ? "0.413" : "0.412");
        }

        assertThat(made.remarked()).contains(RemarkCode.DIGITS_REGULAR);
        assertThat(flat.remarked()).doesNotContain(RemarkCode.DIGITS_REGULAR);
    }

    @Test
    void aShortStringIsNotWeighedAtAll() {
        RememberedString six = new RememberedString(5, 6);
        Walk walk = six.walked(Walk.along(6).recalling(six.surveys(4)), 6, 5, 4, 3, 2, 1);

        assertThat(walk.remarked()).isEmpty();
    }

    private static int of(int surveys, LikenessContest.Origin origin) {
        return new LikenessContest(surveys).run(JARS, origin).remarked();
    }

    /** As an instrument shows them that knows even digits only. */
    private static List<EarlierSurvey> evened(List<EarlierSurvey> surveys) {
        return inSteps(surveys, 5_000);
    }

    private Remark remarkOn(RemarkCode code, int[] jarOfRow) {
        Walk walk = string.walked(Walk.along(JARS).recalling(string.surveys(4)), jarOfRow);
        assertThat(code.severity()).isEqualTo(Severity.HOLD);
        return walk.remark(code);
    }

    private static List<EarlierSurvey> rounded(List<EarlierSurvey> surveys) {
        return inSteps(surveys, 1_000);
    }

    private static List<EarlierSurvey> inSteps(List<EarlierSurvey> surveys, double stepsForOne) {
        return surveys.stream()
                .map(survey -> new EarlierSurvey(
                        survey.takenAt(),
                        survey.instrument(),
                        survey.kind(),
                        survey.ohmicHertz(),
                        survey.ambientCelsius(),
                        Arrays.stream(survey.ohmic())
                                .map(value -> Math.round(value * stepsForOne) / stepsForOne)
                                .toArray(),
                        survey.volts(),
                        survey.linkMicroohms()))
                .toList();
    }
}
