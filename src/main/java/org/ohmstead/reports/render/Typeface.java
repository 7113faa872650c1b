package org.ohmstead.reports.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A font of one document, with the widths of its characters at hand. */
final class Typeface {

    private static final float UNITS = 1000;

    private final PDFont font;

    /** In thousandths of the size; negative where the font has no such character. */
    private final Map<Integer, Float> widths = new HashMap<>();

    private Typeface(PDFont font) {
        this.font = font;
    }

    /** The characters that are used are embedded, without ligatures: a reader finds and copies every word. */
    static Typeface of(PDDocument document, String file) {
        try (InputStream stream = Objects.requireNonNull(Typeface.class.getResourceAsStream(file), file)) {
            TrueTypeFont parsed = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(stream));
            parsed.setEnableGsub(false);
            return new Typeface(PDType0Font.load(document, parsed, true));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PDFont font() {
        return font;
    }

    /** What the font can't show becomes a question mark, a line break a blank. */
    String showable(String text) {
        StringBuilder showable = new StringBuilder(text.length());
        text.codePoints().forEach(character -> {
            if (Character.isWhitespace(character) || Character.isISOControl(character)) {
                showable.append(' ');
            } else if (units(character) < 0) {
                showable.append('?');
            } else {
                showable.appendCodePoint(character);
            }
        });
        return showable.toString();
    }

    float width(String showable, float size) {
        float sum = 0;
        for (int i = 0; i < showable.length(); i += Character.charCount(showable.codePointAt(i))) {
            sum += units(showable.codePointAt(i));
        }
        return sum * size / UNITS;
    }

    private float units(int character) {
        return widths.computeIfAbsent(character, this::measured);
    }

    private float measured(int character) {
        try {
            return font.getStringWidth(Character.toString(character));
        } catch (IllegalArgumentException e) {
            return -1;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Broken at blanks; a word wider than the line is cut where the line ends. At least one line. */
    List<String> wrapped(String text, float width, float size) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : showable(text).strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = cut(word, width, size, lines);
        }
        lines.add(line);
        return lines;
    }

    /** @return what is left of the word for the next line */
    private String cut(String word, float width, float size, List<String> lines) {
        String rest = word;
        while (rest.length() > 1 && width(rest, size) > width) {
            int end = Character.charCount(rest.codePointAt(0));
            while (end < rest.length()
                    && width(rest.substring(0, end + Character.charCount(rest.codePointAt(end))), size) <= width) {
                end += Character.charCount(rest.codePointAt(end));
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }
}
