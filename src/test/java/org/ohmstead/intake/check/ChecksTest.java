package org.ohmstead.intake.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

class ChecksTest {

    @Test
    void aCleanSurveyIsNotRemarkedOn() {
        assertThat(Walk.along(60).with("string volts V", "135.0").remarked()).isEmpty();
    }

    @Test
    void aSkippedJarIsNamed() {
        Remark remark = Walk.along(60).skipping(17).remark(RemarkCode.POSITION_MISSING);

        assertThat(remark.place().words()).isEqualTo("jar 17");
        assertThat(remark.seen()).isEqualTo("59 jars measured");
        assertThat(remark.severity()).isEqualTo(Severity.HOLD);
    }

    @Test
    void skippedJarsAreSaidAsRanges() {
        Walk walk = Walk.along(60).skipping(3).skipping(7).skipping(8).skipping(9);

        assertThat(walk.remark(RemarkCode.POSITION_MISSING).place().words()).isEqualTo("jars 3, 7–9");
    }

    @Test
    void aDoubledPositionIsFoundOnItsLineAndTheFirstOneCounts() {
        CheckedSurvey checked = Walk.along(4).row(2, "0.9", "2.2", "30").checked();

        assertThat(checked.remarks()).extracting(Remark::code).containsExactly(RemarkCode.POSITION_DOUBLED);
        assertThat(checked.remarks().get(0).place().line()).isEqualTo(11);
        assertThat(checked.readings().ohmic()[1]).isEqualTo(0.412);
    }

    @Test
    void positionsBeyondTheStringAreForeign() {
        Walk walk = Walk.along(4).row(5, "0.41", "2.25", "24").row(6, "0.41", "2.25", "24");

        assertThat(walk.remark(RemarkCode.POSITION_FOREIGN).place().words()).isEqualTo("positions 5–6");
    }

    @Test
    void aLastJarWithoutValuesMeansTheClosingReadingWasLeftOut() {
        assertThat(Walk.along(60).skipping(60).remarked()).containsExactly(RemarkCode.LAST_JAR_MISSING);
    }

    @Test
    void twoJarsMissingAtTheEndAreSkippedJars() {
        assertThat(Walk.along(60).skipping(60).skipping(59).remarked())
                .contains(RemarkCode.POSITION_MISSING)
                .doesNotContain(RemarkCode.LAST_JAR_MISSING);
    }

    @Test
    void aReadingNearZeroInPlaceOfTheLastLinkIsTheClosingReadingAndNoLink() {
        CheckedSurvey checked = Walk.along(60).link(60, "0.3").checked();

        assertThat(checked.remarks()).extracting(Remark::code).containsExactly(RemarkCode.CLOSING_READING);
        assertThat(checked.readings().linkMicroohms()[60]).containsExactly(Double.NaN);
        assertThat(checked.readings().ohmic()[59]).isPositive();
    }

    @Test
    void aClosingReadingInARowOfItsOwnLeavesTheLastLinkAlone() {
        CheckedSurvey checked = Walk.along(60).row(61, "0.002", "0.001", "0.4").checked();

        assertThat(checked.remarks()).extracting(Remark::code).containsExactly(RemarkCode.CLOSING_READING);
        assertThat(checked.readings().linkMicroohms()[60]).containsExactly(11.9);
    }

    /** First and last, post to lug, are about half a mid-string one: US Bureau of Reclamation FIST 3-6 (1997) pp. 7-8. */
    @Test
    void aTerminalLinkOfHalfAMidStringLinkIsNoClosingReading() {
        assertThat(Walk.along(60).link(60, "12.0").remarked()).isEmpty();
    }

    @Test
    void oneStrapReadWhereTwoAreRegisteredIsFound() {
        Remark remark = Walk.along(60).registeredStraps(20, 2).remark(RemarkCode.STRAPS_DIFFER);

        assertThat(remark.place().words()).isEqualTo("link 20");
        assertThat(remark.expected()).isEqualTo("2 straps");
    }

    @Test
    void twoStrapsReadWhereOneIsRegisteredAreFoundAndKept() {
        Walk walk = Walk.along(3)
                .titled("position,jar mΩ,jar V,link µΩ,link 2 µΩ")
                .skipping(2)
                .row(2, "0.41", "2.25", "48", "49");

        assertThat(walk.remarked()).containsExactly(RemarkCode.STRAPS_DIFFER);
        assertThat(walk.checked().readings().linkMicroohms()[2]).containsExactly(48, 49);
    }

    @Test
    void aLinkLeftOutAmongOthersIsDoubtedButNoLinksAtAllAreNot() {
        assertThat(Walk.along(60).link(8, "").remarked()).containsExactly(RemarkCode.LINKS_UNMEASURED);
        assertThat(Walk.along(60).everyLink("").remarked()).isEmpty();
    }

    @Test
    void microohmsUnderAMilliohmTitleAreAUnitSlip() {
        assertThat(Walk.along(60).everyJar("412", "2.25").remarked()).containsExactly(RemarkCode.UNIT_SLIP);
    }

    @Test
    void ohmsUnderAMilliohmTitleAreAUnitSlip() {
        assertThat(Walk.along(60).everyJar("0.000412", "2.25").remarked()).containsExactly(RemarkCode.UNIT_SLIP);
    }

    @Test
    void siemensUnderAMilliohmTitleAreAReciprocalSlip() {
        Walk walk = Walk.along(60)
                .after("2025-11-10T10:00:00Z", OhmicKind.IMPEDANCE, 60, 21, 4.1, 24)
                .everyJar("244", "2.25");

        assertThat(walk.remarked()).containsExactly(RemarkCode.RECIPROCAL_SLIP);
    }

    @Test
    void milliohmsUnderAMicroohmTitleOfTheLinksAreAUnitSlip() {
        assertThat(Walk.along(60).everyLink("0.024").remarked()).contains(RemarkCode.UNIT_SLIP);
    }

    @Test
    void millivoltsUnderAVoltTitleAreAUnitSlip() {
        assertThat(Walk.along(60).everyJar("0.412", "2251").remarked()).containsExactly(RemarkCode.UNIT_SLIP);
    }

    /** Gates of healthy cells, from memory (low to medium confidence): both ends of each row pass. */
    @ParameterizedTest
    @CsvSource({
        "1, 100, 0.6, 1.5",
        "1, 200, 0.4, 0.9",
        "1, 500, 0.2, 0.5",
        "1, 1000, 0.12, 0.35",
        "1, 2000, 0.07, 0.2",
        "6, 100, 3, 8"
    })
    void healthyJarsPassTheGates(int cells, double ampereHours, String low, String high) {
        String volts = cells == 1 ? "2.25" : "13.5";
        Walk walk = Walk.along(4).ofJars(Technology.AGM, cells, ampereHours);

        assertThat(walk.everyJar(low, volts).remarked()).isEmpty();
        assertThat(walk.everyJar(high, volts).remarked()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.02", "0", "-0.4", "9.0"})
    void aValueNoJarCanHaveIsAMisprobe(String ohmic) {
        Remark remark = Walk.along(60).ohmic(31, ohmic).remark(RemarkCode.OHMIC_IMPOSSIBLE);

        assertThat(remark.place().words()).isEqualTo("jar 31");
        assertThat(remark.severity()).isEqualTo(Severity.HOLD);
    }

    @Test
    void nickelCadmiumHasNoGateButZero() {
        Walk walk = Walk.along(4).ofJars(Technology.NICKEL_CADMIUM, 1, 400).everyJar("9", "1.42");

        assertThat(walk.remarked()).isEmpty();
        assertThat(walk.ohmic(2, "0").remarked()).containsExactly(RemarkCode.OHMIC_IMPOSSIBLE);
    }

    @Test
    void aJarAtDoubleItsLastValueIsDoubtedWithBothValues() {
        Remark remark = Walk.along(60)
                .after("2025-11-10T10:00:00Z", OhmicKind.IMPEDANCE, 60, 21, 0.41, 24)
                .ohmic(17, "0.9")
                .remark(RemarkCode.OHMIC_JUMPED);

        assertThat(remark.seen()).isEqualTo("0.9 mΩ");
        assertThat(remark.expected()).isEqualTo("last time 0.41 mΩ");
    }

    @Test
    void aLinkAtFourTimesItsLastValueIsDoubted() {
        Walk walk = Walk.along(60)
                .after("2025-11-10T10:00:00Z", OhmicKind.IMPEDANCE, 60, 21, 0.41, 24)
                .link(9, "98");

        assertThat(walk.remark(RemarkCode.LINK_JUMPED).place().words()).isEqualTo("link 9");
    }

    @Test
    void aNegativeLinkIsImpossible() {
        assertThat(Walk.along(60).link(9, "-24").remarked()).containsExactly(RemarkCode.LINK_IMPOSSIBLE);
    }

    @ParameterizedTest
    @CsvSource({"-2.25, VOLTS_NEGATIVE", "0.02, VOLTS_TINY", "-0.02, VOLTS_TINY", "3.4, VOLTS_IMPOSSIBLE"})
    void aVoltageThatCannotBeIsHeld(String volts, RemarkCode code) {
        assertThat(Walk.along(60).volts(5, volts).remarked()).containsExactly(code);
    }

    @ParameterizedTest
    @CsvSource({"135.0,", "136.0,", "137.2, VOLTS_SUM_OFF", "132.8, VOLTS_SUM_OFF", "141, VOLTS_SUM_FAR_OFF"})
    void jarVoltsAddUpToTheStringsWithinOnePercent(String stringVolts, RemarkCode code) {
        Walk walk = Walk.along(60).with("string volts V", stringVolts);

        assertThat(walk.remarked()).isEqualTo(code == null ? List.of() : List.of(code));
    }

    @Test
    void voltsAreOnlySummedWhenEveryJarHasOne() {
        assertThat(Walk.along(60).with("string volts V", "135").volts(5, "").remarked())
                .isEmpty();
    }

    /** Current must be clamped inside the string under test: common practice, no source; 5 % is the default. */
    @ParameterizedTest
    @CsvSource({"9.6, false", "10.4, false", "9.4, true", "10.6, true"})
    void aClampMoreThanFivePercentOffTheInjectedCurrentIsDoubted(String clamped, boolean doubted) {
        Walk walk = Walk.along(60).with("injected current A", "10").with("clamped current A", clamped);

        assertThat(walk.remarked().contains(RemarkCode.CURRENT_PAST_CLAMP)).isEqualTo(doubted);
    }

    /** At most 5 A rms per 100 Ah of the 8 h rating: C&D RS-990 p. 18. */
    @ParameterizedTest
    @CsvSource({"20.0, false", "20.1, true"})
    void rippleAboveFiveAmpsPerHundredAmpereHoursIsDoubted(String ripple, boolean doubted) {
        assertThat(Walk.along(60).with("ripple current A", ripple).remarked().contains(RemarkCode.RIPPLE_HIGH))
                .isEqualTo(doubted);
    }

    @Test
    void aRemarkOnAFactNamesItsLine() {
        Remark remark = Walk.along(60).with("ripple current A", "31").remark(RemarkCode.RIPPLE_HIGH);

        // below the heading, ambient and ohmic kind
        assertThat(remark.place()).isEqualTo(new Place("ripple current", 4, 2));
    }

    @Test
    void aRemarkOnAFactThatIsNotGivenPointsAtNoLine() {
        assertThat(Walk.along(60)
                        .without("ambient °C")
                        .remark(RemarkCode.TEMPERATURE_MISSING)
                        .place())
                .isEqualTo(new Place("ambient", 0, 0));
    }

    @Test
    void noTemperatureIsNoted() {
        assertThat(Walk.along(60).without("ambient °C").remarked()).containsExactly(RemarkCode.TEMPERATURE_MISSING);
    }

    @Test
    void fahrenheitUnderACelsiusKeyIsOdd() {
        assertThat(Walk.along(60).with("ambient °C", "71").remarked()).containsExactly(RemarkCode.TEMPERATURE_ODD);
    }

    /** More than 5 K off the baseline survey is marked (from memory, low confidence). */
    @ParameterizedTest
    @CsvSource({"26, false", "26.1, true", "16, false", "15.9, true"})
    void moreThanFiveKelvinOffTheBaselineIsDoubted(String celsius, boolean doubted) {
        Walk walk = Walk.along(60)
                .after("2025-11-10T10:00:00Z", OhmicKind.IMPEDANCE, 60, 21, 0.41, 24)
                .with("ambient °C", celsius);

        assertThat(walk.remarked().contains(RemarkCode.TEMPERATURE_FAR)).isEqualTo(doubted);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-20T12:10,",
        "2026-11-20T12:20, TIME_FUTURE",
        "2027-11-18T09:42, TIME_FUTURE",
        "2019-02-28T09:42, TIME_BEFORE_SERVICE",
        "2026-10-25T01:30, SITE_TIME_DOUBTFUL"
    })
    void aTimeThatCannotBeIsFound(String takenAt, RemarkCode code) {
        Walk walk = Walk.along(60).with("taken at", takenAt);

        assertThat(walk.remarked()).isEqualTo(code == null ? List.of() : List.of(code));
    }

    @Test
    void aLateArrivalIsNotedAsOutOfOrder() {
        Walk walk = Walk.along(60).after("2026-11-19T10:00:00Z", OhmicKind.IMPEDANCE, 60, 21, 0.41, 24);

        assertThat(walk.remarked()).containsExactly(RemarkCode.TIME_OUT_OF_ORDER);
    }

    @Test
    void aSecondSurveyOfTheDayWaitsForAPerson() {
        Walk walk = Walk.along(60).after("2026-11-18T08:00:00Z", OhmicKind.IMPEDANCE, 60, 21, 0.41, 24);

        assertThat(walk.remarked()).containsExactly(RemarkCode.TIME_SAME_DAY);
    }

    @Test
    void anotherKindOrFrequencyThanTheBaselinesIsDoubted() {
        Walk walk = Walk.along(60).after("2025-11-10T10:00:00Z", OhmicKind.RESISTANCE, 60, 21, 0.35, 24);

        assertThat(walk.remarked()).containsExactly(RemarkCode.OHMIC_KIND_CHANGED);
        assertThat(walk.with("ohmic frequency Hz", "80").remarked())
                .containsExactly(RemarkCode.OHMIC_KIND_CHANGED, RemarkCode.OHMIC_FREQUENCY_CHANGED);
    }

    @Test
    void offFloatAndPastCalibrationAreDoubted() {
        Walk walk = Walk.along(60).with("on float", "no").with("instrument calibration due", "2026-11-17");

        assertThat(walk.remarked()).containsExactly(RemarkCode.OFF_FLOAT, RemarkCode.CALIBRATION_PAST);
        assertThat(Walk.along(60)
                        .with("instrument calibration due", "2026-11-18")
                        .remarked())
                .isEmpty();
    }

    @Test
    void everyCodeSaysWhatIsWrongAndWhatToDo() {
        Set<RemarkCode> codes = EnumSet.allOf(RemarkCode.class);

        assertThat(codes).allSatisfy(code -> {
            assertThat(code.message()).endsWith(".");
            assertThat(code.remedy()).endsWith(".");
        });
        assertThat(Arrays.stream(Severity.values()))
                .allMatch(severity -> codes.stream().anyMatch(code -> code.severity() == severity));
    }
}
