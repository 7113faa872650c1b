package org.ohmstead.intake.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Writes down everything a reading came to, one line each, so that it can be compared with an expected text. */
final class Rendition {

    private final List<String> lines = new ArrayList<>();

    static String of(ByteSource source) throws IOException {
        Rendition rendition = new Rendition();
        FileReading file = SheetReader.read(source, rendition::sheet);
        String encoding = file.encoding().isEmpty() ? "no text" : file.encoding();
        rendition.lines.add("file: " + encoding + ", sheets " + file.sheets());
        file.findings().forEach(rendition::finding);
        return String.join("\n", rendition.lines) + "\n";
    }

    private void sheet(SurveySheet sheet) {
        lines.add("sheet at line " + sheet.line() + (sheet.isReadable() ? "" : ", unreadable"));
        facts(sheet.facts());
        sheet.rows().forEach(this::row);
        sheet.findings().forEach(this::finding);
    }

    private void facts(SheetFacts facts) {
        lines.add("  for " + facts.site() + " / " + facts.string() + ", taken at " + takenAt(facts) + " by "
                + facts.takenBy());
        lines.add("  with " + facts.instrument() + " due " + facts.calibrationDue() + ", " + facts.ohmicKind() + " at "
                + facts.ohmicHertz() + " Hz, " + facts.ambientCelsius() + " °C");
        lines.add("  string " + facts.stringVolts() + " V, float " + facts.floatAmps() + " A, ripple "
                + facts.rippleAmps() + " A " + facts.rippleVolts() + " V, injected " + facts.injectedAmps()
                + " A, clamped " + facts.clampedAmps() + " A, on float " + facts.onFloat());
        lines.add("  note: " + facts.note());
    }

    private static String takenAt(SheetFacts facts) {
        TakenAt at = facts.takenAt();
        return at == null ? "?" : at.written() + (at.offset() == null ? " site time" : " " + at.offset());
    }

    private void row(ReadingRow row) {
        String links =
                Arrays.stream(row.linkMicroohms()).mapToObj(Double::toString).collect(Collectors.joining(" "));
        lines.add("  line " + row.line() + ": position " + row.position() + ", ohmic " + row.ohmic() + ", volts "
                + row.volts() + ", celsius " + row.celsius() + ", gravity " + row.gravity() + ", links " + links);
    }

    private void finding(Finding finding) {
        lines.add("  " + finding.weight() + " " + finding.flaw());
    }
}
