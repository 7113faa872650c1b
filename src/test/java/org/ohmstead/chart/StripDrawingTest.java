package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.kernel.Urgency;
import org.w3c.dom.Element;

class StripDrawingTest {

    @Test
    void whatAsksForSomeoneIsNamed() {
        Strip strip = new Strip(
                "Links by kind",
                "µΩ",
                List.of(
                        new Strip.Row(
                                "straps",
                                List.of(
                                        new Strip.Mark("8|9", 17, Urgency.CLEAR),
                                        new Strip.Mark("9|10", 41, Urgency.ACT),
                                        new Strip.Mark("10|11", Double.NaN, Urgency.CLEAR))),
                        new Strip.Row("terminals", List.of())));
        Drawn drawn = Drawn.read(StripDrawing.of("s", strip));
        assertThat(drawn.all("path", "mark")).hasSize(2);
        assertThat(drawn.all("text", "mark-words"))
                .extracting(Element::getTextContent)
                .containsExactly("9|10");
        assertThat(drawn.all("text", "row-words")).hasSize(2);
    }

    @Test
    void nothingMeasuredIsDrawnToo() {
        assertThat(Drawn.read(StripDrawing.of("s", new Strip("Links", "µΩ", List.of())))
                        .all("path", "mark"))
                .isEmpty();
    }
}
