package org.ohmstead.intake.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;

/** The algebra of repairs, on sheets of every size from a seeded generator. */
class StepsTest {

    static IntStream sizes() {
        return IntStream.rangeClosed(2, 40);
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void turningRoundTwiceChangesNothing(int jars) {
        WrittenSheet written = WrittenSheet.ofJars(jars, new SplittableRandom(jars));
        SurveySheet sheet = written.read();

        SurveySheet turned = new Reverse().on(sheet, written.ground());

        assertThat(written.told(turned)).isNotEqualTo(written.told(sheet));
        assertThat(written.told(new Reverse().on(turned, written.ground()))).isEqualTo(written.told(sheet));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void turnedRoundJarKIsJarNPlusOneMinusKAndLinkKIsLinkNMinusK(int jars) {
        WrittenSheet written = WrittenSheet.ofJars(jars, new SplittableRandom(jars));
        LaidOut before = written.laidOut(written.read());
        LaidOut after = written.laidOut(new Reverse().on(written.read(), written.ground()));

        for (int k = 1; k <= jars; k++) {
            assertThat(after.ohmic()[k - 1]).isEqualTo(before.ohmic()[jars - k]);
            assertThat(after.volts()[k - 1]).isEqualTo(before.volts()[jars - k]);
            assertThat(after.lines()[k]).isEqualTo(before.lines()[jars + 1 - k]);
        }
        for (int k = 0; k <= jars; k++) {
            assertThat(after.linkMicroohms()[k]).isEqualTo(before.linkMicroohms()[jars - k]);
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void aGapLetInAndTakenOutAgainChangesNothingWhereTheLastJarIsMissing(int jars) {
        SplittableRandom random = new SplittableRandom(jars);
        WrittenSheet written = WrittenSheet.ofJars(jars, random).without(jars);
        SurveySheet sheet = written.read();
        int place = random.nextInt(1, jars);

        SurveySheet gap = new InsertGap(place).on(sheet, written.ground());

        assertThat(written.laidOut(gap).ohmic()[place - 1]).isNaN();
        assertThat(written.told(new LeaveOut(place).on(gap, written.ground()))).isEqualTo(written.told(sheet));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void aRowTakenOutAndAGapInItsPlaceLoseThatRowOnly(int jars) {
        SplittableRandom random = new SplittableRandom(jars);
        WrittenSheet written = WrittenSheet.ofJars(jars, random);
        int place = random.nextInt(1, jars + 1);

        SurveySheet back =
                new InsertGap(place).on(new LeaveOut(place).on(written.read(), written.ground()), written.ground());

        assertThat(written.told(back))
                .isEqualTo(written.told(written.without(place).read()));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void changingPlacesTwiceChangesNothingAndLeavesTheLinks(int jars) {
        WrittenSheet written = WrittenSheet.ofJars(jars, new SplittableRandom(jars));
        SurveySheet sheet = written.read();
        SwapJars swap = new SwapJars(1, jars);

        SurveySheet swapped = swap.on(sheet, written.ground());

        assertThat(written.laidOut(swapped).ohmic()[0])
                .isEqualTo(written.laidOut(sheet).ohmic()[jars - 1]);
        assertThat(written.laidOut(swapped).linkMicroohms())
                .isDeepEqualTo(written.laidOut(sheet).linkMicroohms());
        assertThat(written.told(swap.on(swapped, written.ground()))).isEqualTo(written.told(sheet));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void thousandUpAndThousandDownKeepEveryDigit(int jars) {
        WrittenSheet written = WrittenSheet.ofJars(jars, new SplittableRandom(jars));
        for (ColumnKind column : new ColumnKind[] {ColumnKind.JAR_OHMIC, ColumnKind.JAR_VOLTS, ColumnKind.LINK}) {
            SurveySheet up = new ScaleColumn(column, 3).on(written.read(), written.ground());
            SurveySheet down = new ScaleColumn(column, -3).on(up, written.ground());

            assertThat(written.told(up)).isNotEqualTo(written.told(down));
            assertThat(written.told(down)).isEqualTo(written.told(written.read()));
        }
    }

    @Test
    void aRowReadAgainToFillTheCountIsLeftOutPastTheEnd() {
        WrittenSheet written = WrittenSheet.ofJars(6, new SplittableRandom(6));
        LaidOut before = written.laidOut(written.read());

        LaidOut after = written.laidOut(new InsertGap(3).on(written.read(), written.ground()));

        assertThat(after.foreign()).isEmpty();
        assertThat(after.ohmic()[5]).isEqualTo(before.ohmic()[4]);
        assertThat(after.linkMicroohms()[5]).isEqualTo(before.linkMicroohms()[4]);
        assertThat(after.linkMicroohms()[3]).containsOnly(Double.NaN);
    }

    @Test
    void aRowBeyondTheEndComesBackInWhenTheSecondReadingIsTakenOut() {
        WrittenSheet written = WrittenSheet.ofJars(6, new SplittableRandom(6)).andRow("7,0.4321,2.2001,11.9");

        LaidOut after = written.laidOut(new LeaveOut(4).on(written.read(), written.ground()));

        assertThat(after.foreign()).isEmpty();
        assertThat(after.ohmic()[5]).isEqualTo(0.4321);
    }

    @Test
    void theClosingReadingStaysAtTheEndWhateverMoves() {
        WrittenSheet written = WrittenSheet.ofJars(6, new SplittableRandom(6)).row(6, "6,0.4100,2.2300,0.3");
        for (Step step : new Step[] {new Reverse(), new InsertGap(3), new LeaveOut(3)}) {
            LaidOut after = written.laidOut(step.on(written.read(), written.ground()));

            assertThat(after.closing()).as(step.words()).isNotNull();
            assertThat(java.util.Arrays.stream(after.linkMicroohms()))
                    .as(step.words())
                    .noneMatch(straps -> straps[0] < 1);
        }
    }

    @Test
    void aJarReadTwiceByADoubleTriggerIsPutRightByLeavingItsRowOut() {
        WrittenSheet written = WrittenSheet.ofJars(6, new SplittableRandom(6)).andRow("3,0.4444,2.2,24");
        LaidOut doubled = written.laidOut(written.read());
        int line = doubled.doubled().get(0).line();

        LaidOut after = written.laidOut(new IgnoreRow(line).on(written.read(), written.ground()));

        assertThat(after.doubled()).isEmpty();
        assertThat(after.ohmic()).isEqualTo(doubled.ohmic());
    }

    @Test
    void oneReadingIsPutRightAndTheReadersComplaintOfItsCellGoes() {
        WrittenSheet written = WrittenSheet.ofJars(4, new SplittableRandom(4)).row(2, "2,O.412,2.2300,24");
        SurveySheet sheet = written.read();
        FixReading fix = new FixReading(ColumnKind.JAR_OHMIC, 2, 0, null, 0.412).seenIn(sheet);

        SurveySheet fixed = fix.on(sheet, written.ground());

        assertThat(sheet.findings()).hasSize(1);
        assertThat(fixed.findings()).isEmpty();
        assertThat(written.laidOut(fixed).ohmic()[1]).isEqualTo(0.412);
        assertThat(fix.words()).isEqualTo("Jar 2: 0.412 ohmic, where nothing stood");
    }

    @Test
    void aCellThatCouldNotBeReadIsDoneWithout() {
        WrittenSheet written = WrittenSheet.ofJars(4, new SplittableRandom(4)).row(2, "2,0.4120,2.23V,24");
        SurveySheet sheet = written.read();
        int line = sheet.findings().get(0).flaw().line();

        assertThat(new Disregard(line, 3).on(sheet, written.ground()).findings())
                .isEmpty();
        assertThatThrownBy(() -> new Disregard(line, 2).on(sheet, written.ground()))
                .isInstanceOf(Refused.class);
    }

    @Test
    void ofALinkTheStrapIsNamedAndOthersStay() {
        WrittenSheet written = WrittenSheet.ofJars(4, new SplittableRandom(4));
        SurveySheet fixed = new FixReading(ColumnKind.LINK, 2, 2, null, 24.5).on(written.read(), written.ground());

        double[] straps = written.laidOut(fixed).linkMicroohms()[2];
        assertThat(straps).hasSize(2).endsWith(24.5);
        assertThat(straps[0]).isEqualTo(written.laidOut(written.read()).linkMicroohms()[2][0]);
    }

    @Test
    void theKindIsSetAndNoNumberIsConverted() {
        WrittenSheet written = WrittenSheet.ofJars(4, new SplittableRandom(4));
        SurveySheet siemens = new SetKind(OhmicKind.CONDUCTANCE).on(written.read(), written.ground());

        assertThat(siemens.facts().ohmicKind()).isEqualTo(OhmicKind.CONDUCTANCE);
        assertThat(written.told(siemens)).isEqualTo(written.told(written.read()));
    }

    @Test
    void placesThatTheStringDoesNotHaveAreRefused() {
        WrittenSheet written = WrittenSheet.ofJars(4, new SplittableRandom(4));
        for (Step step : new Step[] {new InsertGap(5), new LeaveOut(0), new SwapJars(1, 9), new IgnoreRow(99)}) {
            assertThatThrownBy(() -> step.on(written.read(), written.ground())).isInstanceOf(Refused.class);
        }
        assertThatThrownBy(() -> new SwapJars(2, 2)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new ScaleColumn(ColumnKind.JAR_OHMIC, 2)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new FixReading(ColumnKind.LINK, 2, 0, null, 1.0))
                .isInstanceOf(Refused.class);
    }
}
