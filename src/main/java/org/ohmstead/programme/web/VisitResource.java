package org.ohmstead.programme.web;

import java.io.IOException;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.programme.NewPhoto;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.PhotoView;
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.VisitPhotos;
import org.ohmstead.programme.VisitView;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** Visits and their photographs. */
@RestController
class VisitResource {

    private final VisitBook visits;
    private final VisitPhotos photos;
    private final Access access;

    VisitResource(VisitBook visits, VisitPhotos photos, Access access) {
        this.visits = visits;
        this.photos = photos;
        this.access = access;
    }

    /** @param note may be left out */
    record VisitBody(
            LocalDate visitedOn, String visitedBy, @Nullable String note, List<NewVisit.Item> items) {}

    record Voiding(String reason) {}

    @GetMapping("/api/strings/{stringId}/visits")
    List<VisitView> visitsOf(@PathVariable long stringId) {
        return visits.visitsOf(stringId);
    }

    @PostMapping("/api/strings/{stringId}/visits")
    ResponseEntity<VisitView> record(@PathVariable long stringId, @RequestBody VisitBody body) {
        access.require(Permission.HAND_IN_SURVEYS);
        String note = body.note() == null ? "" : body.note();
        long id = visits.record(new NewVisit(stringId, body.visitedOn(), body.visitedBy(), note, body.items()));
        return ResponseEntity.created(URI.create("/api/visits/" + id)).body(visits.visit(id));
    }

    @GetMapping("/api/visits/{id}")
    VisitView visit(@PathVariable long id) {
        return visits.visit(id);
    }

    @PostMapping("/api/visits/{id}/void")
    VisitView voidIt(@PathVariable long id, @RequestBody Voiding voiding) {
        visits.voidVisit(id, voiding.reason());
        return visits.visit(id);
    }

    @GetMapping("/api/visits/{id}/photos")
    List<PhotoView> photos(@PathVariable long id) {
        return photos.of(id);
    }

    /** One photograph as the form field {@code file}. */
    @PostMapping("/api/visits/{id}/photos")
    List<PhotoView> add(@PathVariable long id, @RequestParam MultipartFile file) throws IOException {
        String name = file.getOriginalFilename();
        return photos.add(id, List.of(new NewPhoto(name == null ? "" : name, file.getBytes())));
    }

    /** The bytes as they came, named by us and typed by what they are; never run as anything. */
    @GetMapping({"/visits/{id}/photos/{photoId}", "/api/visits/{id}/photos/{photoId}"})
    ResponseEntity<byte[]> picture(@PathVariable long id, @PathVariable long photoId) {
        VisitPhotos.Picture picture = photos.picture(id, photoId);
        String disposition = ContentDisposition.inline()
                .filename(picture.photo().safeName())
                .build()
                .toString();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(picture.photo().mediaType()))
                .cacheControl(CacheControl.noStore())
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition)
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .header("X-Content-Type-Options", "nosniff")
                .body(picture.bytes());
    }
}
