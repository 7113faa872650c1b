package org.ohmstead.programme.web;

import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.NewPhoto;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.VisitPhotos;
import org.ohmstead.programme.VisitPhotos.Illustrated;
import org.ohmstead.programme.VisitView;
import org.ohmstead.programme.rules.EvidenceKind;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The checklist of a visit, filled in on the phone, and what was recorded. */
@Controller
class VisitPages {

    private final FleetRegister register;
    private final VisitBook visits;
    private final VisitPhotos photos;
    private final Access access;
    private final Clock clock;

    VisitPages(FleetRegister register, VisitBook visits, VisitPhotos photos, Access access, Clock clock) {
        this.register = register;
        this.visits = visits;
        this.photos = photos;
        this.access = access;
        this.clock = clock;
    }

    @GetMapping("/sites/{code}/visit")
    ModelAndView form(@PathVariable String code) {
        access.require(Permission.HAND_IN_SURVEYS);
        SiteView site = register.site(code);
        LocalDate today = LocalDate.ofInstant(clock.instant(), site.timeZone());
        return form(
                site,
                Map.of(
                        "visitedOn",
                        today.toString(),
                        "visitedBy",
                        access.current().displayName(),
                        "form",
                        UUID.randomUUID().toString()));
    }

    private ModelAndView form(SiteView site, Map<String, String> typed) {
        return new ModelAndView("programme/visit-form")
                .addObject("site", site)
                .addObject("parts", parts(site.code()))
                .addObject("typed", typed);
    }

    private List<VisitForm.Part> parts(String siteCode) {
        return register.stringsOf(siteCode).stream()
                .filter(string -> string.retiredOn() == null)
                .map(string -> new VisitForm.Part(
                        string,
                        EvidenceKind.checklist(
                                register.jarType(string.jarTypeCode()).technology())))
                .toList();
    }

    @PostMapping("/sites/{code}/visit")
    ModelAndView record(
            @PathVariable String code,
            @RequestParam Map<String, String> typed,
            MultipartHttpServletRequest files,
            RedirectAttributes redirect)
            throws IOException {
        access.require(Permission.HAND_IN_SURVEYS);
        SiteView site = register.site(code);
        try {
            List<Illustrated> all = new ArrayList<>();
            for (VisitForm.Part part : parts(code)) {
                NewVisit visit = new VisitForm(typed).visit(part);
                List<NewPhoto> pictures =
                        pictures(files.getFiles("photos-" + part.string().id()));
                if (visit == null && !pictures.isEmpty()) {
                    throw new Refused(
                            "String " + part.string().name() + " has photographs, but no point of its list is marked.");
                }
                if (visit != null) {
                    all.add(new Illustrated(visit, pictures));
                }
            }
            List<Long> ids = photos.record(new VisitForm(typed).name(), all);
            redirect.addFlashAttribute(
                    "notice", ids.size() == 1 ? "The visit is recorded." : ids.size() + " visits are recorded.");
            return new ModelAndView("redirect:/visits/" + ids.get(0));
        } catch (Refused | Conflict e) {
            ModelAndView again = form(site, typed).addObject("problem", e.getMessage());
            again.setStatus(e instanceof Conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
            return again;
        }
    }

    private static List<NewPhoto> pictures(List<MultipartFile> files) throws IOException {
        List<NewPhoto> pictures = new ArrayList<>();
        for (MultipartFile file : files) {
            if (!file.isEmpty()) {
                String name = file.getOriginalFilename();
                pictures.add(new NewPhoto(name == null ? "" : name, file.getBytes()));
            }
        }
        return pictures;
    }

    @GetMapping("/visits/{id}")
    String visit(@PathVariable long id, Model model) {
        VisitView visit = visits.visit(id);
        model.addAttribute("visit", visit);
        model.addAttribute("string", register.string(visit.stringId()));
        model.addAttribute(
                "site", register.site(register.string(visit.stringId()).siteCode()));
        model.addAttribute("photos", photos.of(id));
        model.addAttribute("mayVoid", access.current().may(Permission.SETTLE_SURVEYS));
        model.addAttribute("mayAdd", access.current().may(Permission.HAND_IN_SURVEYS));
        return "programme/visit";
    }

    @PostMapping("/visits/{id}/photos")
    String add(@PathVariable long id, @RequestParam List<MultipartFile> photographs, RedirectAttributes redirect)
            throws IOException {
        try {
            photos.add(id, pictures(photographs));
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/visits/" + id;
    }

    @PostMapping("/visits/{id}/void")
    String voidIt(@PathVariable long id, @RequestParam String reason, RedirectAttributes redirect) {
        try {
            visits.voidVisit(id, reason);
            redirect.addFlashAttribute("notice", "The visit no longer counts.");
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/visits/" + id;
    }
}
