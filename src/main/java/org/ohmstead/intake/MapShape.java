package org.ohmstead.intake;

import java.nio.charset.Charset;
import java.time.format.DateTimeFormatter;
import java.util.stream.Stream;
import org.ohmstead.intake.file.Unit;
import org.ohmstead.intake.map.ColumnMap;
import org.ohmstead.intake.map.ColumnRule;
import org.ohmstead.intake.map.FactRule;
import org.ohmstead.intake.map.Holds;
import org.ohmstead.kernel.Refused;

/** Refuses column maps that could never read anything. */
final class MapShape {

    private static final int MOST_RULES = 200;

    private MapShape() {}

    static void require(ColumnMap map) {
        refuseUnless(
                map.delimiter().length() == 1 && !"\"\r\n".contains(map.delimiter()),
                "The delimiter is one character.");
        refuseUnless(
                map.quote().length() <= 1 && !map.quote().equals(map.delimiter()),
                "The quote is one character or none, and not the delimiter.");
        refuseUnless(map.decimalMark().matches("[.,]"), "The decimal mark is a point or a comma.");
        refuseUnless(
                map.thousandsMark().length() <= 1 && !map.thousandsMark().equals(map.decimalMark()),
                "The thousands mark is one character or none, and not the decimal mark.");
        refuseUnless(isCharset(map.encoding()), "The encoding is not known here, such as UTF-8 or windows-1252.");
        refuseUnless(isPattern(map.timePattern()), "The pattern of times is not one, such as dd.MM.yyyy HH:mm.");
        refuseUnless(!(map.columns().isEmpty() && map.quantities().isEmpty()), "A map needs columns or quantities.");
        refuseUnless(
                map.columns().size() + map.quantities().size() + map.facts().size() <= MOST_RULES,
                "A map has at most " + MOST_RULES + " rules.");
        Stream.concat(map.columns().stream(), map.quantities().stream()).forEach(MapShape::require);
        map.facts().forEach(MapShape::require);
    }

    private static void require(ColumnRule rule) {
        refuseUnless(
                rule.title() != null && !rule.title().isBlank() && rule.holds() != null && Holds.isKnown(rule.holds()),
                "A column needs its title, and holds one of: " + String.join(", ", Holds.WORDS) + ".");
        refuseUnless(
                isUnit(rule.unit()) && isUnit(rule.linkUnit()),
                "The unit of column \"" + rule.title() + "\" is not known here.");
    }

    private static void require(FactRule rule) {
        refuseUnless(
                rule.fact() != null && Holds.fact(rule.fact()).isPresent(),
                "A fact is one of a survey sheet's keys, without its unit.");
        refuseUnless(isUnit(rule.unit()), "The unit of \"" + rule.fact() + "\" is not known here.");
    }

    private static boolean isUnit(String unit) {
        return unit.isEmpty() || Unit.named(unit).isPresent();
    }

    private static boolean isCharset(String name) {
        try {
            return name.isEmpty() || Charset.isSupported(name);
        } catch (IllegalArgumentException noName) {
            return false;
        }
    }

    private static boolean isPattern(String pattern) {
        try {
            DateTimeFormatter.ofPattern(pattern);
            return pattern.length() <= 60;
        } catch (IllegalArgumentException noPattern) {
            return false;
        }
    }

    private static void refuseUnless(boolean sound, String message) {
        if (!sound) {
            throw new Refused(message);
        }
    }
}
