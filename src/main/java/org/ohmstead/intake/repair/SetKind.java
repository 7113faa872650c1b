package org.ohmstead.intake.repair;

import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;

/** The numbers stand, but they are of another kind than the sheet says: siemens, not milliohms. Nothing is converted. */
public record SetKind(OhmicKind ohmicKind) implements Step {

    public SetKind {
        if (ohmicKind == null) {
            throw new Refused("Name the kind: impedance, resistance or conductance.");
        }
    }

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        SheetFacts is = sheet.facts();
        return Rows.with(
                sheet,
                new SheetFacts(
                        is.site(),
                        is.string(),
                        is.takenAt(),
                        is.takenBy(),
                        is.instrument(),
                        is.calibrationDue(),
                        ohmicKind,
                        is.ohmicHertz(),
                        is.ambientCelsius(),
                        is.stringVolts(),
                        is.floatAmps(),
                        is.rippleAmps(),
                        is.rippleVolts(),
                        is.injectedAmps(),
                        is.clampedAmps(),
                        is.onFloat(),
                        is.note()));
    }

    @Override
    public String words() {
        return "Take the ohmic values as " + ohmicKind.words() + " in " + ohmicKind.unit() + ", number for number";
    }
}
