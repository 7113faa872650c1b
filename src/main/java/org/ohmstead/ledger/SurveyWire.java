package org.ohmstead.ledger;

import java.time.Instant;
import org.ohmstead.copy.WireBuffer;

/** A survey as one row of a binary COPY. */
final class SurveyWire {

    /** In the order of {@link #content}, then of {@link #row}. */
    static final String COLUMNS = """
            string_id, taken_at, taken_on, taken_by, instrument, instrument_calibration_due, ohmic_kind, ohmic_hertz, \
            ambient_celsius, string_volts, float_amps, ripple_amps, ripple_volts, injected_amps, clamped_amps, \
            on_float, note, ohmic, volts, celsius, gravity, straps_per_link, link_microohms, \
            recorded_at, recorded_by, upload_id, raw_sha256""";

    private static final int COLUMN_COUNT = 27;

    private SurveyWire() {}

    static void row(NewSurvey survey, Instant recordedAt, String recordedBy, WireBuffer out) {
        out.putShort(COLUMN_COUNT);
        content(survey.facts(), survey.readings(), out);
        out.field(recordedAt);
        out.field(recordedBy);
        out.field(survey.uploadId());
        out.field(survey.rawSha256());
    }

    /**
     * What was surveyed, without when and how it came into the ledger: two surveys with equal bytes here are the same
     * survey.
     */
    static byte[] fingerprint(SurveyFacts facts, Readings readings) {
        WireBuffer out = new WireBuffer();
        content(facts, readings, out);
        return out.toBytes();
    }

    private static void content(SurveyFacts facts, Readings readings, WireBuffer out) {
        facts(facts, out);
        stringReadings(facts, out);
        RealArrays.write(readings.ohmic(), out);
        RealArrays.field(readings.volts(), out);
        RealArrays.field(readings.celsius(), out);
        RealArrays.field(readings.gravity(), out);
        int width = readings.widestLink();
        out.smallField(width);
        RealArrays.field(Straps.flatten(readings.linkMicroohms(), width), out);
    }

    private static void facts(SurveyFacts facts, WireBuffer out) {
        out.field(facts.stringId());
        out.field(facts.takenAt());
        out.field(facts.takenOn());
        out.field(facts.takenBy());
        out.field(facts.instrument());
        out.field(facts.calibrationDue());
        out.field(facts.ohmicKind().name());
        number(facts.ohmicHertz(), out);
    }

    private static void stringReadings(SurveyFacts facts, WireBuffer out) {
        number(facts.ambientCelsius(), out);
        number(facts.stringVolts(), out);
        number(facts.floatAmps(), out);
        number(facts.rippleAmps(), out);
        number(facts.rippleVolts(), out);
        number(facts.injectedAmps(), out);
        number(facts.clampedAmps(), out);
        out.field(facts.onFloat());
        out.field(facts.note());
    }

    /** A real; NaN is NULL. */
    private static void number(double value, WireBuffer out) {
        if (Double.isNaN(value)) {
            out.nullField();
        } else {
            out.realField(Reals.toReal(value));
        }
    }
}
