package org.ohmstead.kernel;

import java.util.regex.Pattern;

/**
 * Keeps spreadsheet programs from taking a text for a formula: a text that begins like one is written with an
 * apostrophe in front, and read back without it. Numbers are left alone, negative ones too.
 */
public final class FormulaGuard {

    private static final Pattern DANGEROUS = Pattern.compile("'*[=+\\-@\\t\\r\\n＝＋－＠].*", Pattern.DOTALL);

    private FormulaGuard() {}

    public static String guarded(String text) {
        return DANGEROUS.matcher(text).matches() ? "'" + text : text;
    }

    public static String bared(String text) {
        return text.startsWith("'") && DANGEROUS.matcher(text).matches() ? text.substring(1) : text;
    }
}
