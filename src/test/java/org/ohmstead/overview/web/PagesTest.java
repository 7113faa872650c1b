package org.ohmstead.overview.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.chart.TapestryDrawing;
import org.ohmstead.chart.Tile;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.overview.EstateFilter;
import org.ohmstead.overview.EstateView;
import org.ohmstead.overview.Figures;
import org.ohmstead.overview.Invented;
import org.ohmstead.overview.StringPage;
import org.ohmstead.overview.UnitPage;
import org.ohmstead.support.TemplateRendering;

/** The pages filled with invented content; what they look like is left in target/pages to be opened in a browser. */
class PagesTest {

    private final TemplateRendering rendering = new TemplateRendering(true);

    @ParameterizedTest
    @ValueSource(ints = {0, 5, 212, 5000})
    void theEstateIsShownAtAnySize(int strings) throws IOException {
        String page = estate(strings);
        keep("estate-" + strings, page);
        assertThat(page).contains("<main").doesNotContain("NaN").doesNotContain("null");
        assertThat(page.split("class=\"tile\"").length - 1).isEqualTo(strings > 500 ? asking(strings) : strings);
        assertThat(page.length()).isLessThan(2_000_000);
    }

    private static int asking(int strings) {
        return Invented.estate(strings).wall().areas().stream()
                .flatMap(area -> area.sites().stream())
                .mapToInt(site -> site.strings().size())
                .sum();
    }

    private String estate(int strings) {
        EstateView estate = Invented.estate(strings);
        return rendering.render(
                "overview/estate",
                "/",
                model(Map.of(
                        "estate",
                        estate,
                        "assessed",
                        "25 Nov 2026, 02:00",
                        "symbols",
                        Tile.symbols(),
                        "choices",
                        Arrays.stream(EstateFilter.values())
                                .map(filter -> new Choice(filter, 3, filter == EstateFilter.ALL))
                                .toList())));
    }

    @ParameterizedTest
    @CsvSource({"24,2", "60,3", "240,4"})
    void theStringIsShownAtAnySize(int jars, int tiers) throws IOException {
        StringPage string = Invented.string(jars, tiers);
        StringDrawings drawings = new StringDrawings(string, "");
        String page = rendering.render(
                "overview/string",
                "/strings/2",
                model(Map.of(
                        "page", string,
                        "rackWide", drawings.rackWide(),
                        "rackNarrow", drawings.rackNarrow(),
                        "strip", drawings.strip(),
                        "tapestry", StringDrawings.tapestry(Invented.history(30, jars)),
                        "tapestryKey", TapestryDrawing.key("key"))));
        keep("string-" + jars, page);
        assertThat(page)
                .contains("asks you to act on jar 17 and link 9|10")
                .contains("74.2\u00a0µΩ")
                .contains("Follow your employer’s rules and local codes")
                .contains("only a capacity test shows capacity")
                .doesNotContain("NaN")
                .doesNotContain("style=\"");
    }

    @Test
    void theLifeOfAJarIsShown() throws IOException {
        UnitPage unit = Invented.jarLife();
        String page = rendering.render(
                "overview/unit",
                "/strings/2/jars/17",
                model(Map.of("unit", unit, "trend", UnitDrawings.trend(unit), "withVolts", true)));
        keep("jar", page);
        assertThat(page).contains("href=\"/strings/2/jars/18\"").contains("Dried out");
    }

    private static Map<String, Object> model(Map<String, ?> more) {
        Map<String, Object> model = new HashMap<>(more);
        model.put("figures", Figures.FOR_PAGES);
        model.put("urgencies", List.of(Urgency.values()));
        model.put("drawings", new PageDrawings(ZoneId.of("Europe/London")));
        return model;
    }

    private static void keep(String name, String page) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "pages"));
        Files.writeString(folder.resolve(name + ".html"), page);
    }
}
