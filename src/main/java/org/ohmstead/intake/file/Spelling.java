package org.ohmstead.intake.file;

import java.util.Locale;

/** The many ways of writing the same word: case, blanks, brackets round a unit, two code points for µ and for Ω. */
public final class Spelling {

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final char UNREADABLE = '\uFFFD';

    private Spelling() {}

    /** Without blanks at either end, those of spreadsheets too; a control character is shown as unreadable. */
    public static String trimmed(String text) {
        if (isTidy(text)) {
            return text;
        }
        int start = 0;
        int end = text.length();
        while (start < end && (isBlank(text.charAt(start)) || text.charAt(start) == BYTE_ORDER_MARK)) {
            start++;
        }
        while (end > start && isBlank(text.charAt(end - 1))) {
            end--;
        }
        return readable(text.substring(start, end));
    }

    /** Lower case, single blanks, no brackets, "u" for micro and "ohm" for Ω: "Jar (MΩ)" becomes "jar mohm". */
    public static String plain(String text) {
        return isPlain(text) ? text : trimmed(respelt(text)).toLowerCase(Locale.ROOT);
    }

    private static String respelt(String text) {
        StringBuilder plain = new StringBuilder(text.length() + 8);
        boolean blank = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean blankToo = isBlank(c) || "()[]".indexOf(c) >= 0;
            if (!blankToo) {
                respell(c, plain);
            } else if (!blank) {
                plain.append(' ');
            }
            blank = blankToo;
        }
        return plain.toString();
    }

    private static void respell(char c, StringBuilder plain) {
        switch (c) {
            case '\u00b5', '\u03bc' -> plain.append('u');
            case '\u03a9', '\u2126' -> plain.append("ohm");
            case '\u2103' -> plain.append("°C");
            case '\u00ba' -> plain.append('°');
            default -> plain.append(c);
        }
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

    /** Small letters, digits and signs without a blank, as every number is. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c > '~' || c <= ' ' || (c >= 'A' && c <= 'Z') || "()[]".indexOf(c) >= 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean isBlank(char c) {
        return c == ' ' || (c >= '\t' && c <= '\r') || c == '\u00a0' || c == '\u2007' || c == '\u202f';
    }

    private static String readable(String text) {
        char[] shown = null;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < ' ' && !isBlank(c)) || c == 0x7F) {
                shown = shown == null ? text.toCharArray() : shown;
                shown[i] = UNREADABLE;
            }
        }
        return shown == null ? text : new String(shown);
    }
}
