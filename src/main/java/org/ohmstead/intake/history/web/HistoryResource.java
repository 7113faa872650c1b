package org.ohmstead.intake.history.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.history.FileOutcome;
import org.ohmstead.intake.history.Histories;
import org.ohmstead.intake.history.HistoryFile;
import org.ohmstead.intake.history.HistoryReceipt;
import org.ohmstead.intake.history.HistoryView;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/**
 * Loads histories: a ZIP archive of survey files or one long file of many sheets, as the request's body. A new one answers
 * 201 once all its bytes are kept; the same bytes again answer 200 with the first load.
 */
@RestController
@RequestMapping("/api/history")
class HistoryResource {

    private static final int MOST_LISTED = 1_000;

    private final Histories histories;
    private final HistoryBody body;
    private final HistoryCsv csv;

    HistoryResource(Histories histories, HistoryBody body, HistoryCsv csv) {
        this.histories = histories;
        this.body = body;
        this.csv = csv;
    }

    @PostMapping
    ResponseEntity<HistoryView> post(
            @RequestParam(name = "file", required = false, defaultValue = "history.zip") String fileName,
            HttpServletRequest request)
            throws IOException {
        HistoryReceipt receipt = body.receive(fileName, request.getInputStream(), request.getContentLengthLong());
        URI location = URI.create("/api/history/" + receipt.load().id());
        return receipt.isNew()
                ? ResponseEntity.created(location).body(receipt.load())
                : ResponseEntity.ok().location(location).body(receipt.load());
    }

    @GetMapping
    List<HistoryView> recent() {
        return histories.recent();
    }

    @GetMapping("/{id}")
    HistoryView get(@PathVariable UUID id) {
        return histories.load(id);
    }

    /** At most a thousand at a time; ask on with the last one's number. */
    @GetMapping("/{id}/files")
    List<HistoryFile> files(
            @PathVariable UUID id,
            @RequestParam(required = false) @Nullable FileOutcome outcome,
            @RequestParam(required = false, defaultValue = "0") int after) {
        return histories.files(id, outcome, after, MOST_LISTED);
    }

    @GetMapping("/{id}/files.csv")
    ResponseEntity<byte[]> csv(@PathVariable UUID id, @RequestParam(required = false) @Nullable FileOutcome outcome) {
        return csv.of(id, outcome);
    }
}
