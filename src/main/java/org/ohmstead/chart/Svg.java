package org.ohmstead.chart;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * Writes one drawing. Attributes come as names and values in turn; an attribute whose value is null is left out.
 * Everything is escaped, and a number that is not finite is refused, since a browser would drop the whole element.
 */
final class Svg {

    private static final String SPECIAL = "&<>\"'";

    private final StringBuilder out = new StringBuilder(4096);
    private final Deque<String> open = new ArrayDeque<>();

    /**
     * @param role {@code img} for a picture, {@code group} when there are links in it
     * @param id unique on the page
     */
    static Svg drawing(String role, String id, String look, double width, double height, String title, String about) {
        Svg svg = new Svg();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "chart " + look,
                "viewBox",
                "0 0 " + number(width) + " " + number(height),
                "width",
                width,
                "height",
                height,
                "role",
                role,
                "aria-labelledby",
                id + "-title",
                "aria-describedby",
                id + "-about");
        return svg.words("title", title, "id", id + "-title").words("desc", about, "id", id + "-about");
    }

    Svg open(String name, @Nullable Object... attributes) {
        tag(name, attributes).append('>');
        open.push(name);
        return this;
    }

    Svg close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    Svg leaf(String name, @Nullable Object... attributes) {
        tag(name, attributes).append("/>");
        return this;
    }

    /** An element that holds words only. */
    Svg words(String name, String words, @Nullable Object... attributes) {
        tag(name, attributes)
                .append('>')
                .append(escaped(words))
                .append("</")
                .append(name)
                .append('>');
        return this;
    }

    Svg path(String look, String d) {
        return leaf("path", "class", look, "d", d);
    }

    Svg line(String look, double x1, double y1, double x2, double y2) {
        return path(look, "M" + number(x1) + " " + number(y1) + "L" + number(x2) + " " + number(y2));
    }

    Svg label(String look, double x, double y, String words) {
        return words("text", words, "class", look, "x", x, "y", y);
    }

    /** Closes what is still open and hands out the text. */
    String done() {
        while (!open.isEmpty()) {
            close();
        }
        return out.toString();
    }

    private StringBuilder tag(String name, @Nullable Object... attributes) {
        out.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            if (value != null) {
                out.append(' ')
                        .append(attributes[i])
                        .append("=\"")
                        .append(text(value))
                        .append('"');
            }
        }
        return out;
    }

    private static String text(Object value) {
        return value instanceof Double number ? number(number) : escaped(value.toString());
    }

    /** At most two decimals, no exponent, no trailing zeros. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A drawing has no place for " + value);
        }
        long hundredths = Math.round(Math.abs(value) * 100);
        StringBuilder text = new StringBuilder(12);
        if (value < 0 && hundredths > 0) {
            text.append('-');
        }
        text.append(hundredths / 100);
        if (hundredths % 100 != 0) {
            text.append('.').append(hundredths / 10 % 10);
        }
        if (hundredths % 10 != 0) {
            text.append(hundredths % 10);
        }
        return text.toString();
    }

    static String escaped(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (SPECIAL.indexOf(text.charAt(i)) >= 0) {
                return text.replace("&", "&amp;")
                        .replace("<", "&lt;")
                        .replace(">", "&gt;")
                        .replace("\"", "&quot;")
                        .replace("'", "&#39;");
            }
        }
        return text;
    }
}
