package org.ohmstead.intake.repair;

import java.time.LocalDateTime;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.file.TakenAt;
import org.ohmstead.kernel.Refused;

/** The survey was taken at another time than the sheet says, by the site's own clock. */
public record FixTime(LocalDateTime takenAt) implements Step {

    public FixTime {
        if (takenAt == null) {
            throw new Refused("Say when it was taken, as year-month-dayThour:minute.");
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
                        new TakenAt(takenAt, null),
                        is.takenBy(),
                        is.instrument(),
                        is.calibrationDue(),
                        is.ohmicKind(),
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
        return "Taken at " + takenAt.toString().replace('T', ' ') + ", site time";
    }

    @Override
    public boolean needsJudgement() {
        return true;
    }
}
