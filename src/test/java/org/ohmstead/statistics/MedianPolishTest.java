package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MedianPolishTest {

    private static final double NAN = Double.NaN;

    @Test
    void deathsFromParachutingAgree() {
        Table deaths = Table.read("deaths.csv");
        double[][] columns = {deaths.numbers("1973"), deaths.numbers("1974"), deaths.numbers("1975")};
        double[][] table = new double[5][3];
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 3; j++) {
                table[i][j] = columns[j][i];
            }
        }
        Reference.set("medpolish_deaths").agreesWith(named(MedianPolish.of(table)), 1e-12);
    }

    private static Map<String, Double> named(MedianPolish polish) {
        Map<String, Double> computed = new HashMap<>();
        computed.put("overall", polish.overall());
        double sum = 0;
        for (int i = 0; i < polish.rows().length; i++) {
            computed.put("row" + (i + 1), polish.rows()[i]);
            for (int j = 0; j < polish.columns().length; j++) {
                computed.put("col" + (j + 1), polish.columns()[j]);
                computed.put("resid[" + (i + 1) + "," + (j + 1) + "]", polish.residuals()[i][j]);
                sum += Math.abs(polish.residuals()[i][j]);
            }
        }
        computed.put("sum_abs_resid", sum);
        return computed;
    }

    @Test
    void anAdditiveTableComesApartExactlyThoughACellIsMissing() {
        MedianPolish polish = MedianPolish.of(new double[][] {{9, 10, 11}, {19, NAN, 21}, {NAN, 30, 31}});
        assertThat(polish.overall()).isEqualTo(20, within(1e-12));
        assertThat(polish.rows()).containsExactly(new double[] {-10, 0, 10}, within(1e-12));
        assertThat(polish.columns()).containsExactly(new double[] {-1, 0, 1}, within(1e-12));
        assertThat(polish.residuals()[1][1]).isNaN();
        assertThat(polish.residuals()[2][2]).isEqualTo(0, within(1e-12));
    }

    @Test
    void aRowWithoutValuesDisturbsNothing() {
        MedianPolish polish = MedianPolish.of(new double[][] {{1, 2, 3}, {NAN, NAN, NAN}, {3, 4, 5}});
        assertThat(polish.overall()).isEqualTo(3);
        assertThat(polish.rows()).containsExactly(-1, NAN, 1);
        assertThat(polish.columns()).containsExactly(-1, 0, 1);
    }

    @Test
    void theTableIsLeftAsItWas() {
        double[][] table = {{1, 2}, {3, 5}};
        MedianPolish.of(table);
        assertThat(table).isDeepEqualTo(new double[][] {{1, 2}, {3, 5}});
    }

    @Test
    void nothingHasNoLevel() {
        assertThat(MedianPolish.of(new double[0][]).overall()).isNaN();
        assertThat(MedianPolish.of(new double[][] {{NAN}}).overall()).isNaN();
        assertThat(MedianPolish.of(new double[][] {{}}).overall()).isNaN();
    }
}
