package org.ohmstead.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class LayoutTest {

    private final TemplateRendering demo = new TemplateRendering(true);
    private final TemplateRendering real = new TemplateRendering(false);

    @Test
    void theNavigationMarksWhereTheReaderIs() {
        assertThat(real.render("error", "/intake/42", Map.of()))
                .contains("<a href=\"/intake\" aria-current=\"true\">Intake</a>")
                .contains("<a href=\"/\">Estate</a>");
    }

    @Test
    void onlyTheDemoSaysThatItIsOne() {
        assertThat(demo.render("error", "/", Map.of())).contains("An invented estate");
        assertThat(real.render("error", "/", Map.of())).doesNotContain("An invented estate");
    }

    @Test
    void aMessageIsEscaped() {
        assertThat(real.render("error/404", "/", Map.of("message", "No <b>such</b> string")))
                .contains("No &lt;b&gt;such&lt;/b&gt; string");
    }

    @Test
    void noPageCarriesInlineScriptOrStyle() {
        assertThat(real.render("error/404", "/", Map.of()))
                .doesNotContain("style=\"")
                .doesNotContainPattern("<script(?![^>]*src=)")
                .doesNotContainPattern("\\son[a-z]+=");
    }
}
