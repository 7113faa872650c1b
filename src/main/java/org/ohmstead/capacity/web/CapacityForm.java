package org.ohmstead.capacity.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.capacity.Drawn;
import org.ohmstead.capacity.NewCapacityTest;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.kernel.Refused;

/** The form of a capacity test as typed; numbers with point or comma. */
final class CapacityForm {

    private final Map<String, String> typed;

    CapacityForm(Map<String, String> typed) {
        this.typed = typed;
    }

    /** What the jar type's rating suggests. */
    static Map<String, String> suggested(JarTypeEntry type, LocalDate today, String who) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("testedOn", today.toString());
        fields.put("testedBy", who);
        fields.put("kind", TestKind.PERFORMANCE.name());
        fields.put("method", (type.technology().isLeadAcid() ? Method.RATE_ADJUSTED : Method.LINEAR).name());
        fields.put("ratedAmps", plain(type.ratedAmpereHours() / type.ratedHours()));
        fields.put("ratedMinutes", plain(type.ratedHours() * 60));
        fields.put("referenceCelsius", type.ratingCelsius() == null ? "25" : plain(type.ratingCelsius()));
        fields.put("endVoltsPerCell", type.endVoltsPerCell() == null ? "" : plain(type.endVoltsPerCell()));
        return fields;
    }

    private static String plain(double value) {
        double rounded = Math.round(value * 1000) / 1000.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }

    NewCapacityTest test(long stringId) {
        return new NewCapacityTest(
                stringId,
                day(),
                field("testedBy"),
                choice(TestKind.values(), "kind", "the kind of test"),
                choice(Method.values(), "method", "the method"),
                new Ratings(
                        number("ratedAmps", "the published current"),
                        number("ratedMinutes", "the rated time"),
                        number("referenceCelsius", "the reference temperature"),
                        number("endVoltsPerCell", "the end voltage per cell")),
                number("celsius", "the electrolyte's temperature"),
                optional("coefficient", "the coefficient"),
                field("note"));
    }

    /** What was typed of the discharge itself. */
    Drawn drawn() {
        return new Drawn(
                number("amps", "the current that was drawn"),
                number("minutes", "the time of the discharge"),
                !field("stoppedEarly").isEmpty(),
                optional("stringEndVolts", "the string's volts at the end"),
                jarVolts(),
                new double[0]);
    }

    /** In the order of the positions, parted by blanks or new lines; a dash for a jar that was not read. */
    private double[] jarVolts() {
        String text = field("jarEndVolts");
        if (text.isEmpty()) {
            return new double[0];
        }
        String[] parts = text.split("[\\s;]+");
        double[] volts = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            volts[i] = parts[i].equals("-") ? Double.NaN : parsed(parts[i], "the end voltage of jar " + (i + 1));
        }
        return volts;
    }

    private double number(String name, String words) {
        Double value = optional(name, words);
        if (value == null) {
            throw new Refused("Give " + words + ".");
        }
        return value;
    }

    private @Nullable Double optional(String name, String words) {
        String text = field(name);
        return text.isEmpty() ? null : (Double) parsed(text, words);
    }

    private static double parsed(String text, String words) {
        try {
            double value = Double.parseDouble(text.replace(',', '.').replace('−', '-'));
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new Refused("\"" + text + "\" is no number: it stands for " + words + ".");
        }
        throw new Refused("\"" + text + "\" is no number: it stands for " + words + ".");
    }

    private <E extends Enum<E>> E choice(E[] all, String name, String words) {
        return Arrays.stream(all)
                .filter(one -> one.name().equals(field(name)))
                .findFirst()
                .orElseThrow(() -> new Refused("Choose " + words + "."));
    }

    private LocalDate day() {
        try {
            return LocalDate.parse(field("testedOn"));
        } catch (DateTimeParseException e) {
            throw new Refused("Give the day of the test.");
        }
    }

    private String field(String name) {
        return typed.getOrDefault(name, "").strip();
    }
}
