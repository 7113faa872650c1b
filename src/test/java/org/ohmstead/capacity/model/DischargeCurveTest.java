package org.ohmstead.capacity.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class DischargeCurveTest {

    /** Rests for two rows, is discharged for as many as are asked, rests again; jar 2 falls fastest, jar 3 is not read. */
    private static DischargeRecord record(int rows) {
        double[] minutes = new double[rows + 3];
        double[] amps = new double[rows + 3];
        double[] volts = new double[rows + 3];
        double[][] jars = new double[rows + 3][];
        for (int row = 0; row < minutes.length; row++) {
            minutes[row] = 10 + row;
            amps[row] = row < 2 || row == rows + 2 ? 0 : 50;
            double fallen = 0.2 * Math.max(0, row - 2) / rows;
            jars[row] = new double[] {2.0 - fallen, 2.0 - 3 * fallen, Double.NaN, 2.0 - 2 * fallen};
            volts[row] = 8 - 7 * fallen;
        }
        return new DischargeRecord(minutes, amps, volts, jars);
    }

    @Test
    void itRunsFromTheFirstCurrentToTheLastAndCountsTheMinutesFromThere() {
        DischargeCurve curve = DischargeCurve.of(record(60), 2, 300);
        assertThat(curve.minutes()).hasSize(60).startsWith(0, 1, 2).endsWith(59);
        assertThat(curve.amps()).containsOnly(50);
    }

    @Test
    void theLowestJarsComeLastAndThoseNotReadNotAtAll() {
        assertThat(DischargeCurve.of(record(60), 2, 300).lowest())
                .extracting(DischargeCurve.Jar::position)
                .containsExactly(4, 2);
        assertThat(DischargeCurve.of(record(60), 9, 300).lowest())
                .extracting(DischargeCurve.Jar::position)
                .containsExactly(1, 4, 2);
    }

    @Test
    void aLongRecordIsThinnedEvenlyAndKeepsItsEnds() {
        DischargeCurve curve = DischargeCurve.of(record(50_000), 1, 25);
        assertThat(curve.minutes()).hasSize(25).startsWith(0).endsWith(49_999).isSorted();
        double[] steps = new double[24];
        Arrays.setAll(steps, i -> curve.minutes()[i + 1] - curve.minutes()[i]);
        assertThat(Arrays.stream(steps).boxed()).allMatch(step -> step == 2083 || step == 2084);
        assertThat(curve.lowest().get(0).volts()).hasSize(25);
    }

    @Test
    void aRecordWithoutJarsShowsTheStringAlone() {
        DischargeRecord all = record(10);
        DischargeRecord bare = new DischargeRecord(all.minutes(), all.amps(), all.stringVolts(), new double[0][]);
        assertThat(DischargeCurve.of(bare, 4, 300).lowest()).isEmpty();
    }
}
