package org.ohmstead.demo;

import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** What can happen to a survey sheet between the rack and the office. */
final class SheetMishap {

    private SheetMishap() {}

    static UnaryOperator<String> withoutRow(int position) {
        return sheet -> row(position).matcher(sheet).replaceFirst("");
    }

    /** The last row's link is the closing reading, near zero. */
    static UnaryOperator<String> closingReading(int lastPosition) {
        return sheet -> row(lastPosition).matcher(sheet).replaceFirst(found -> {
            String line = found.group();
            return line.substring(0, line.lastIndexOf(',') + 1) + "0.2\n";
        });
    }

    static UnaryOperator<String> bearing(String site, String string) {
        return sheet ->
                sheet.replaceFirst("(?m)^site,.*$", "site," + site).replaceFirst("(?m)^string,.*$", "string," + string);
    }

    private static Pattern row(int position) {
        return Pattern.compile("(?m)^" + position + ",.*\n");
    }
}
