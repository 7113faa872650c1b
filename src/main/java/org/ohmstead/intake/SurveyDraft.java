package org.ohmstead.intake;

import java.time.ZoneId;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.TakenAt;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;

/** Turns a checked passage into the survey that the ledger takes. */
final class SurveyDraft {

    private SurveyDraft() {}

    static NewSurvey of(Passage passage, byte[] sha256) {
        StringBlueprint blueprint = Objects.requireNonNull(passage.blueprint());
        LaidOut laidOut = Objects.requireNonNull(passage.readings());
        SheetFacts sheet = Objects.requireNonNull(passage.sheet()).facts();
        Readings readings = new Readings(
                laidOut.ohmic(), laidOut.volts(), laidOut.celsius(), laidOut.gravity(), laidOut.linkMicroohms());
        return new NewSurvey(
                facts(sheet, blueprint), readings, passage.handover().id(), sha256);
    }

    private static SurveyFacts facts(SheetFacts sheet, StringBlueprint blueprint) {
        ZoneId zone = blueprint.site().timeZone();
        TakenAt takenAt = Objects.requireNonNull(sheet.takenAt());
        return new SurveyFacts(
                blueprint.string().id(),
                takenAt.instant(zone),
                takenAt.date(zone),
                sheet.takenBy(),
                orNull(sheet.instrument()),
                sheet.calibrationDue(),
                Objects.requireNonNull(sheet.ohmicKind()),
                sheet.ohmicHertz(),
                sheet.ambientCelsius(),
                sheet.stringVolts(),
                sheet.floatAmps(),
                sheet.rippleAmps(),
                sheet.rippleVolts(),
                sheet.injectedAmps(),
                sheet.clampedAmps(),
                sheet.onFloat(),
                sheet.note());
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
