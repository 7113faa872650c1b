package org.ohmstead.intake.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.UploadState;
import org.ohmstead.intake.UploadView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
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
    private final FleetRegister register;
    private final Access access;

    IntakePages(Intake intake, FleetRegister register, Access access) {
        this.intake = intake;
        this.register = register;
        this.access = access;
    }

    @GetMapping("/intake")
    String list(
            @RequestParam(required = false) @Nullable UploadState state,
            @RequestParam(name = "string", required = false) @Nullable Long stringId,
            Model model) {
        model.addAttribute("uploads", intake.recent(state, LISTED));
        model.addAttribute("held", intake.recent(UploadState.HELD, LISTED));
        model.addAttribute("state", state);
        model.addAttribute("states", UploadState.values());
        model.addAttribute("string", stringId == null ? null : register.string(stringId));
        model.addAttribute("ticket", UUID.randomUUID());
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        return "intake/list";
    }

    /** Names each file after the form it came with, so that a form sent twice makes no second survey. */
    @PostMapping("/intake")
    String handIn(
            @RequestParam UUID ticket,
            @RequestParam("file") List<MultipartFile> files,
            @RequestParam(name = "string", required = false) @Nullable Long stringId,
            RedirectAttributes redirect)
            throws IOException {
        List<UploadView> taken = new ArrayList<>();
        for (MultipartFile file : files) {
            UUID id = UUID.nameUUIDFromBytes((ticket + "/" + taken.size()).getBytes(StandardCharsets.UTF_8));
            taken.add(
                    intake.receive(UploadResource.handover(id, file, stringId)).upload());
        }
        if (taken.size() == 1) {
            return "redirect:/intake/" + taken.get(0).id();
        }
        redirect.addFlashAttribute("notice", taken.size() + " files were taken in; each has its receipt below.");
        return "redirect:/intake";
    }

    @GetMapping("/intake/{id}")
    String receipt(@PathVariable UUID id, Model model) {
        UploadView upload = intake.upload(id);
        model.addAttribute("upload", upload);
        model.addAttribute("lines", RawText.of(intake.raw(id), upload.remarks()));
        model.addAttribute("maySettle", access.current().may(Permission.SETTLE_SURVEYS));
        return "intake/receipt";
    }

    @PostMapping("/intake/{id}/accept")
    String accept(@PathVariable UUID id, @RequestParam String reason, RedirectAttributes redirect) {
        return settle(id, redirect, "The survey is stored as it was measured.", () -> intake.accept(id, reason));
    }

    @PostMapping("/intake/{id}/refuse")
    String refuse(@PathVariable UUID id, @RequestParam String reason, RedirectAttributes redirect) {
        return settle(id, redirect, "The survey is refused; its file stays here.", () -> intake.refuse(id, reason));
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
