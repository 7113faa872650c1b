package org.ohmstead.intake.map;

/**
 * What stands in a column, or in the readings that go by a name.
 *
 * @param title of the column, of a block of readings, or the word in a column of quantities
 * @param holds one of {@link Holds#WORDS}, or the key of a survey sheet's fact
 * @param unit empty where the cells say it themselves
 * @param linkUnit of the values in rows that are links of their own; empty for the same unit
 */
public record ColumnRule(String title, String holds, String unit, String linkUnit) {

    public ColumnRule {
        unit = unit == null ? "" : unit;
        linkUnit = linkUnit == null ? "" : linkUnit;
    }
}
