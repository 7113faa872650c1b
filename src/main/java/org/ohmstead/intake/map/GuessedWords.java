package org.ohmstead.intake.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Quantity;
import org.ohmstead.intake.file.Row;
import org.ohmstead.intake.file.Unit;

/** What titles and labels usually mean. */
final class GuessedWords {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d[\\d.,']*(?: ?[^\\d\\s]{1,4})?");
    private static final Pattern DATE =
            Pattern.compile("(\\d{1,2})([./-])(\\d{1,2})[./-]\\d{4}( \\d{1,2}:\\d{2}(:\\d{2})?)?");
    private static final Map<String, String> FACTS = new LinkedHashMap<>();

    static {
        FACTS.put("ripple.*(v|volt).*", "ripple volts");
        FACTS.put("ripple.*", "ripple current");
        FACTS.put("(test|injected).*(current|a).*", "injected current");
        FACTS.put("clamp.*", "clamped current");
        FACTS.put("float.*(current|a).*", "float current");
        FACTS.put("(string|total).*(volt|v).*", "string volts");
        FACTS.put("(site|room|place|station).*", "site");
        FACTS.put("(string|battery|bank).*", "string");
        FACTS.put("(date|time|taken|on|when|begun).*", "taken at");
        FACTS.put("(crew|by|who|taken by|technician).*", "taken by");
        FACTS.put("(ambient|air|temp).*", "ambient");
        FACTS.put("(instrument|serial).*", "instrument");
        FACTS.put("(note|remark|comment).*", "note");
    }

    private GuessedWords() {}

    static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches();
    }

    static List<FactRule> facts(Row row) {
        List<FactRule> found = new ArrayList<>();
        for (int number = 1; number <= row.cells().size(); number++) {
            Cell cell = row.cell(number);
            int colon = cell.text().indexOf(':');
            boolean inside = colon > 1 && !isNumber(cell.text());
            String label = inside ? cell.text().substring(0, colon) : cell.text();
            if (inside || !cell.isEmpty() && !isNumber(cell.text()) && row.firstFilledAfter(number) != null) {
                fact(label).ifPresent(found::add);
            }
        }
        return found;
    }

    private static Optional<FactRule> fact(String label) {
        String bare = FactsFound.bare(label);
        return FACTS.entrySet().stream()
                .filter(known -> bare.matches(known.getKey()))
                .findFirst()
                .map(known -> new FactRule(
                        known.getValue(), label, "", unit(label).map(Unit::sign).orElse("")));
    }

    /** By the title's unit and words; by the values where these say nothing. */
    static Optional<ColumnRule> column(String title, List<String> values, List<ColumnRule> before) {
        String bare = FactsFound.bare(title);
        Optional<Unit> unit = unit(title);
        String sign = unit.map(Unit::sign).orElse("");
        boolean link = bare.matches(".*(link|strap|joint|connect|inter).*");
        if (link) {
            long straps =
                    before.stream().filter(rule -> Holds.isLink(rule.holds())).count();
            return Optional.of(new ColumnRule(title, straps == 0 ? Holds.LINK : "link " + (straps + 1), sign, ""));
        }
        if (unit.isPresent()) {
            return ofQuantity(unit.get().quantity()).map(holds -> new ColumnRule(title, holds, sign, ""));
        }
        if (bare.matches("(pos|jar|cell|unit|block|no|nr|#|item|after).*") && areRising(values)) {
            return Optional.of(new ColumnRule(title, Holds.POSITION, "", ""));
        }
        if (bare.matches(".*volt.*|v|u")) {
            return Optional.of(new ColumnRule(title, Holds.JAR_VOLTS, "V", ""));
        }
        if (bare.matches(".*(imped|resist|ohm|reading).*|z|r")) {
            return Optional.of(new ColumnRule(title, Holds.JAR_OHMIC, "mΩ", ""));
        }
        boolean first = before.stream().noneMatch(rule -> rule.holds().equals(Holds.POSITION));
        return first && areRising(values)
                ? Optional.of(new ColumnRule(title, Holds.POSITION, "", ""))
                : Optional.empty();
    }

    private static Optional<String> ofQuantity(Quantity quantity) {
        return switch (quantity) {
            case RESISTANCE, CONDUCTANCE -> Optional.of(Holds.JAR_OHMIC);
            case VOLTAGE -> Optional.of(Holds.JAR_VOLTS);
            case TEMPERATURE -> Optional.of(Holds.JAR_TEMPERATURE);
            case GRAVITY -> Optional.of(Holds.JAR_GRAVITY);
            case CURRENT, FREQUENCY -> Optional.empty();
        };
    }

    private static boolean areRising(List<String> values) {
        List<Integer> ordinals = values.stream()
                .map(PlaceText::read)
                .flatMap(Optional::stream)
                .filter(place -> !place.link())
                .map(PlaceText::ordinal)
                .toList();
        boolean rising = true;
        for (int i = 1; i < ordinals.size(); i++) {
            rising &= ordinals.get(i) >= ordinals.get(i - 1);
        }
        return !ordinals.isEmpty() && rising;
    }

    /** The last word of a title, or what stands in its brackets. */
    private static Optional<Unit> unit(String title) {
        String bare = FactsFound.bare(title);
        int blank = bare.lastIndexOf(' ');
        return blank < 0 ? Optional.empty() : Unit.named(bare.substring(blank + 1));
    }

    /** Day first unless that cannot be; year first needs no pattern. */
    static Optional<String> timePattern(String text) {
        Matcher date = DATE.matcher(text);
        if (!date.matches()) {
            return Optional.empty();
        }
        String sign = date.group(2);
        boolean monthFirst = Integer.parseInt(date.group(3)) > 12;
        String days = monthFirst ? "M" + sign + "d" + sign + "yyyy" : "d" + sign + "M" + sign + "yyyy";
        String clock = date.group(4) == null ? "" : date.group(5) == null ? " H:mm" : " H:mm:ss";
        return Optional.of(days + clock);
    }
}
