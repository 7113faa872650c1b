package org.ohmstead.capacity.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ohmstead.capacity.model.JarFinding.REVERSED;
import static org.ohmstead.capacity.model.JarFinding.SOUND;
import static org.ohmstead.capacity.model.JarFinding.UNDECIDED;
import static org.ohmstead.capacity.model.JarFinding.UNREAD;
import static org.ohmstead.capacity.model.JarFinding.WEAK;

import org.junit.jupiter.api.Test;

/** Jars of six cells with an end voltage of 1.75 V per cell: 10.50 V a jar. Rated 100 min. */
class JarResultsTest {

    private static JarFinding[] findings(double percent, double[] endVolts, double... ownMinutes) {
        JarResults results =
                new JarResults(new Ratings(100, 100, 25, 1.75), new Capacity(percent, false, ""), 6, percent);
        return results.of(endVolts, ownMinutes).stream().map(JarResult::finding).toArray(JarFinding[]::new);
    }

    @Test
    void inASoundStringAJarALittleUnderItsLineEndedWithTheString() {
        assertThat(findings(98, new double[] {10.62, 10.45, 10.19, -0.4, Double.NaN}))
                .containsExactly(SOUND, SOUND, WEAK, REVERSED, UNREAD);
    }

    @Test
    void inAWeakStringEveryJarUnderItsLineIsWeakAndTheOthersAreNotDecided() {
        assertThat(findings(72, new double[] {10.62, 10.45})).containsExactly(UNDECIDED, WEAK);
    }

    @Test
    void aJarsOwnTimeDecidesWhereItIsKnown() {
        double unknown = Double.NaN;
        assertThat(findings(95, new double[] {10.49, 9.8, 10.6}, 79.9, 80.0, unknown))
                .containsExactly(WEAK, SOUND, SOUND);
    }

    @Test
    void theReasonHasTheNumbers() {
        JarResults results = new JarResults(new Ratings(100, 100, 25, 1.75), new Capacity(95, false, ""), 6, 95);
        JarResult weak = results.of(new double[] {9.9}, new double[] {60}).get(0);
        assertThat(weak.ownPercent()).isEqualTo(60.0);
        assertThat(weak.reason()).isEqualTo("Reached 10.50 V after 60.0 min, 60.0 % of rated.");
        assertThat(results.of(new double[] {9.9}, new double[0]).get(0).reason())
                .isEqualTo("Ended at 9.900 V, 0.600 V under its 10.50 V.");
    }
}
