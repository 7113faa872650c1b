package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FanDrawingTest {

    private static final LocalDate NOW = LocalDate.parse("2026-11-20");

    private static String drawn(
            double rise, @Nullable LocalDate early, @Nullable LocalDate middle, @Nullable LocalDate late) {
        List<LocalDate> days = List.of(NOW.minusYears(2), NOW.minusYears(1), NOW);
        return FanDrawing.of(
                "f", new Fan(days, new double[] {0.02, Double.NaN, rise}, .33, NOW, rise, early, middle, late));
    }

    @Test
    void theWedgeRunsFromTodayToTheDaysOfTheLimit() {
        String svg = drawn(.2, NOW.plusYears(1), NOW.plusYears(2), NOW.plusYears(3));
        assertThat(svg).contains("class=\"wedge\"", "class=\"middle\"").doesNotContain("NaN");
        assertThat(svg.split("class=\"dot\"")).hasSize(3);
    }

    @Test
    void daysBeyondThePictureAreCutOff() {
        assertThat(drawn(.2, NOW.plusYears(1), null, null)).contains("wedge").doesNotContain("class=\"middle\"", "NaN");
        assertThat(drawn(.2, NOW.plusYears(9), NOW.plusYears(12), NOW.plusYears(14)))
                .contains("wedge")
                .doesNotContain("NaN");
    }

    @Test
    void withoutDaysOrPastTheLimitThereIsNoWedge() {
        assertThat(drawn(.02, null, null, null)).doesNotContain("wedge");
        assertThat(drawn(.4, NOW, NOW, NOW)).doesNotContain("wedge");
        assertThat(FanDrawing.of("f", new Fan(List.of(), new double[0], .33, NOW, 0, null, null, null)))
                .doesNotContain("NaN");
    }
}
