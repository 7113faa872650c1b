package org.ohmstead.intake.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.intake.Correction;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.UploadState;
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
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The pages on which files are handed in, looked at and settled. */
@Controller
class IntakePages {

    private static final int LISTED = 100;

    private final Intake intake;
    private final SurveyLedger ledger;
    private final FleetRegister register;
    private final Access access;

    IntakePages(Intake intake, SurveyLedger ledger, FleetRegister register, Access access) {
        this.ledger = ledger;
        this.intake = intake;
        this.register = register;
        this.access = access;
    }

    @GetMapping("/intake")
    String list(
            @RequestParam(required = false) @Nullable UploadState state,
            @RequestParam(name = "string", required = false) @Nullable Long stringId,
            @RequestParam(required = false) @Nullable Long supersedes,
            Model model) {
        SurveyRecord corrected = supersedes == null ? null : ledger.survey(supersedes);
        Long forString =
                corrected == null ? stringId : Long.valueOf(corrected.facts().stringId());
        model.addAttribute("uploads", intake.recent(state, LISTED));
        model.addAttribute("held", intake.recent(UploadState.HELD, LISTED));
        model.addAttribute("state", state);
        model.addAttribute("states", UploadState.values());
        model.addAttribute("string", forString == null ? null : register.string(forString));
        model.addAttribute("corrected", corrected);
        model.addAttribute("ticket", UUID.randomUUID());
        model.addAttribute("maySettle", access.current().may(Permission.SETTLE_SURVEYS));
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        return "intake/list";
    }

    /** Names each file after the form it came with, so that a form sent twice makes no second survey. */
    @PostMapping("/intake")
    String handIn(
            @RequestParam UUID ticket,
            @RequestParam("file") List<MultipartFile> files,
            @RequestParam(name = "string", required = false) @Nullable Long stringId,
            @RequestParam(required = false) @Nullable Long supersedes,
            @RequestParam(required = false, defaultValue = "") String reason,
            RedirectAttributes redirect)
            throws IOException {
        if (supersedes != null) {
            return correct(ticket, files.get(0), supersedes, reason, redirect);
        }
        List<UploadView> taken = new ArrayList<>();
        for (MultipartFile file : files) {
            UUID id = UUID.nameUUIDFromBytes((ticket + "/" + taken.size()).getBytes(StandardCharsets.UTF_8));
            taken.add(intake.receive(UploadResource.handover(id, file, stringId, null))
                    .upload());
        }
        if (taken.size() == 1) {
            return "redirect:/intake/" + taken.get(0).id();
        }
        redirect.addFlashAttribute("notice", taken.size() + " files were taken in; each has its receipt below.");
        return "redirect:/intake";
    }

    private String correct(UUID ticket, MultipartFile file, long supersedes, String reason, RedirectAttributes redirect)
            throws IOException {
        try {
            Correction correction = new Correction(supersedes, reason);
            UUID id = UUID.nameUUIDFromBytes((ticket + "/0").getBytes(StandardCharsets.UTF_8));
            intake.receive(UploadResource.handover(id, file, null, correction));
            return "redirect:/intake/" + id;
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
            return "redirect:/intake?supersedes=" + supersedes;
        }
    }

    @GetMapping("/intake/{id}")
    String receipt(@PathVariable UUID id, Model model) {
        UploadView upload = intake.upload(id);
        model.addAttribute("upload", upload);
        model.addAttribute("standing", standing(upload));
        model.addAttribute("lines", RawText.of(intake.raw(id), upload.remarks()));
        model.addAttribute("maySettle", access.current().may(Permission.SETTLE_SURVEYS));
        model.addAttribute("mayRepair", access.current().may(Permission.HAND_IN_SURVEYS));
        return "intake/receipt";
    }

    @PostMapping("/intake/{id}/accept")
    String accept(
            @PathVariable UUID id,
            @RequestParam String reason,
            @RequestParam(required = false) @Nullable Long supersedes,
            RedirectAttributes redirect) {
        return supersedes == null
                ? settle(id, redirect, "The survey is stored as it was measured.", () -> intake.accept(id, reason))
                : settle(
                        id,
                        redirect,
                        "The survey is stored in place of survey " + supersedes + ".",
                        () -> intake.acceptInPlaceOf(id, supersedes, reason));
    }

    @PostMapping("/intake/{id}/refuse")
    String refuse(@PathVariable UUID id, @RequestParam String reason, RedirectAttributes redirect) {
        return settle(id, redirect, "The survey is refused; its file stays here.", () -> intake.refuse(id, reason));
    }

    /** The surveys whose place a held one could take, latest first. */
    private List<SurveyRecord> standing(UploadView upload) {
        Long stringId = upload.state() == UploadState.HELD ? upload.stringId() : null;
        List<SurveyRecord> standing = new ArrayList<>(stringId == null ? List.of() : ledger.surveysOf(stringId));
        Collections.reverse(standing);
        return standing;
    }

    private static String settle(UUID id, RedirectAttributes redirect, String done, Runnable act) {
        try {
            act.run();
            redirect.addFlashAttribute("notice", done);
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/intake/" + id;
    }
}
