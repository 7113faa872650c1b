package org.ohmstead.assessment.web;

import java.util.Optional;
import org.ohmstead.assessment.AssessmentView;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.RunView;
import org.ohmstead.kernel.NotFound;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** The assessment of a string, and the walk over the whole estate with its progress. */
@RestController
class AssessmentsResource {

    private final Assessments assessments;

    AssessmentsResource(Assessments assessments) {
        this.assessments = assessments;
    }

    @GetMapping("/api/strings/{stringId}/assessment")
    AssessmentView assessment(@PathVariable long stringId) {
        return assessments.latest(stringId);
    }

    /** Asks for a walk over the whole estate; while one is under way, answers with that one. */
    @PostMapping("/api/assessments")
    @ResponseStatus(HttpStatus.ACCEPTED)
    RunView reassessEstate() {
        return assessments.requestEstateRun();
    }

    @GetMapping("/api/assessments")
    RunView lastRun() {
        Optional<RunView> run = assessments.lastRun();
        return run.orElseThrow(() -> new NotFound("The estate has not been walked yet."));
    }
}
