package org.ohmstead.assessment.model;

import java.time.LocalDate;
import org.ohmstead.kernel.OhmicKind;

/**
 * One ohmic reading of a jar.
 *
 * @param survey index into the history's surveys
 * @param value as read, in the unit of the kind
 * @param burden the value made to rise with age and referred to 25 °C where the jar type has a coefficient
 */
record Reading(int survey, LocalDate takenOn, OhmicKind kind, double value, double burden) {}
