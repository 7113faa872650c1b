package org.ohmstead.programme.web;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.Decision;
import org.ohmstead.programme.NextDateView;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.StringDuties;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** A string's duties as of any day, and what is decided about them. Each change answers with the duties anew. */
@RestController
@RequestMapping("/api/strings/{stringId}")
class ProgrammeResource {

    private final Programme programme;
    private final ProgrammeKeeping keeping;

    ProgrammeResource(Programme programme, ProgrammeKeeping keeping) {
        this.programme = programme;
        this.keeping = keeping;
    }

    /** @param pack code; null for the usual one of the technology */
    record Assign(@Nullable String pack, LocalDate from) {}

    record Elect(String requirement, String branch, LocalDate from) {}

    /** @param months null for none of their own any more */
    record Shorten(String requirement, @Nullable Integer months, LocalDate from) {}

    record Waive(String requirement, LocalDate until, String reason) {}

    @GetMapping("/duties")
    StringDuties duties(@PathVariable long stringId, @RequestParam(required = false) @Nullable LocalDate asOf) {
        return programme.duties(stringId, asOf);
    }

    @GetMapping("/next-date")
    NextDateView nextDate(@PathVariable long stringId) {
        return programme.nextDate(stringId);
    }

    @GetMapping("/programme")
    List<Decision> decisions(@PathVariable long stringId) {
        return keeping.decisions(stringId);
    }

    @PostMapping("/programme/pack")
    StringDuties assign(@PathVariable long stringId, @RequestBody Assign wish) {
        keeping.assign(stringId, wish.pack(), wish.from());
        return programme.duties(stringId, null);
    }

    @PostMapping("/programme/elections")
    StringDuties elect(@PathVariable long stringId, @RequestBody Elect wish) {
        keeping.elect(stringId, wish.requirement(), wish.branch(), wish.from());
        return programme.duties(stringId, null);
    }

    @PostMapping("/programme/own-intervals")
    StringDuties shorten(@PathVariable long stringId, @RequestBody Shorten wish) {
        keeping.shorten(stringId, wish.requirement(), wish.months(), wish.from());
        return programme.duties(stringId, null);
    }

    @PostMapping("/programme/waivers")
    StringDuties waive(@PathVariable long stringId, @RequestBody Waive wish) {
        keeping.waive(stringId, wish.requirement(), wish.until(), wish.reason());
        return programme.duties(stringId, null);
    }

    @PostMapping("/programme/waivers/{waiverId}/end")
    StringDuties endWaiver(@PathVariable long stringId, @PathVariable long waiverId) {
        keeping.endWaiver(stringId, waiverId);
        return programme.duties(stringId, null);
    }
}
