package org.ohmstead.intake.check;

import java.time.Instant;
import org.ohmstead.kernel.OhmicKind;

/**
 * An accepted survey of the same string. Missing values are NaN.
 *
 * @param instrument its serial number; empty where none was named
 * @param ohmic one per position, in the unit of the kind
 * @param volts one per position, or none at all
 * @param linkMicroohms per link ordinal, then per strap
 */
public record EarlierSurvey(
        Instant takenAt,
        String instrument,
        OhmicKind kind,
        double ohmicHertz,
        double ambientCelsius,
        double[] ohmic,
        double[] volts,
        double[][] linkMicroohms) {}
