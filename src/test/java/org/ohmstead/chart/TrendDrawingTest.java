package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TrendDrawingTest {

    private static final double NAN = Double.NaN;

    @Test
    void aMissingReadingLeavesAGap() {
        Drawn drawn = Drawn.read(TrendDrawing.of("t", trend(List.of(), 0.4, 0.41, NAN, 0.43, 0.44)));
        assertThat(strokes(drawn)).isEqualTo(2);
        assertThat(drawn.all("circle", "dot")).hasSize(4);
    }

    @Test
    void theLineStartsAnewWithAReplacedJar() {
        LocalDate replaced = day(2).minusDays(3);
        assertThat(strokes(Drawn.read(TrendDrawing.of("t", trend(List.of(replaced), 0.6, 0.62, 0.4, 0.4)))))
                .isEqualTo(2);
    }

    @Test
    void baselineAndLimitAreNamed() {
        Drawn drawn = Drawn.read(TrendDrawing.of("t", trend(List.of(), 0.4, 0.41)));
        assertThat(drawn.all("text", "level-words")).hasSize(2);
    }

    @Test
    void extremeValuesAreDrawn() {
        for (double[] values : new double[][] {
            {}, {NAN}, {NAN, NAN}, {0}, {0, 0}, {1e-9, 1e9}, {-1e6, 1e6}, {0.3, 0.3, 0.3}, {Double.POSITIVE_INFINITY, 2}
        }) {
            assertThat(Drawn.read(TrendDrawing.of(
                                    "t", new Trend("Jar", "mΩ", days(values.length), values, List.of(), List.of())))
                            .all("path", "curve"))
                    .hasSize(1);
            Drawn.read(Sparkline.of(values));
        }
    }

    @Test
    void theTitleIsEscaped() {
        Trend trend = new Trend("<i>Jar</i> & co", "mΩ", days(1), new double[] {1}, List.of(), List.of());
        assertThat(Drawn.read(TrendDrawing.of("t", trend)).all("title").get(0).getTextContent())
                .isEqualTo("<i>Jar</i> & co");
    }

    @Test
    void ticksAreRoundAndCoverTheValues() {
        Axis axis = Axis.covering(new double[] {0.412, 0.581}, 4);
        assertThat(axis.low()).isLessThanOrEqualTo(0.412);
        assertThat(axis.high()).isGreaterThanOrEqualTo(0.581);
        assertThat(axis.ticks().stream().map(axis::label)).containsExactly("0.40", "0.45", "0.50", "0.55", "0.60");
    }

    @Test
    void aNegativeTickCarriesARealMinus() {
        assertThat(new Axis(-10, 10, 5).label(-10)).isEqualTo("−10");
        assertThat(new Axis(-10, 10, 5).label(-0.0)).isEqualTo("0");
    }

    private static int strokes(Drawn drawn) {
        return drawn.all("path", "curve").get(0).getAttribute("d").split("M").length - 1;
    }

    private static Trend trend(List<LocalDate> breaks, double... values) {
        List<Trend.Level> levels = List.of(
                new Trend.Level("baseline", 0.4, false),
                new Trend.Level("+30 %", 0.52, true),
                new Trend.Level("unknown", NAN, true));
        return new Trend("Jar 17", "mΩ", days(values.length), values, levels, breaks);
    }

    private static LocalDate day(int i) {
        return LocalDate.of(2019, 5, 4).plusMonths(6L * i);
    }

    private static List<LocalDate> days(int count) {
        return IntStream.range(0, count).mapToObj(TrendDrawingTest::day).toList();
    }
}
