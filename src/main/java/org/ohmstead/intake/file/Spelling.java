package org.ohmstead.intake.file;

import java.util.Locale;
import java.util.regex.Pattern;

/** The many ways of writing the same word: case, blanks, brackets round a unit, two code points for µ and for Ω. */
public final class Spelling {

    private static final Pattern EDGES =
            Pattern.compile("^[\\s\\u00a0\\u2007\\u202f\\ufeff]+|[\\s\\u00a0\\u2007\\u202f]+$");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00a0\\u2007\\u202f]+");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\s]]");
    private static final Pattern BRACKETS = Pattern.compile("[()\\[\\]]");

    private Spelling() {}

    /** Without blanks at either end, those of spreadsheets too; a control character is shown as unreadable. */
    public static String trimmed(String text) {
        if (isTidy(text)) {
            return text;
        }
        return EDGES.matcher(CONTROL.matcher(text).replaceAll("\uFFFD")).replaceAll("");
    }

    /** Printing ASCII that neither begins nor ends with a blank, as nearly every cell is: nothing is to be trimmed. */
    private static boolean isTidy(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean edge = i == 0 || i == text.length() - 1;
            if (c > '~' || c < ' ' || (edge && c == ' ')) {
                return false;
            }
        }
        return true;
    }

    /** Lower case, single blanks, no brackets, "u" for micro and "ohm" for Ω: "Jar (MΩ)" becomes "jar mohm". */
    public static String plain(String text) {
        String ascii = text.replace("µ", "u")
                .replace("μ", "u")
                .replace("Ω", "ohm")
                .replace("Ω", "ohm")
                .replace("℃", "°C")
                .replace("º", "°");
        String open = BRACKETS.matcher(ascii).replaceAll(" ");
        return trimmed(BLANKS.matcher(open).replaceAll(" ")).toLowerCase(Locale.ROOT);
    }
}
