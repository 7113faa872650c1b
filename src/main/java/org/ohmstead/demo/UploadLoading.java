package org.ohmstead.demo;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.ohmstead.intake.Handover;
import org.ohmstead.intake.Intake;
import org.ohmstead.kernel.NotFound;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Hands in survey sheets of the past quarter, and this week's, three of which the intake will hold. */
@Component
@Profile("demo")
class UploadLoading {

    private static final List<SampleSheet> THIS_WEEK = List.of(
            SampleSheet.NICKEL_CADMIUM,
            SampleSheet.LOOSE_LINK,
            SampleSheet.CURRENT_PAST_CLAMP,
            SampleSheet.SKIPPED_JAR,
            SampleSheet.NO_CLOSING_READING,
            SampleSheet.WRONG_STRING);
    /** Younger than any survey of the history, so that none meets one of the same day. */
    private static final int OLDEST_DAYS = 3;

    private final Intake intake;

    UploadLoading(Intake intake) {
        this.intake = intake;
    }

    /** Each upload has a name of its own, so that a start that was cut short is completed by the next. */
    void handIn(DemoEstate estate) {
        for (DemoString string : FiledSurveys.of(estate)) {
            handIn(
                    "demo past quarter " + string.title(),
                    FiledSurveys.fileName(string, estate.today()),
                    () -> FiledSurveys.content(string, estate.today()));
        }
        for (SampleSheet sheet : THIS_WEEK) {
            LocalDate on = estate.today().minusDays(1 + sheet.ordinal() % OLDEST_DAYS);
            handIn(
                    "demo " + sheet.fileName(),
                    sheet.fileName(),
                    () -> sheet.text(estate, on).getBytes(StandardCharsets.UTF_8));
        }
    }

    private void handIn(String name, String fileName, Supplier<byte[]> content) {
        UUID id = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        if (!isThere(id)) {
            intake.receive(new Handover(id, fileName, content.get(), null));
        }
    }

    private boolean isThere(UUID id) {
        try {
            intake.upload(id);
            return true;
        } catch (NotFound unknown) {
            return false;
        }
    }
}
