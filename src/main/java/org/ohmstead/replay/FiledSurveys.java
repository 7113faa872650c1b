package org.ohmstead.replay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.check.Thresholds;
import org.ohmstead.intake.file.FileReading;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.file.TakenAt;
import org.ohmstead.intake.file.Weight;
import org.ohmstead.kernel.Flaw;

/** Reads every survey sheet below the folder into its string. */
final class FiledSurveys {
    private final ReplayFolder folder;
    private final FiledRegister register;
    private final Notes notes;
    private final Map<String, String> seen = new HashMap<>();
    private int count;

    private FiledSurveys(ReplayFolder folder, FiledRegister register, Notes notes) {
        this.folder = folder;
        this.register = register;
        this.notes = notes;
    }

    /** Returns how many surveys were read. */
    static int read(ReplayFolder folder, FiledRegister register, Notes notes) {
        FiledSurveys surveys = new FiledSurveys(folder, register, notes);
        List<Path> files = folder.surveys();
        for (int k = 0; k < files.size(); k++) {
            surveys.take(files.get(k));
            notes.progress("survey files read", k + 1, files.size());
        }
        Comparator<SurveyReadings> inOrder =
                Comparator.comparing(SurveyReadings::takenAt).thenComparingLong(SurveyReadings::surveyId);
        register.strings().forEach(string -> string.surveys.sort(inOrder));
        return register.strings().stream()
                .mapToInt(string -> string.surveys.size())
                .sum();
    }

    private void take(Path file) {
        Path shown = folder.shown(file);
        try {
            FileReading reading = SheetReader.read(() -> Files.newInputStream(file), sheet -> take(shown, sheet));
            reading.findings().forEach(finding -> tell(shown, finding));
        } catch (IOException failed) {
            notes.skip(shown, Flaw.ofFile("The file cannot be read: " + failed.getMessage(), "Look at the file."));
        }
    }

    private void tell(Path file, Finding finding) {
        if (finding.weight() == Weight.UNREADABLE) {
            notes.skip(file, finding.flaw());
        } else if (finding.weight() == Weight.VALUE_LOST) {
            notes.lose(file, finding.flaw());
        }
    }

    private void take(Path file, SurveySheet sheet) {
        sheet.findings().forEach(finding -> tell(file, finding));
        if (!sheet.isReadable()) {
            return;
        }
        FiledString string = register.find(sheet.facts().site(), sheet.facts().string());
        if (string == null) {
            notes.skip(
                    file,
                    FiledRegister.unknownString(
                            sheet.line(), sheet.facts().site(), sheet.facts().string()));
            return;
        }
        LaidOut laidOut = LaidOut.of(sheet.rows(), string.straps(), Thresholds.defaults());
        laidOut.foreign().forEach(row -> notes.lose(file, beyond(row.line(), row.position(), string)));
        laidOut.doubled().forEach(row -> notes.lose(file, doubled(row.line(), row.position())));
        SurveyReadings survey = survey(string, sheet.facts(), laidOut);
        String first = seen.putIfAbsent(
                string.site + "/" + string.name + "/" + survey.takenAt(), file + ", line " + sheet.line());
        if (first == null) {
            string.surveys.add(survey);
        } else {
            notes.skip(file, twice(sheet.line(), first));
        }
    }

    private static Flaw beyond(int line, int position, FiledString string) {
        return Flaw.ofLine(
                line,
                "The string has " + string.plan.positions() + " positions, not " + position + ".",
                "Correct the position, or the string's tiers.");
    }

    private static Flaw doubled(int line, int position) {
        return Flaw.ofLine(line, "Position " + position + " stands there already.", "Keep one of the two rows.");
    }

    private static Flaw twice(int line, String first) {
        return Flaw.ofLine(
                line, "A survey of this string at this time stands in " + first + ".", "Keep one of the two.");
    }

    private SurveyReadings survey(FiledString string, SheetFacts facts, LaidOut laidOut) {
        TakenAt takenAt = Objects.requireNonNull(facts.takenAt());
        Instant instant = takenAt.instant(string.zone);
        count++;
        return new SurveyReadings(
                count,
                instant,
                takenAt.date(string.zone),
                Objects.requireNonNull(facts.ohmicKind()),
                facts.instrument().isEmpty() ? null : facts.instrument(),
                facts.ambientCelsius(),
                facts.stringVolts(),
                facts.rippleAmps(),
                facts.onFloat(),
                laidOut.ohmic(),
                laidOut.volts(),
                laidOut.celsius(),
                laidOut.linkMicroohms());
    }
}
