package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.NewVisit.Item;
import org.ohmstead.programme.NewVisit.Outcome;
import org.ohmstead.programme.rules.EvidenceKind;

/** What was looked at on a visit to a string of the demo estate, and what was found. */
final class Checklists {

    /** What is looked at each time; the rest once a year. */
    private static final List<EvidenceKind> EACH_TIME = List.of(
            EvidenceKind.CHECK_DC_SUPPLY_VOLTAGE,
            EvidenceKind.CHECK_GROUNDS,
            EvidenceKind.CHECK_ELECTROLYTE_LEVEL,
            EvidenceKind.CHECK_PILOT_CELL,
            EvidenceKind.CHECK_APPEARANCE,
            EvidenceKind.CHECK_VENTILATION);

    private static final Map<EvidenceKind, String> FINDINGS = Map.of(
            EvidenceKind.CHECK_ELECTROLYTE_LEVEL, "Two jars at the lower mark; topped up with approved water",
            EvidenceKind.CHECK_APPEARANCE, "White bloom on one negative post; cleaned, to be watched",
            EvidenceKind.CHECK_GROUNDS, "14 V more to earth on the negative side; control room told",
            EvidenceKind.CHECK_RACK, "Paint lifted at a front foot, steel sound",
            EvidenceKind.CHECK_VENTILATION, "Grille half blocked with leaves; cleared");

    private static final double FOUND_SHARE = 0.03;
    private static final int VISITS_A_YEAR = 3;

    private Checklists() {}

    /** @param ordinal of the site's visits, from 0 */
    static NewVisit visit(DemoString string, long stringId, LocalDate day, int ordinal) {
        Random random = new Random(string.seed() * 31 + day.toEpochDay());
        boolean yearly = ordinal % VISITS_A_YEAR == 0;
        List<Item> items = new ArrayList<>();
        for (EvidenceKind point :
                EvidenceKind.checklist(string.design().jarType().technology())) {
            if (EACH_TIME.contains(point) || (yearly && point != EvidenceKind.CHECK_RETORQUE)) {
                items.add(item(point, string, random));
            }
        }
        return new NewVisit(stringId, day, "Crew " + Places.areaName(string.site()), "", items);
    }

    private static Item item(EvidenceKind point, DemoString string, Random random) {
        String finding = FINDINGS.get(point);
        boolean found = random.nextDouble() < FOUND_SHARE && finding != null;
        return new Item(
                point,
                found ? Outcome.FOUND : Outcome.SOUND,
                value(point, string, random),
                found ? Objects.requireNonNull(finding) : "");
    }

    private static @Nullable Double value(EvidenceKind point, DemoString string, Random random) {
        double cells = string.positions() * string.design().jarType().cellsPerJar();
        double floatVolts =
                cells * Objects.requireNonNull(string.design().jarType().floatVoltsPerCell());
        return switch (point) {
            case CHECK_DC_SUPPLY_VOLTAGE, CHECK_CHARGER_FLOAT_VOLTAGE ->
                tenths(floatVolts * (1 + 0.003 * random.nextGaussian()));
            case CHECK_VENTILATION -> tenths(string.roomCelsius() + 1.5 * random.nextGaussian());
            case CHECK_FLOAT_CURRENT -> tenths(0.2 + 0.3 * random.nextDouble());
            default -> null;
        };
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
