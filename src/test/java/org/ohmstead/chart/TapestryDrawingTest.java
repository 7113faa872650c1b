package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapestryDrawingTest {

    @Test
    void everyValueFallsIntoItsShade() {
        assertThat(new double[] {-0.5, -0.15, -0.1, -0.05, 0, 0.041, 0.1, 0.15, 0.2, 0.3, 0.36, 9})
                .satisfies(changes -> assertThat(Arrays.stream(changes)
                                .mapToInt(TapestryDrawing::shade)
                                .toArray())
                        .containsExactly(0, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 9));
    }

    @Test
    void whatWasNotMeasuredIsMarkedAndNotShaded() {
        Drawn drawn = Drawn.read(TapestryDrawing.of("t", tapestry(2, 3)));
        assertThat(cells(drawn, "absent")).isEqualTo(1);
        assertThat(cells(drawn, "shade-3")).isEqualTo(5);
    }

    @Test
    void aReplacedJarIsMarkedWhereItBegins() {
        Tapestry plain = tapestry(3, 4);
        plain.replaced()[2][1] = true;
        assertThat(Drawn.read(TapestryDrawing.of("t", plain))
                        .all("path", "replaced")
                        .get(0)
                        .getAttribute("d"))
                .startsWith("M1 2");
    }

    @ParameterizedTest
    @CsvSource({"0,0", "1,1", "40,240", "200,480"})
    void anySizeIsDrawn(int surveys, int jars) {
        String svg = TapestryDrawing.of("t", tapestry(surveys, jars));
        assertThat(Drawn.read(svg).width()).isPositive();
        assertThat(svg.length()).isLessThan(2000 + 24 * surveys * jars + 60 * (surveys + jars));
    }

    @Test
    void theKeyShowsEveryShade() {
        assertThat(Drawn.read(TapestryDrawing.key("k")).all("rect")).hasSize(10);
    }

    private static int cells(Drawn drawn, String look) {
        return drawn.all("path", look).stream()
                .mapToInt(path -> path.getAttribute("d").split("M").length - 1)
                .sum();
    }

    private static Tapestry tapestry(int surveys, int jars) {
        double[][] change = new double[surveys][jars];
        if (surveys > 0) {
            change[0][0] = Double.NaN;
        }
        List<LocalDate> days = IntStream.range(0, surveys)
                .mapToObj(i -> LocalDate.of(2019, 3, 1).plusMonths(6L * i))
                .toList();
        return new Tapestry(days, change, new boolean[surveys][jars]);
    }
}
