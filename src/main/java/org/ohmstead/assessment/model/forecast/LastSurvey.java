package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.kernel.OhmicKind;

/**
 * What the state keeps of the last survey.
 *
 * @param takenOn null before the first survey
 * @param instrument fingerprint of the instrument's serial number, 0 when none was recorded
 * @param instrumentChanged whether another instrument read the survey before
 * @param kindChanged whether the survey before was of another ohmic kind, so that the jars started anew
 */
record LastSurvey(
        @Nullable LocalDate takenOn,
        @Nullable OhmicKind kind,
        int instrument,
        boolean instrumentChanged,
        boolean kindChanged) {

    static final LastSurvey NONE = new LastSurvey(null, null, 0, false, false);

    LastSurvey then(SurveyReadings next) {
        int serial = next.instrument() == null ? 0 : next.instrument().hashCode();
        return new LastSurvey(
                takenOn == null || next.takenOn().isAfter(takenOn) ? next.takenOn() : takenOn,
                next.ohmicKind(),
                serial == 0 ? instrument : serial,
                instrument != 0 && serial != 0 && instrument != serial,
                kind != null && kind != next.ohmicKind());
    }

    void write(DoubleTape tape) {
        tape.put(takenOn == null ? Double.NaN : takenOn.toEpochDay());
        tape.put(kind == null ? -1 : kind.ordinal());
        tape.put(instrument);
        tape.put(instrumentChanged ? 1 : 0);
        tape.put(kindChanged ? 1 : 0);
    }

    static LastSurvey read(DoubleTape tape) {
        double day = tape.take();
        int kind = (int) tape.take();
        return new LastSurvey(
                Double.isNaN(day) ? null : LocalDate.ofEpochDay((long) day),
                kind < 0 ? null : OhmicKind.values()[kind],
                (int) tape.take(),
                tape.take() == 1,
                tape.take() == 1);
    }
}
