package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.kernel.Urgency;

class TileTest {

    @ParameterizedTest
    @CsvSource({
        "-400,edge-late",
        "-1,edge-late",
        "0,edge-6",
        "14,edge-6",
        "15,edge-5",
        "30,edge-4",
        "89,edge-1",
        "90,",
        "9000,",
        ","
    })
    void theEdgeGrowsAsTheDateComesNear(Integer days, String edge) {
        assertThat(Tile.edge(days)).isEqualTo(edge);
    }

    @Test
    void everySymbolATileRefersToIsThere() {
        Drawn symbols = Drawn.read(Tile.symbols());
        List<String> ids =
                symbols.all("symbol").stream().map(s -> s.getAttribute("id")).toList();
        for (Urgency urgency : Urgency.values()) {
            for (Integer days : new Integer[] {null, -3, 0, 20, 40, 50, 70, 89}) {
                assertThat(Drawn.read(Tile.of(urgency, days)).all("use"))
                        .allSatisfy(use -> assertThat(ids)
                                .contains(use.getAttribute("href").substring(1)));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Urgency.class)
    void onlyTheClearDiscIsEmpty(Urgency urgency) {
        assertThat(Drawn.read(Disc.of(urgency)).all("path", "filling")).hasSize(urgency == Urgency.CLEAR ? 0 : 1);
    }

    @Test
    void aNumberThatIsNotFiniteIsRefused() {
        assertThatThrownBy(() -> Svg.number(Double.NaN)).hasMessageContaining("no place for NaN");
        assertThat(Svg.number(1234567.125)).isEqualTo("1234567.13");
        assertThat(Svg.number(-0.001)).isEqualTo("0");
    }
}
