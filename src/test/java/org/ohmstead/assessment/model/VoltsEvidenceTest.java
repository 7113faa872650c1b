package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VoltsEvidenceTest {

    private static final double NAN = Double.NaN;

    /** Jars of six cells at 13.50 V: 2.25 V a cell. */
    private static AString sixCells() {
        return AString.of(6).ofCells(6).surveyed("2018-07-10");
    }

    private static VoltsEvidence of(AString string, int position) {
        return VoltsEvidence.of(new Panel(string.history(), Limits.standard()), position);
    }

    private static void isNothing(VoltsEvidence volts) {
        assertThat(new double[] {
                    volts.volts(),
                    volts.perCell(),
                    volts.medianPerCell(),
                    volts.offMedian(),
                    volts.perCellBefore(),
                    volts.offMedianBefore()
                })
                .containsOnly(NAN);
    }

    @Test
    void aJarsVoltsAreSharedByItsCellsAndHeldAgainstTheMedian() {
        VoltsEvidence volts = of(sixCells().jarFloatsAt(3, 12.96), 3);
        assertThat(volts.volts()).isEqualTo(12.96);
        assertThat(volts.perCell()).isCloseTo(2.16, within(1e-12));
        assertThat(volts.medianPerCell()).isCloseTo(2.25, within(1e-12));
        assertThat(volts.offMedian()).isCloseTo(-0.04, within(1e-12));
        assertThat(volts.perCellBefore()).isNaN();
        assertThat(volts.offMedianBefore()).isNaN();
    }

    @Test
    void theSurveyBeforeIsHeldAgainstItsOwnMedian() {
        AString string = sixCells().jarFloatsAt(3, 13.23).surveyed("2019-07-10").jarFloatsAt(3, 12.96);
        VoltsEvidence volts = of(string, 3);
        assertThat(volts.perCellBefore()).isCloseTo(2.205, within(1e-12));
        assertThat(volts.offMedianBefore()).isCloseTo(-0.02, within(1e-12));
    }

    @Test
    void whereAJarWasNotReadTheSurveyBeforeSpeaks() {
        AString string = sixCells().jarFloatsAt(3, 13.23).surveyed("2019-07-10");
        assertThat(of(string.jarFloatsAt(3, NAN), 3).volts()).isEqualTo(13.23);
        assertThat(of(string.jarFloatsAt(3, 0), 3).volts()).isEqualTo(13.23);
        isNothing(of(sixCells().jarFloatsAt(3, NAN), 3));
    }

    @Test
    void surveysOffFloatSayNothing() {
        AString string = sixCells().jarFloatsAt(3, 13.23).surveyed("2019-07-10").jarFloatsAt(3, 12.3);
        assertThat(of(string.offFloat(), 3).volts()).isEqualTo(13.23);
        isNothing(of(sixCells().offFloat(), 3));
    }

    @Test
    void aJarPutInSinceHasNoVoltsOfTheOneBeforeIt() {
        isNothing(of(sixCells().withJar(3, "2018-09-01", null, NAN), 3));
        VoltsEvidence read = of(sixCells().withJar(3, "2018-09-01", null, NAN).surveyed("2019-07-10"), 3);
        assertThat(read.volts()).isEqualTo(13.5);
        assertThat(read.perCellBefore()).isNaN();
    }

    @Test
    void threeJarsHaveAMedianAndTwoHaveNone() {
        assertThat(VoltsEvidence.median(new double[] {2.2, NAN, 2.3, 2.25})).isEqualTo(2.25);
        assertThat(VoltsEvidence.median(new double[] {2.2, NAN, 2.3})).isNaN();
    }
}
