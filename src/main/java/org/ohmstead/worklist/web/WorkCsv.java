package org.ohmstead.worklist.web;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.FormulaGuard;
import org.ohmstead.worklist.WorkFilter;
import org.ohmstead.worklist.WorkItemView;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.model.Evidence;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/** The list as CSV (RFC 4180), days in each site's own calendar. */
@Component
class WorkCsv {

    private static final List<String> TITLES = List.of(
            "item",
            "area",
            "site",
            "string",
            "kind",
            "what",
            "state",
            "urgency",
            "by (site's day)",
            "overdue",
            "assignee",
            "planned on",
            "done on",
            "done by",
            "note",
            "raised on",
            "reason",
            "proven by",
            "closed because");

    private final WorkList work;

    WorkCsv(WorkList work) {
        this.work = work;
    }

    ResponseEntity<byte[]> of(WorkFilter filter) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(TITLES);
            work.each(filter, item -> csv.writeRecord(line(item)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("work-site-time.csv")
                                .build()
                                .toString())
                .body(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> line(WorkItemView item) {
        Evidence proof = item.proof();
        return Stream.<@Nullable Object>of(
                        item.id(),
                        item.areaCode(),
                        item.siteCode(),
                        item.stringName(),
                        item.kind().words(),
                        item.what(),
                        item.state().word(),
                        item.urgency().word(),
                        item.by(),
                        item.overdue() ? "yes" : "no",
                        item.assignee(),
                        item.plannedOn(),
                        item.doneOn(),
                        item.doneBy(),
                        item.doneNote(),
                        item.raisedOn(),
                        item.reason(),
                        proof == null ? null : proof.words(),
                        item.closedReason())
                .map(WorkCsv::cell)
                .toList();
    }

    private static String cell(@Nullable Object value) {
        return FormulaGuard.guarded(Objects.toString(value, ""));
    }
}
