package org.ohmstead.assessment.web;

import java.util.List;
import org.ohmstead.assessment.InstrumentSurvey;
import org.ohmstead.assessment.InstrumentView;
import org.ohmstead.assessment.Instruments;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Instruments for programs. */
@RestController
class InstrumentsResource {

    private final Instruments instruments;

    InstrumentsResource(Instruments instruments) {
        this.instruments = instruments;
    }

    @GetMapping("/api/instruments")
    List<InstrumentView> all() {
        return instruments.all();
    }

    /** A serial number may hold any sign, so it is no part of the path. */
    @GetMapping("/api/instruments/surveys")
    List<InstrumentSurvey> surveys(@RequestParam String serial) {
        instruments.instrument(serial);
        return instruments.surveys(serial);
    }

    @PostMapping("/api/instruments")
    List<InstrumentView> lookAgain() {
        return instruments.lookAgain();
    }
}
