package org.ohmstead.intake.map;

/**
 * Where a fact of the survey comes from: from beside a label, or from the map itself.
 *
 * @param fact key of the survey sheet, without its unit: "taken at", "ambient"
 * @param label as it stands in the file; empty when the value is given here
 * @param value for every survey; empty when it stands in the file
 * @param unit empty where the cell or label says it
 */
public record FactRule(String fact, String label, String value, String unit) {

    public FactRule {
        label = label == null ? "" : label;
        value = value == null ? "" : value;
        unit = unit == null ? "" : unit;
    }
}
