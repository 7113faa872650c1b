package org.ohmstead.assessment.web;

import java.util.List;
import org.ohmstead.assessment.NewOverrule;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.assessment.Overruling;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Overruled judgements for programs. */
@RestController
class OverruleResource {

    private final Overruling overruling;

    OverruleResource(Overruling overruling) {
        this.overruling = overruling;
    }

    @GetMapping("/api/strings/{stringId}/overrules")
    List<OverruleView> all(@PathVariable long stringId) {
        return overruling.of(stringId);
    }

    @PostMapping("/api/strings/{stringId}/overrules")
    @ResponseStatus(HttpStatus.CREATED)
    OverruleView overrule(@PathVariable long stringId, @RequestBody NewOverrule wanted) {
        return overruling.overrule(stringId, wanted);
    }

    @DeleteMapping("/api/overrules/{id}")
    OverruleView end(@PathVariable long id) {
        return overruling.end(id);
    }
}
