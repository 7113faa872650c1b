package org.ohmstead.intake.web;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.UploadView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A stored survey: its readings beside the last one's, the remarks it came with, and its amendments. */
@Controller
class SurveyPages {

    private final SurveyLedger ledger;
    private final FleetRegister register;
    private final Intake intake;
    private final Access access;

    SurveyPages(SurveyLedger ledger, FleetRegister register, Intake intake, Access access) {
        this.ledger = ledger;
        this.register = register;
        this.intake = intake;
        this.access = access;
    }

    @GetMapping("/surveys/{id}")
    String survey(@PathVariable long id, Model model) {
        SurveyRecord survey = ledger.survey(id);
        StringBlueprint blueprint = register.blueprint(survey.facts().stringId());
        SurveyRecord before = before(survey).orElse(null);
        UploadView upload = upload(survey.uploadId());
        model.addAttribute("survey", survey);
        model.addAttribute("blueprint", blueprint);
        model.addAttribute("before", before);
        model.addAttribute("rows", SurveyTable.of(survey, before));
        model.addAttribute("facts", SurveyFactLines.of(survey.facts(), before == null ? null : before.facts()));
        model.addAttribute(
                "takenAt", survey.facts().takenAt().atZone(blueprint.site().timeZone()));
        model.addAttribute("upload", upload);
        model.addAttribute("others", others(survey));
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        model.addAttribute("maySettle", access.current().may(Permission.SETTLE_SURVEYS));
        return "intake/survey";
    }

    @PostMapping("/surveys/{id}/void")
    String voidIt(@PathVariable long id, @RequestParam String reason, RedirectAttributes redirect) {
        return settle(id, redirect, "The survey no longer counts.", () -> ledger.withdraw(id, reason));
    }

    @PostMapping("/surveys/{id}/supersede")
    String supersede(
            @PathVariable long id, @RequestParam long by, @RequestParam String reason, RedirectAttributes redirect) {
        return settle(id, redirect, "Survey " + by + " took its place.", () -> ledger.supersede(id, by, reason));
    }

    @PostMapping("/surveys/{id}/restore")
    String restore(
            @PathVariable long id,
            @RequestParam String reason,
            @RequestParam(defaultValue = "false") boolean voidOther,
            RedirectAttributes redirect) {
        return voidOther
                ? settle(
                        id,
                        redirect,
                        "The survey counts again; the one that took its place does not.",
                        () -> ledger.exchangeBack(id, reason))
                : settle(id, redirect, "The survey counts again.", () -> ledger.restore(id, reason));
    }

    private Optional<SurveyRecord> before(SurveyRecord survey) {
        return ledger.surveysOf(survey.facts().stringId()).stream()
                .filter(other -> other.facts().takenAt().isBefore(survey.facts().takenAt()))
                .reduce((first, second) -> second);
    }

    /** Latest first: a corrected survey was handed in late. */
    private List<SurveyRecord> others(SurveyRecord survey) {
        return ledger.surveysOf(survey.facts().stringId()).stream()
                .filter(other -> other.id() != survey.id())
                .sorted(Comparator.comparing(
                                (SurveyRecord other) -> other.facts().takenAt())
                        .reversed())
                .toList();
    }

    /** Surveys that were loaded in bulk came with no upload. */
    private @Nullable UploadView upload(@Nullable UUID uploadId) {
        return uploadId == null ? null : intake.upload(uploadId);
    }

    private static String settle(long id, RedirectAttributes redirect, String done, Runnable act) {
        try {
            act.run();
            redirect.addFlashAttribute("notice", done);
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/surveys/" + id;
    }
}
