package org.ohmstead.onsite;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ohmstead.kernel.OhmicKind;

/**
 * Writes a typed walk as a survey sheet. What was typed comes under the names of the form's fields: {@code takenAt} and the
 * other facts, {@code jar-17-ohmic}, {@code jar-17-volts}, {@code jar-17-celsius}, {@code jar-17-gravity},
 * {@code link-16-1} (link, strap), {@code closing}; {@code skip-jar-17}, {@code skip-link-16} and {@code skip-closing} say
 * why something was not read, {@code remade-link-16} what a link had before it was remade on the spot. The script of the page writes the very same sheet.
 */
final class WalkSheet {

    private static final String[][] FACTS = {
        {"takenAt", "taken at"},
        {"takenBy", "taken by"},
        {"instrument", "instrument"},
        {"calibrationDue", "instrument calibration due"},
        {"ohmicKind", "ohmic kind"},
        {"ohmicHertz", "ohmic frequency Hz"},
        {"ambientCelsius", "ambient °C"},
        {"stringVolts", "string volts V"},
        {"floatAmps", "float current A"},
        {"rippleAmps", "ripple current A"},
        {"rippleVolts", "ripple volts V"},
        {"injectedAmps", "injected current A"},
        {"clampedAmps", "clamped current A"},
        {"onFloat", "on float"}
    };
    private static final String[][] JAR = {
        {"volts", "jar V"}, {"celsius", "jar °C"}, {"gravity", "jar SG"},
    };

    private final Walk walk;
    private final Map<String, String> typed;
    private final StringBuilder text = new StringBuilder("ohmstead survey sheet,1\n");

    private WalkSheet(Walk walk, Map<String, String> typed) {
        this.walk = walk;
        this.typed = typed;
    }

    static String of(Walk walk, Map<String, String> typed) {
        WalkSheet sheet = new WalkSheet(walk, typed);
        sheet.facts();
        sheet.readings();
        return sheet.text.toString();
    }

    /** "walk-FEL-03-B-2026-11-18.csv" */
    static String fileName(Walk walk, Map<String, String> typed) {
        String day = typed.getOrDefault("takenAt", "");
        return "walk-" + walk.siteCode() + "-" + walk.stringName() + "-" + day.substring(0, Math.min(10, day.length()))
                + ".csv";
    }

    private void facts() {
        line("site", walk.siteCode());
        line("string", walk.stringName());
        for (String[] fact : FACTS) {
            line(fact[1], isNumber(fact[1]) ? number(fact[0]) : word(fact[0]));
        }
        line("note", note());
    }

    private static boolean isNumber(String title) {
        return title.matches(".* (Hz|°C|V|A)");
    }

    private void line(String key, String value) {
        if (!value.isEmpty()) {
            text.append(key).append(',').append(quoted(value)).append('\n');
        }
    }

    /** What the person noted, then everything that was left out and why. */
    private String note() {
        List<String> skipped = new ArrayList<>();
        List<String> remade = new ArrayList<>();
        for (int number = 0; number <= walk.positions(); number++) {
            String link = walk.links().get(number).name();
            mention(skipped, "jar " + number, word("skip-jar-" + number));
            mention(skipped, link, word("skip-link-" + number));
            mention(remade, link, measured(number("remade-link-" + number)));
        }
        List<String> parts = new ArrayList<>();
        part(parts, "", word("note"), "");
        part(parts, "Not read: ", String.join("; ", skipped), ".");
        part(parts, "Remade on site: ", String.join("; ", remade), ".");
        part(parts, "No closing reading: ", word("skip-closing"), ".");
        return String.join(" ", parts);
    }

    private static String measured(String microohms) {
        return microohms.isEmpty() ? "" : microohms + " µΩ before";
    }

    private static void mention(List<String> list, String name, String what) {
        if (!what.isEmpty()) {
            list.add(name + " (" + what + ")");
        }
    }

    private static void part(List<String> parts, String before, String words, String after) {
        if (!words.isEmpty()) {
            parts.add(before + words + after);
        }
    }

    private void readings() {
        List<String[]> columns = new ArrayList<>();
        columns.add(new String[] {"ohmic", "jar " + unit()});
        for (String[] column : JAR) {
            if (isTyped(column[0])) {
                columns.add(column);
            }
        }
        int straps = walk.links().stream().mapToInt(LinkPlace::straps).max().orElse(1);
        List<String> titles = new ArrayList<>(List.of("position"));
        columns.forEach(column -> titles.add(column[1]));
        IntStream.rangeClosed(1, straps).forEach(strap -> titles.add(strap == 1 ? "link µΩ" : "link " + strap + " µΩ"));
        text.append('\n').append(String.join(",", titles)).append('\n');
        for (int position = 0; position <= walk.positions(); position++) {
            row(position, columns, straps);
        }
        if (!number("closing").isEmpty()) {
            closing(columns.size(), straps);
        }
    }

    private String unit() {
        return word("ohmicKind").equals(OhmicKind.CONDUCTANCE.words()) ? "S" : "mΩ";
    }

    private boolean isTyped(String quantity) {
        return IntStream.rangeClosed(1, walk.positions())
                .anyMatch(
                        position -> !number("jar-" + position + "-" + quantity).isEmpty());
    }

    private void row(int position, List<String[]> columns, int straps) {
        text.append(position);
        for (String[] column : columns) {
            text.append(',').append(position == 0 ? "" : quoted(number("jar-" + position + "-" + column[0])));
        }
        for (int strap = 1; strap <= straps; strap++) {
            text.append(',').append(quoted(number("link-" + position + "-" + strap)));
        }
        text.append('\n');
    }

    /** The closing reading stands in a row of its own after the last jar. */
    private void closing(int jarColumns, int straps) {
        text.append(walk.positions() + 1)
                .append(",".repeat(jarColumns + 1))
                .append(quoted(number("closing")))
                .append(",".repeat(straps - 1))
                .append('\n');
    }

    private String word(String name) {
        return typed.getOrDefault(name, "").replaceAll("\\s+", " ").strip();
    }

    /** A typed comma is a decimal mark. */
    private String number(String name) {
        return word(name).replace(',', '.').replace('−', '-');
    }

    private static String quoted(String value) {
        return value.matches("[^,\"]*") ? value : '"' + value.replace("\"", "\"\"") + '"';
    }
}
