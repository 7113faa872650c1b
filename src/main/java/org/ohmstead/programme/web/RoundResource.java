package org.ohmstead.programme.web;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.RoundPack;
import org.ohmstead.programme.RoundPlan;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Rounds and plans as data, and the survey sheets that a crew fills in. */
@RestController
class RoundResource {

    private final Rounds rounds;
    private final RoundPack packs;

    RoundResource(Rounds rounds, RoundPack packs) {
        this.rounds = rounds;
        this.packs = packs;
    }

    /** @param take keys of suggestions: site and day, as {@code FEL-03/2026-03-31} */
    record Adopt(
            LocalDate first,
            LocalDate last,
            int visitsADay,
            @Nullable String area,
            List<String> take) {}

    record Change(int sequence, LocalDate on, String crew, String note) {}

    record Cancel(String reason) {}

    @GetMapping("/api/rounds")
    List<RoundView> between(@RequestParam LocalDate first, @RequestParam LocalDate last) {
        return rounds.between(first, last);
    }

    @GetMapping("/api/rounds/plan")
    RoundPlan plan(
            @RequestParam LocalDate first,
            @RequestParam LocalDate last,
            @RequestParam(defaultValue = "2") int visitsADay,
            @RequestParam(required = false) @Nullable String area) {
        return rounds.suggest(first, last, visitsADay, area);
    }

    @PostMapping("/api/rounds/plan")
    List<RoundView> adopt(@RequestBody Adopt wish) {
        return rounds.adopt(wish.first(), wish.last(), wish.visitsADay(), wish.area(), wish.take()).stream()
                .map(rounds::round)
                .toList();
    }

    @GetMapping("/api/rounds/{id}")
    RoundView round(@PathVariable long id) {
        return rounds.round(id);
    }

    @PutMapping("/api/rounds/{id}")
    RoundView change(@PathVariable long id, @RequestBody Change wish) {
        rounds.change(id, wish.sequence(), wish.on(), wish.crew(), wish.note());
        return rounds.round(id);
    }

    @PostMapping("/api/rounds/{id}/cancel")
    RoundView cancel(@PathVariable long id, @RequestBody Cancel wish) {
        rounds.cancel(id, wish.reason());
        return rounds.round(id);
    }

    @GetMapping({"/rounds/{id}/sheets/{stringId}", "/api/rounds/{id}/sheets/{stringId}"})
    ResponseEntity<byte[]> sheet(@PathVariable long id, @PathVariable long stringId) {
        String disposition = ContentDisposition.attachment()
                .filename("survey-sheet-round-" + id + "-string-" + stringId + ".csv")
                .build()
                .toString();
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition)
                .body(packs.sheet(id, stringId).getBytes(StandardCharsets.UTF_8));
    }
}
