package org.ohmstead.fleet.csv;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ohmstead.fleet.csv.Cell.Sort;

/** The kinds of cell that the register's files know. */
final class Cells {

    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\n\\t]]");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1,30})?([eE][+-]?\\d{1,2})?");
    private static final Pattern TIERS = Pattern.compile("\\d{1,3}( *[+ ] *\\d{1,3}){0,63}");
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("uuuu-MM-dd").withResolverStyle(ResolverStyle.STRICT);

    private static final List<String> SIZES = Stream.concat(
                    Stream.of(1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0, 120.0, 150.0, 185.0, 240.0)
                            .map(Cells::plain),
                    Stream.of(
                            "300",
                            "400",
                            "500",
                            "630",
                            "800",
                            "1000",
                            "14 AWG",
                            "12 AWG",
                            "10 AWG",
                            "8 AWG",
                            "6 AWG",
                            "4 AWG",
                            "3 AWG",
                            "2 AWG",
                            "1 AWG",
                            "1/0 AWG",
                            "2/0 AWG",
                            "3/0 AWG",
                            "4/0 AWG",
                            "250 kcmil",
                            "300 kcmil",
                            "350 kcmil",
                            "400 kcmil",
                            "500 kcmil",
                            "600 kcmil",
                            "750 kcmil",
                            "1000 kcmil"))
            .toList();

    private Cells() {}

    static Cell<String> text(int most) {
        return free(Sort.TEXT, most);
    }

    static Cell<String> longText(int most) {
        return free(Sort.LONG_TEXT, most);
    }

    private static Cell<String> free(Sort sort, int most) {
        return new Cell<>(
                sort,
                "at most " + most + " characters of plain text",
                List.of(),
                text -> accept(
                        text, text.length() <= most && !CONTROL.matcher(text).find()),
                Function.identity());
    }

    static Cell<String> code(int most) {
        Pattern form = Pattern.compile("[A-Z0-9][A-Z0-9-]{0," + (most - 1) + "}");
        String wanted = "up to " + most + " capital letters, digits and hyphens, such as NORTH-2";
        return new Cell<>(
                Sort.WORD,
                wanted,
                List.of(),
                text -> accept(text, form.matcher(text).matches()),
                Function.identity());
    }

    static Cell<String> name() {
        Pattern form = Pattern.compile("[^/,;\\p{Cntrl}]{1,40}");
        String wanted = "up to 40 characters without slash, comma or semicolon";
        return new Cell<>(
                Sort.TEXT,
                wanted,
                List.of(),
                text -> accept(text, form.matcher(text).matches()),
                Function.identity());
    }

    static Cell<Double> number(double above, double most) {
        return new Cell<>(
                Sort.NUMBER,
                "a number above " + plain(above) + " and at most " + plain(most),
                List.of(),
                text -> within(number(text), value -> value > above && value <= most),
                Cells::plain);
    }

    static Cell<Double> numberFrom(double least, double most) {
        return new Cell<>(
                Sort.NUMBER,
                "a number from " + plain(least) + " to " + plain(most),
                List.of(),
                text -> within(number(text), value -> value >= least && value <= most),
                Cells::plain);
    }

    static Cell<Integer> whole(int least, int most) {
        return new Cell<>(
                Sort.NUMBER,
                "a whole number from " + least + " to " + most,
                List.of(),
                text -> within(Integer.valueOf(text), value -> value >= least && value <= most),
                String::valueOf);
    }

    static Cell<LocalDate> date() {
        return new Cell<>(
                Sort.DATE,
                "a date as year-month-day, such as 2024-03-31, from 1900 on",
                List.of(),
                text -> within(LocalDate.parse(text, DAY), day -> day.getYear() >= 1900 && day.getYear() <= 2199),
                DAY::format);
    }

    static Cell<ZoneId> timeZone() {
        return new Cell<>(
                Sort.WORD,
                "the name of an IANA time zone, such as Europe/Oslo",
                List.of(),
                text -> within(
                        ZoneId.of(text), zone -> ZoneId.getAvailableZoneIds().contains(zone.getId())),
                ZoneId::getId);
    }

    static <E extends Enum<E>> Cell<E> oneOf(Class<E> type) {
        List<String> names =
                Arrays.stream(type.getEnumConstants()).map(Enum::name).toList();
        return new Cell<>(
                Sort.WORD,
                "one of " + String.join(", ", names),
                names,
                text -> Enum.valueOf(type, text.toUpperCase(Locale.ROOT).replace(' ', '_')),
                Enum::name);
    }

    static Cell<String> conductorSize() {
        return new Cell<>(
                Sort.WORD,
                "a cross-section in mm² such as 95, or an American size such as 2/0 AWG or 250 kcmil",
                SIZES,
                text -> accept(text, SIZES.contains(text)),
                Function.identity());
    }

    static Cell<List<Integer>> tiers() {
        return new Cell<>(
                Sort.WORD,
                "the number of jars of each tier joined by plus signs, such as 30+30, 480 jars in all at most",
                List.of(),
                Cells::readTiers,
                tiers -> tiers.stream().map(String::valueOf).collect(Collectors.joining("+")));
    }

    private static List<Integer> readTiers(String text) {
        accept(text, TIERS.matcher(text).matches());
        List<Integer> tiers =
                Arrays.stream(text.split("[ +]+")).map(Integer::valueOf).toList();
        IntStream each = tiers.stream().mapToInt(Integer::intValue);
        return within(tiers, all -> all.stream().allMatch(jars -> jars > 0) && each.sum() <= 480);
    }

    private static double number(String text) {
        return Double.parseDouble(accept(text, NUMBER.matcher(text).matches()));
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static String accept(String text, boolean asWanted) {
        return within(text, any -> asWanted);
    }

    private static <V> V within(V value, java.util.function.Predicate<V> asWanted) {
        if (!asWanted.test(value)) {
            throw new IllegalArgumentException("not as wanted");
        }
        return value;
    }
}
