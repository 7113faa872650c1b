package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class ForecastDrawingsTest {

    private static final LocalDate DAY = LocalDate.of(2024, 3, 1);

    @Test
    void eachBarStandsToItsValueWithAWhiskerOverItsRange() {
        Drawn drawn = Drawn.read(BarsDrawing.of(
                "b",
                new Bars(
                        "Jars",
                        "jars",
                        List.of(new Bars.Bar("Q1\n2026", 2, 1, 4), new Bars.Bar("Q2\n2026", 4, 2, 8)))));
        List<org.w3c.dom.Element> bars = drawn.all("rect", "bar");
        assertThat(bars).hasSize(2);
        assertThat(Drawn.number(bars.get(1), "height")).isEqualTo(2 * Drawn.number(bars.get(0), "height"), within(.05));
        assertThat(drawn.all("path", "whisker")).hasSize(6);
    }

    @Test
    void noBarsAndNoneExpectedAreDrawn() {
        assertThat(Drawn.read(BarsDrawing.of("b", new Bars("Jars", "jars", List.of())))
                        .all("rect", "bar"))
                .isEmpty();
        Drawn.read(BarsDrawing.of("b", new Bars("<b>", "jars", List.of(new Bars.Bar("now", 0, 0, 0)))));
    }

    @Test
    void aLifeStepsDownAndItsLawIsDrawnBesideIt() {
        List<LifePlot.Point> steps = List.of(new LifePlot.Point(3, .9, .7, .97), new LifePlot.Point(5, .8, .6, .9));
        List<LifePlot.Point> law = List.of(new LifePlot.Point(0, 1, 1, 1), new LifePlot.Point(12, .4, .2, .6));
        Drawn drawn = Drawn.read(LifeDrawing.of("l", new LifePlot("T", steps, law, 9)));
        assertThat(drawn.all("path", "curve")).hasSize(1);
        assertThat(drawn.all("path", "law")).hasSize(1);
        String curve = drawn.all("path", "curve").get(0).getAttribute("d");
        assertThat(curve.chars().filter(c -> c == 'L').count()).isEqualTo(5);
        Drawn plain = Drawn.read(LifeDrawing.of("l", new LifePlot("T", List.of(), List.of(), 0)));
        assertThat(plain.all("path", "law")).isEmpty();
    }

    @Test
    void surveysLieAroundZeroAndFarOnesAtTheEdge() {
        Deviations deviations = new Deviations(
                "A",
                List.of(
                        new Deviations.Dot(DAY, 3, true),
                        new Deviations.Dot(DAY.plusYears(1), -80, false),
                        new Deviations.Dot(DAY.plusYears(2), 0, false)),
                new Deviations.Level(DAY, 3, 1, 5));
        Drawn drawn = Drawn.read(DeviationsDrawing.of("d", deviations));
        assertThat(drawn.all("circle", "dot")).hasSize(3);
        assertThat(drawn.all("circle", "strong")).hasSize(1);
        assertThat(drawn.all("rect", "band")).hasSize(1);
        double zero = Drawn.number(drawn.all("circle", "dot").get(2), "cy");
        assertThat(Drawn.number(drawn.all("circle", "dot").get(0), "cy")).isLessThan(zero);
        Drawn empty = Drawn.read(DeviationsDrawing.of("d", new Deviations("A", List.of(), null)));
        assertThat(empty.all("rect", "band")).isEmpty();
    }
}
