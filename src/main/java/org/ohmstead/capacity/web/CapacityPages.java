package org.ohmstead.capacity.web;

import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.capacity.CapacityTestView;
import org.ohmstead.capacity.CapacityTests;
import org.ohmstead.capacity.NewCapacityTest;
import org.ohmstead.capacity.model.DischargeCurve;
import org.ohmstead.capacity.model.DischargeRecord;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.TestKind;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The capacity tests of a string, entered by form or file, and each test with its numbers. */
@Controller
class CapacityPages {

    private static final int JARS_DRAWN = 4;
    private static final int ROWS_DRAWN = 300;
    private static final int ROWS_LISTED = 25;

    private final CapacityTests tests;
    private final FleetRegister register;
    private final Access access;
    private final Clock clock;

    CapacityPages(CapacityTests tests, FleetRegister register, Access access, Clock clock) {
        this.tests = tests;
        this.register = register;
        this.access = access;
        this.clock = clock;
    }

    /** The panel that the string's page fetches. */
    @GetMapping("/strings/{stringId}/capacity")
    String panel(@PathVariable long stringId, Model model) {
        model.addAttribute("standing", tests.standing(stringId));
        model.addAttribute("stringId", stringId);
        return "capacity/panel :: capacity";
    }

    @GetMapping("/strings/{stringId}/capacity-tests")
    ModelAndView ofString(@PathVariable long stringId) {
        StringView string = register.string(stringId);
        SiteView site = register.site(string.siteCode());
        LocalDate today = LocalDate.ofInstant(clock.instant(), site.timeZone());
        return page(
                string,
                CapacityForm.suggested(
                        register.jarType(string.jarTypeCode()).entry(),
                        today,
                        access.current().displayName()));
    }

    private ModelAndView page(StringView string, Map<String, String> typed) {
        var standing = tests.standing(string.id());
        return new ModelAndView("capacity/string")
                .addObject("string", string)
                .addObject("site", register.site(string.siteCode()))
                .addObject("standing", standing)
                .addObject("tests", tests.testsOf(string.id()))
                .addObject("drawing", standing.tests().isEmpty() ? null : CapacityDrawings.trend(standing.tests()))
                .addObject("typed", typed)
                .addObject("kinds", TestKind.values())
                .addObject("methods", Method.values())
                .addObject("mayRecord", access.current().may(Permission.HAND_IN_SURVEYS));
    }

    /** With a record attached its discharge counts, else what was typed. */
    @PostMapping("/strings/{stringId}/capacity-tests")
    ModelAndView record(
            @PathVariable long stringId,
            @RequestParam Map<String, String> typed,
            @RequestParam(required = false) @Nullable MultipartFile file,
            RedirectAttributes redirect)
            throws IOException {
        access.require(Permission.HAND_IN_SURVEYS);
        try {
            CapacityForm form = new CapacityForm(typed);
            NewCapacityTest test = form.test(stringId);
            long id = file == null || file.isEmpty()
                    ? tests.record(test, form.drawn())
                    : tests.recordFrom(test, name(file), file.getBytes());
            redirect.addFlashAttribute("notice", "The capacity test is recorded.");
            return new ModelAndView("redirect:/capacity-tests/" + id);
        } catch (Refused | Conflict e) {
            ModelAndView again = page(register.string(stringId), new LinkedHashMap<>(typed))
                    .addObject("problem", e.getMessage())
                    .addObject("flaws", e instanceof Refused refused ? refused.flaws() : List.of());
            again.setStatus(e instanceof Conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
            return again;
        }
    }

    private static String name(MultipartFile file) {
        String name = file.getOriginalFilename();
        return name == null ? "" : name;
    }

    @GetMapping("/capacity-tests/{id}")
    String test(@PathVariable long id, Model model) {
        CapacityTestView test = tests.test(id);
        StringView string = register.string(test.stringId());
        model.addAttribute("test", test);
        model.addAttribute("failed", test.failed().stream().map(JarRow::of).toList());
        model.addAttribute("rows", test.jars().stream().map(JarRow::of).toList());
        tests.curve(id).ifPresent(record -> addCurve(model, record, test, string));
        model.addAttribute("string", string);
        model.addAttribute("site", register.site(string.siteCode()));
        model.addAttribute("drawing", test.jarsRead() == 0 ? null : CapacityDrawings.jars(test));
        model.addAttribute("mayVoid", access.current().may(Permission.SETTLE_SURVEYS));
        return "capacity/test";
    }

    private static void addCurve(Model model, DischargeRecord record, CapacityTestView test, StringView string) {
        DischargeCurve drawn = DischargeCurve.of(record, JARS_DRAWN, ROWS_DRAWN);
        model.addAttribute("discharge", CapacityDrawings.discharge(test, drawn, string.positions()));
        model.addAttribute("lowest", drawn.lowest());
        model.addAttribute("instants", CurveRow.of(DischargeCurve.of(record, JARS_DRAWN, ROWS_LISTED)));
    }

    @PostMapping("/capacity-tests/{id}/void")
    String voidIt(@PathVariable long id, @RequestParam String reason, RedirectAttributes redirect) {
        try {
            tests.voidTest(id, reason);
            redirect.addFlashAttribute("notice", "The test no longer counts. Enter it again if it was only mistyped.");
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/capacity-tests/" + id;
    }
}
