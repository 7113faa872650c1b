package org.ohmstead.intake.history.web;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.history.FileOutcome;
import org.ohmstead.intake.history.Histories;
import org.ohmstead.intake.history.HistoryFile;
import org.ohmstead.kernel.FormulaGuard;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/** What became of each file, as CSV (RFC 4180). */
@Component
class HistoryCsv {

    private static final String TITLES = "number,file,taken at,outcome,string,survey,upload,remark,sha256";

    private final Histories histories;

    HistoryCsv(Histories histories) {
        this.histories = histories;
    }

    ResponseEntity<byte[]> of(UUID id, @Nullable FileOutcome outcome) {
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        write(id, outcome, out);
        String name =
                "history-" + id + (outcome == null ? "" : "-" + outcome.name().toLowerCase(java.util.Locale.ROOT));
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(name + ".csv")
                                .build()
                                .toString())
                .body(out.toByteArray());
    }

    private void write(UUID id, @Nullable FileOutcome outcome, OutputStream out) {
        try (Writer csv = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            csv.write(TITLES + "\r\n");
            histories.eachFile(id, outcome, file -> line(csv, file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void line(Writer csv, HistoryFile file) {
        try {
            csv.write(String.join(
                            ",",
                            Integer.toString(file.number()),
                            cell(file.fileName()),
                            cell(file.takenAt()),
                            file.outcome().word(),
                            cell(file.string()),
                            cell(file.surveyId()),
                            cell(file.uploadId()),
                            cell(file.said()),
                            file.sha256())
                    + "\r\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String cell(@Nullable Object value) {
        String text = FormulaGuard.guarded(Objects.toString(value, ""));
        return text.matches("(?s).*[,\"\\r\\n].*") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }
}
