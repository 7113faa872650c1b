package org.ohmstead.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** A drawing read back as XML: whatever is drawn must at least be that, and hold finite numbers only. */
record Drawn(Element root) {

    static Drawn read(String svg) {
        assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("style=");
        try {
            return new Drawn(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement());
        } catch (Exception e) {
            throw new AssertionError("Not well formed: " + svg, e);
        }
    }

    /** Elements of that name that carry all those classes. */
    List<Element> all(String name, String... classes) {
        var nodes = root.getElementsByTagName(name);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            Element element = (Element) nodes.item(i);
            if (List.of(element.getAttribute("class").split(" ")).containsAll(List.of(classes))) {
                found.add(element);
            }
        }
        return found;
    }

    double width() {
        return Double.parseDouble(root.getAttribute("width"));
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
