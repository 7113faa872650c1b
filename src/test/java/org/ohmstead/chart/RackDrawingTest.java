package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;
import org.w3c.dom.Element;

class RackDrawingTest {

    @ParameterizedTest
    @CsvSource({"24,2", "60,3", "240,4", "1,1", "120,1", "480,12"})
    void everyJarAndLinkIsDrawnOnceAtAnySize(int jars, int tiers) {
        for (String svg :
                List.of(RackDrawing.asBuilt("r", rackOf(jars, tiers)), RackDrawing.wrapped("r", rackOf(jars, tiers)))) {
            Drawn rack = Drawn.read(svg);
            assertThat(rack.all("a", "jar")).hasSize(jars);
            assertThat(rack.all("a", "link")).hasSize(jars + 1);
            assertThat(rack.all("circle", "pole")).hasSize(2);
        }
    }

    @Test
    void theNarrowRackFitsAPhone() {
        assertThat(Drawn.read(RackDrawing.wrapped("r", rackOf(240, 4))).width()).isLessThanOrEqualTo(344);
    }

    @Test
    void aColumnIsAsTallAsTheChange() {
        Drawn rack = Drawn.read(RackDrawing.asBuilt("r", rackOf(24, 2)));
        List<Element> columns = rack.all("rect", "column");
        assertThat(height(columns.get(15))).isCloseTo(2 * height(columns.get(9)), within(0.1));
    }

    @Test
    void aFallHangsFromTheTopOfTheJar() {
        RackPlan plan = rackOf(24, 2);
        Drawn rack = Drawn.read(RackDrawing.asBuilt("r", plan));
        Element hanging = rack.all("rect", "hanging").get(0);
        Element jarCase = rack.all("rect", "case").get(4);
        assertThat(Drawn.number(hanging, "y") - Drawn.number(jarCase, "y")).isBetween(0.0, 3.0);
    }

    @Test
    void aJarThatWasNotMeasuredHasNoColumn() {
        Drawn rack = Drawn.read(RackDrawing.asBuilt("r", rackOf(24, 2)));
        assertThat(rack.all("a", "jar", "unmeasured")).hasSize(1);
        assertThat(rack.all("rect", "column")).hasSize(23);
    }

    @Test
    void theSecondTierIsWalkedBack() {
        List<Element> cases =
                Drawn.read(RackDrawing.asBuilt("r", rackOf(24, 2))).all("rect", "case");
        assertThat(Drawn.number(cases.get(12), "x")).isEqualTo(Drawn.number(cases.get(11), "x"));
        assertThat(Drawn.number(cases.get(23), "x")).isEqualTo(Drawn.number(cases.get(0), "x"));
        assertThat(Drawn.number(cases.get(12), "y")).isGreaterThan(Drawn.number(cases.get(11), "y"));
    }

    @Test
    void anUnevenRackStaysInsideItsDrawing() {
        RackPlan even = rackOf(30, 1);
        RackPlan uneven = new RackPlan(List.of(5, 20, 5), even.jars(), even.links());
        Drawn rack = Drawn.read(RackDrawing.asBuilt("r", uneven));
        assertThat(rack.all("rect", "case"))
                .allSatisfy(jar ->
                        assertThat(Drawn.number(jar, "x")).isBetween(0.0, rack.width() - Drawn.number(jar, "width")));
    }

    @Test
    void aHotspotSaysItsMicroohms() {
        Drawn rack = Drawn.read(RackDrawing.asBuilt("r", rackOf(24, 2)));
        assertThat(rack.all("text", "hotspot"))
                .extracting(Element::getTextContent)
                .containsExactly("74 µΩ");
    }

    @Test
    void wordsAreEscaped() {
        Drawn rack = Drawn.read(RackDrawing.asBuilt("r", rackOf(24, 2)));
        assertThat(rack.all("a", "jar").get(0).getTextContent()).contains("<Jar> \"1\" & co");
    }

    @Test
    void aJarThatAsksForSomeoneCanBeReachedByKey() {
        Drawn rack = Drawn.read(RackDrawing.asBuilt("r", rackOf(24, 2)));
        assertThat(rack.all("a", "jar", "is-act").get(0).hasAttribute("tabindex"))
                .isFalse();
        assertThat(rack.all("a", "jar", "is-clear").get(0).getAttribute("tabindex"))
                .isEqualTo("-1");
    }

    @Test
    void tiersThatDoNotHoldTheJarsAreRefused() {
        RackPlan plan = rackOf(24, 2);
        assertThatThrownBy(() -> new RackPlan(List.of(12, 11), plan.jars(), plan.links()))
                .hasMessageContaining("Tiers hold 23, jars are 24");
    }

    private static double height(Element element) {
        return Drawn.number(element, "height");
    }

    /** Jar 11 is up 20 %, jar 17 up 40 % and urgent, jar 5 down 15 %, jar 6 not measured; link 9|10 is a hotspot. */
    static RackPlan rackOf(int jars, int tiers) {
        List<RackJar> all = new ArrayList<>();
        for (int p = 1; p <= jars; p++) {
            double change = p == 5 ? -0.15 : p == 6 ? Double.NaN : p == 11 ? 0.2 : p == 17 ? 0.4 : 0.01;
            all.add(new RackJar(
                    p, p == 17 ? Urgency.ACT : Urgency.CLEAR, change, "/jars/" + p, "<Jar> \"" + p + "\" & co"));
        }
        List<RackLink> links = new ArrayList<>();
        for (int k = 0; k <= jars; k++) {
            LinkKind kind = k == 0 || k == jars
                    ? LinkKind.TERMINAL
                    : k % (jars / tiers) == 0 ? LinkKind.TIER_CABLE : LinkKind.STRAP;
            links.add(new RackLink(
                    k, kind, k == 9 && jars > 9 ? Urgency.ACT : Urgency.CLEAR, k == 9 ? 74.2 : 18, null, "link " + k));
        }
        return new RackPlan(Collections.nCopies(tiers, jars / tiers), all, links);
    }
}
