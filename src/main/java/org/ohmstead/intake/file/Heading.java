package org.ohmstead.intake.file;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The line every sheet begins with: {@code ohmstead survey sheet,1}. What follows its words parts the columns. */
final class Heading {

    static final String EXAMPLE = "ohmstead survey sheet,1";
    private static final String WORDS = "ohmstead survey sheet";
    private static final String VERSION = "1";
    private static final Pattern DELIMITED = Pattern.compile(WORDS + "[\" ]*([;\\t])", Pattern.CASE_INSENSITIVE);

    private Heading() {}

    static boolean isHeading(Row row) {
        String first = row.cell(1).text();
        return !isNumbered(first) && Spelling.plain(first).equals(WORDS);
    }

    /** As all rows of readings are. */
    private static boolean isNumbered(String text) {
        return !text.isEmpty() && text.charAt(0) >= '0' && text.charAt(0) <= '9';
    }

    static boolean isKnownVersion(Row row) {
        return row.cell(2).text().equals(VERSION);
    }

    /** The delimiter, from the first characters of a file: comma unless a semicolon or tab follows the heading's words. */
    static char delimiter(String start) {
        Matcher heading = DELIMITED.matcher(start);
        return heading.find() ? heading.group(1).charAt(0) : ',';
    }
}
