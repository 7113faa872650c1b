package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class CourseDrawingTest {

    private static String drawn(Course.Line... lines) {
        return CourseDrawing.of(
                "d",
                new Course(
                        "Volts",
                        "V",
                        "minutes",
                        new double[] {0, 10, 20},
                        List.of(lines),
                        List.of(new Trend.Level("end voltage", 1.8, true))));
    }

    private static Course.Line line(String words, double... values) {
        return new Course.Line(words, values, false, words.equals("jar 17"));
    }

    @Test
    void aGapBreaksTheLine() {
        assertThat(path(drawn(line("jar 1", 2, Double.NaN, 1.8)), "curve")).matches("M[^L]+M[^L]+");
        assertThat(path(drawn(line("jar 1", 2, 1.9, 1.8)), "curve")).matches("M[^ML]+L[^ML]+L[^ML]+");
    }

    @Test
    void namesOfLinesThatEndTogetherStandApart() {
        Matcher y = Pattern.compile("class=\"end-words[^\"]*\" x=\"[^\"]*\" y=\"([^\"]*)\"")
                .matcher(drawn(line("jar 1", 2, 1.9, 1.8), line("jar 2", 2, 1.9, 1.8), line("jar 17", 2, 1.8, 1.801)));
        double before = Double.NEGATIVE_INFINITY;
        int names = 0;
        while (y.find()) {
            double here = Double.parseDouble(y.group(1));
            assertThat(here - before).isGreaterThanOrEqualTo(12.9);
            before = here;
            names++;
        }
        assertThat(names).isEqualTo(3);
    }

    @Test
    void aLineThatAsksForSomeoneLooksSo() {
        assertThat(drawn(line("jar 17", 2, 1.8, 1.5))).contains("curve asks").contains("end-words asks");
    }

    @Test
    void aLineOfNothingIsNotNamed() {
        assertThat(drawn(line("jar 1", Double.NaN, Double.NaN, Double.NaN))).doesNotContain("end-words");
    }

    @Test
    void everyLineHasAValuePerPlace() {
        assertThatThrownBy(() -> drawn(line("jar 1", 2, 1.9))).isInstanceOf(IllegalArgumentException.class);
    }

    private static String path(String svg, String look) {
        Matcher found = Pattern.compile("class=\"" + look + "\" d=\"([^\"]*)\"").matcher(svg);
        assertThat(found.find()).isTrue();
        return found.group(1);
    }
}
