package org.ohmstead.programme.rules;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Technology;

/** What can show that an activity was done: readings of a survey, a point of a visit's checklist, a capacity test. */
public enum EvidenceKind {
    READ_OHMIC("ohmic value"),
    READ_VOLTS("jar voltage"),
    READ_CELSIUS("jar temperature"),
    READ_GRAVITY("specific gravity"),
    READ_TERMINAL_LINKS("terminal connection resistance"),
    READ_INTERCELL_LINKS("intercell connection resistance"),
    READ_STRING_VOLTS("string voltage"),
    READ_FLOAT_AMPS("float current"),
    CHECK_DC_SUPPLY_VOLTAGE("voltage of the dc supply", "V"),
    CHECK_CHARGER_FLOAT_VOLTAGE("float voltage at the charger", "V"),
    CHECK_FLOAT_CURRENT("float current", "A"),
    CHECK_GROUNDS("unintentional grounds"),
    CHECK_CONTINUITY("continuity of the battery"),
    CHECK_ELECTROLYTE_LEVEL("electrolyte level"),
    CHECK_PILOT_CELL("pilot cell: voltage, specific gravity, temperature"),
    CHECK_APPEARANCE("cleanliness, cracks, leaks, corrosion"),
    CHECK_VISIBLE_CELLS("condition of every cell, by eye"),
    CHECK_RACK("rack"),
    CHECK_RETORQUE("connections retorqued"),
    CHECK_VENTILATION("room temperature and ventilation", "°C"),
    CAPACITY_TEST("capacity test");

    private final String words;
    private final @Nullable String unit;

    EvidenceKind(String words) {
        this(words, null);
    }

    EvidenceKind(String words, @Nullable String unit) {
        this.words = words;
        this.unit = unit;
    }

    public String words() {
        return words;
    }

    /** Of the value that a checklist may note; null where there is none. */
    public @Nullable String unit() {
        return unit;
    }

    public boolean isCheck() {
        return name().startsWith("CHECK_");
    }

    public boolean isReading() {
        return name().startsWith("READ_");
    }

    /** Read of each unit, so that a share of them can be missing. */
    public boolean isOfUnits() {
        return isReading() && this != READ_STRING_VOLTS && this != READ_FLOAT_AMPS;
    }

    /** The points of a visit's checklist, in the order of a walk; those that make no sense are left out. */
    public static List<EvidenceKind> checklist(Technology technology) {
        return Arrays.stream(values())
                .filter(EvidenceKind::isCheck)
                .filter(kind -> !technology.isValveRegulated() || !kind.needsLiquid())
                .toList();
    }

    private boolean needsLiquid() {
        return this == CHECK_ELECTROLYTE_LEVEL || this == CHECK_PILOT_CELL || this == CHECK_VISIBLE_CELLS;
    }
}
