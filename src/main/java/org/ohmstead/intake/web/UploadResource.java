package org.ohmstead.intake.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.Correction;
import org.ohmstead.intake.Handover;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.Receipt;
import org.ohmstead.intake.RemarkedFiles;
import org.ohmstead.intake.UploadState;
import org.ohmstead.intake.UploadView;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/**
 * Hands in survey files. A file that was taken in answers 201 with its receipt, whether its survey was accepted, held or
 * refused: the receipt says which, and the bytes are kept. The same bytes under the same name answer 200.
 */
@RestController
@RequestMapping("/api/uploads")
class UploadResource {

    private static final int MOST_LISTED = 200;

    private final Intake intake;
    private final RemarkedFiles remarked;
    private final ReceiptJsons receipts;
    private final UploadBody body;

    UploadResource(Intake intake, RemarkedFiles remarked, ReceiptJsons receipts, UploadBody body) {
        this.intake = intake;
        this.remarked = remarked;
        this.receipts = receipts;
        this.body = body;
    }

    /**
     * The reason of an act on a held survey.
     *
     * @param supersedes on accepting: the stored survey whose place it takes
     */
    record Reason(String reason, @Nullable Long supersedes) {}

    @PutMapping("/{id}")
    ResponseEntity<ReceiptJson> put(
            @PathVariable UUID id,
            @RequestParam(name = "file", required = false, defaultValue = "survey.csv") String fileName,
            @RequestParam(name = "string", required = false) @Nullable Long stringId,
            @RequestParam(required = false) @Nullable Long supersedes,
            @RequestParam(required = false, defaultValue = "") String reason,
            HttpServletRequest request)
            throws IOException {
        Correction correction = correction(supersedes, reason);
        return answer(intake.receive(new Handover(id, fileName, body.read(request), stringId, correction)));
    }

    @PutMapping(path = "/{id}", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    ResponseEntity<ReceiptJson> putForm(
            @PathVariable UUID id,
            @RequestParam("file") MultipartFile file,
            @RequestParam(name = "string", required = false) @Nullable Long stringId,
            @RequestParam(required = false) @Nullable Long supersedes,
            @RequestParam(required = false, defaultValue = "") String reason)
            throws IOException {
        return answer(intake.receive(handover(id, file, stringId, correction(supersedes, reason))));
    }

    /** For senders that cannot name their upload: without "id" every request is a new upload. */
    @PostMapping(consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    ResponseEntity<ReceiptJson> post(
            @RequestParam(required = false) @Nullable UUID id,
            @RequestParam("file") MultipartFile file,
            @RequestParam(name = "string", required = false) @Nullable Long stringId,
            @RequestParam(required = false) @Nullable Long supersedes,
            @RequestParam(required = false, defaultValue = "") String reason)
            throws IOException {
        UUID name = id == null ? UUID.randomUUID() : id;
        return answer(intake.receive(handover(name, file, stringId, correction(supersedes, reason))));
    }

    @GetMapping
    List<UploadView> recent(@RequestParam(required = false) @Nullable UploadState state) {
        return intake.recent(state, MOST_LISTED);
    }

    @GetMapping("/{id}")
    ReceiptJson get(@PathVariable UUID id) {
        return receipts.of(intake.upload(id));
    }

    /** Always as an attachment of no particular type: what a stranger wrote is never shown as a page of ours. */
    @GetMapping("/{id}/raw")
    ResponseEntity<byte[]> raw(@PathVariable UUID id) {
        UploadView upload = intake.upload(id);
        ContentDisposition attachment = ContentDisposition.attachment()
                .filename(upload.fileName(), StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_OCTET_STREAM)
                .header(HttpHeaders.CONTENT_DISPOSITION, attachment.toString())
                .header("X-Content-Type-Options", "nosniff")
                .body(intake.raw(id));
    }

    /** The file's rows with a last column that says what was remarked on each. */
    @GetMapping("/{id}/remarked")
    ResponseEntity<byte[]> remarked(@PathVariable UUID id) {
        String name = intake.upload(id).fileName();
        String stem = name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name;
        ContentDisposition attachment = ContentDisposition.attachment()
                .filename(stem + " with remarks.csv", StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(HttpHeaders.CONTENT_DISPOSITION, attachment.toString())
                .header("X-Content-Type-Options", "nosniff")
                .body(("\uFEFF" + remarked.of(id)).getBytes(StandardCharsets.UTF_8));
    }

    @PostMapping("/{id}/accept")
    ReceiptJson accept(@PathVariable UUID id, @RequestBody Reason reason) {
        Long supersedes = reason.supersedes();
        return receipts.of(
                supersedes == null
                        ? intake.accept(id, reason.reason())
                        : intake.acceptInPlaceOf(id, supersedes, reason.reason()));
    }

    @PostMapping("/{id}/refuse")
    ReceiptJson refuse(@PathVariable UUID id, @RequestBody Reason reason) {
        return receipts.of(intake.refuse(id, reason.reason()));
    }

    static Handover handover(UUID id, MultipartFile file, @Nullable Long stringId, @Nullable Correction correction)
            throws IOException {
        String name = file.getOriginalFilename();
        return new Handover(id, name == null ? "survey.csv" : name, file.getBytes(), stringId, correction);
    }

    /** Nothing when no survey is to be superseded. */
    static @Nullable Correction correction(@Nullable Long supersedes, String reason) {
        return supersedes == null ? null : new Correction(supersedes, reason);
    }

    private ResponseEntity<ReceiptJson> answer(Receipt receipt) {
        ReceiptJson json = receipts.of(receipt.upload());
        URI location = URI.create("/api/uploads/" + receipt.upload().id());
        return receipt.isNew()
                ? ResponseEntity.created(location).body(json)
                : ResponseEntity.ok().location(location).body(json);
    }
}
