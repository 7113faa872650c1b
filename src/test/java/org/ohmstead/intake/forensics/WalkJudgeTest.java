package org.ohmstead.intake.forensics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Seeded invented strings; the rates over many of them are printed by {@code ops/bench/walks}. */
class WalkJudgeTest {

    private static final int JARS = 60;

    @Test
    void aCleanWalkIsNotAccused() {
        WalkContest.Tally clean = new WalkContest(25).run(JARS, WalkContest.Slip.CLEAN, true);
        assertThat(clean.runs()).isEqualTo(100);
        assertThat(clean.mistaken()).isZero();
    }

    @ParameterizedTest
    @EnumSource(names = {"REVERSED", "SKIPPED", "READ_TWICE", "OTHER_STRING"})
    void aSlipOfTheWholeWalkIsNoticed(WalkContest.Slip slip) {
        WalkContest.Tally tally = new WalkContest(30).run(JARS, slip, true);
        assertThat(tally.noticed()).isGreaterThanOrEqualTo(28);
        assertThat(tally.located()).isGreaterThanOrEqualTo(26);
    }

    @Test
    void aSkippedJarIsNamedWithTheRunItLiesIn() {
        WalkedString string = new WalkedString(7, JARS);
        Fingerprint own = Fingerprint.of(JARS, string.history(3));
        WalkVerdict verdict = WalkJudge.judge(own, Map.of(), string.walked(Walk.skipping(23, JARS)));
        assertThat(verdict.walk().kind()).isEqualTo(Walk.Kind.SKIPPED);
        assertThat(23).isBetween(verdict.firstJar(), verdict.lastJar());
        assertThat(verdict.probability()).isGreaterThan(0.95);
    }

    @Test
    void aStringSurveyedOnceCanNotBeRecognised() {
        WalkedString string = new WalkedString(7, JARS);
        Fingerprint own = Fingerprint.of(JARS, string.history(1));
        WalkVerdict verdict = WalkJudge.judge(own, Map.of(), string.walked(Walk.fromTheOtherEnd(JARS)));
        assertThat(verdict.isBlind()).isTrue();
        assertThat(verdict.sight().reversal()).isFalse();
    }

    @Test
    void aFlatStringIsSaidToHideAReversal() {
        double[] flat = new double[JARS];
        Arrays.fill(flat, 0.41);
        List<Series> survey = List.of(Series.ofOhmicValues(flat));
        Fingerprint own = Fingerprint.of(JARS, List.of(survey, survey, survey));
        WalkVerdict verdict = WalkJudge.judge(own, Map.of(), survey);
        assertThat(verdict.isInOrder()).isTrue();
        assertThat(verdict.sight().reversal()).isFalse();
        assertThat(verdict.sight().shiftInTheMiddle()).isFalse();
    }

    @Test
    void aSurveyWithoutAnyReadingIsNotAccused() {
        WalkedString string = new WalkedString(7, JARS);
        Fingerprint own = Fingerprint.of(JARS, string.history(3));
        double[] nothing = new double[JARS];
        Arrays.fill(nothing, Double.NaN);
        double[] noLinks = new double[JARS + 1];
        Arrays.fill(noLinks, Double.NaN);
        WalkVerdict verdict = WalkJudge.judge(
                own,
                Map.of(),
                List.of(Series.ofOhmicValues(nothing), Series.ofVolts(nothing), Series.ofLinks(noLinks)));
        assertThat(verdict.isInOrder()).isTrue();
    }
}
