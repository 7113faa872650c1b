package org.ohmstead.assessment.web;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.NewOverrule;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.assessment.OverruleView.Subject;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.kernel.Urgency;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The forms with which people overrule; they stand on the pages of strings, jars and links. */
@Controller
class OverrulePages {

    private final Overruling overruling;

    OverrulePages(Overruling overruling) {
        this.overruling = overruling;
    }

    @PostMapping("/strings/{stringId}/overrule")
    String overrule(
            @PathVariable long stringId,
            @RequestParam Subject subject,
            @RequestParam(required = false) @Nullable Integer unit,
            @RequestParam Urgency urgency,
            @RequestParam String reason,
            @RequestParam @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate lastDay) {
        return backTo(overruling.overrule(stringId, new NewOverrule(subject, unit, urgency, reason, lastDay)));
    }

    @PostMapping("/overrules/{id}/end")
    String end(@PathVariable long id) {
        return backTo(overruling.end(id));
    }

    private static String backTo(OverruleView one) {
        String string = "redirect:/strings/" + one.stringId();
        return switch (one.subject()) {
            case STRING -> string;
            case JAR -> string + "/jars/" + one.unit();
            case LINK -> string + "/links/" + one.unit();
        };
    }
}
