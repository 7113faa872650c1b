package org.ohmstead.intake.file;

/** What is measured, whatever the unit. */
public enum Quantity {
    RESISTANCE,
    CONDUCTANCE,
    VOLTAGE,
    CURRENT,
    FREQUENCY,
    TEMPERATURE,
    GRAVITY
}
