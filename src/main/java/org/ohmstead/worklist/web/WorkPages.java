package org.ohmstead.worklist.web;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.ohmstead.worklist.WorkFilter;
import org.ohmstead.worklist.WorkItemLife;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.WorkPage;
import org.ohmstead.worklist.WorkPlan;
import org.ohmstead.worklist.WorkReport;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The work list, one item with its life, and what was unresolved at the end of a day. */
@Controller
class WorkPages {

    private static final int PER_PAGE = 50;
    private static final int ROUNDS_AHEAD_DAYS = 120;

    private final WorkList work;
    private final FleetRegister register;
    private final Rounds rounds;
    private final Access access;

    WorkPages(WorkList work, FleetRegister register, Rounds rounds, Access access) {
        this.work = work;
        this.register = register;
        this.rounds = rounds;
        this.access = access;
    }

    @GetMapping("/work")
    String list(
            @RequestParam(defaultValue = WorkChoice.OPEN) String show,
            @RequestParam(defaultValue = "") String area,
            @RequestParam(required = false) @Nullable WorkKind kind,
            @RequestParam(defaultValue = "false") boolean overdue,
            @RequestParam(defaultValue = "") String assignee,
            @RequestParam(defaultValue = "0") int page,
            Model model) {
        WorkChoice choice = new WorkChoice(show, area, kind, overdue, assignee);
        WorkPage found = work.items(choice.filter(), page, PER_PAGE);
        Map<WorkState, Long> counts = work.counts(choice.showing(WorkChoice.ALL).filter());
        model.addAttribute("choice", choice);
        model.addAttribute("found", found);
        model.addAttribute("counts", counts);
        model.addAttribute("open", sum(work.counts(WorkFilter.OPEN)));
        model.addAttribute("late", sum(work.counts(WorkFilter.OPEN.late())));
        model.addAttribute("states", WorkState.values());
        model.addAttribute("kinds", WorkKind.values());
        model.addAttribute("areas", register.areas());
        model.addAttribute("today", rounds.today(null));
        may(model);
        return "worklist/list";
    }

    private static long sum(Map<WorkState, Long> counts) {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }

    private void may(Model model) {
        model.addAttribute("mayDo", access.current().may(Permission.DO_WORK));
        model.addAttribute("mayDismiss", access.current().may(Permission.OVERRULE));
    }

    @PostMapping("/work/plan")
    String planChosen(
            @RequestParam(defaultValue = "") List<Long> item,
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(defaultValue = "") String who,
            @RequestParam(defaultValue = "") String note,
            @RequestParam Map<String, String> all,
            RedirectAttributes redirect) {
        return actOnChosen(all, redirect, item, "planned", () -> work.plan(item, new WorkPlan(on, null, who, note)));
    }

    @PostMapping("/work/assign")
    String assignChosen(
            @RequestParam(defaultValue = "") List<Long> item,
            @RequestParam(defaultValue = "") String who,
            @RequestParam Map<String, String> all,
            RedirectAttributes redirect) {
        return actOnChosen(all, redirect, item, "assigned", () -> work.assign(item, who));
    }

    @PostMapping("/work/dismiss")
    String dismissChosen(
            @RequestParam(defaultValue = "") List<Long> item,
            @RequestParam(defaultValue = "") String reason,
            @RequestParam(required = false) @Nullable LocalDate quietUntil,
            @RequestParam Map<String, String> all,
            RedirectAttributes redirect) {
        return actOnChosen(all, redirect, item, "dismissed", () -> work.dismiss(item, reason, quietUntil));
    }

    /** Back to the list as it was chosen. */
    private static String actOnChosen(
            Map<String, String> all, RedirectAttributes redirect, List<Long> items, String done, Runnable act) {
        for (String parameter : List.of("show", "area", "kind", "overdue", "assignee", "page")) {
            String value = all.getOrDefault(parameter, "");
            if (!value.isEmpty()) {
                redirect.addAttribute(parameter, value);
            }
        }
        tell(redirect, items.size() == 1 ? "1 item is " + done + "." : items.size() + " items are " + done + ".", act);
        return "redirect:/work";
    }

    private static void tell(RedirectAttributes redirect, String done, Runnable act) {
        try {
            act.run();
            redirect.addFlashAttribute("notice", done);
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
    }

    @GetMapping("/work/{id}")
    String item(@PathVariable long id, Model model) {
        WorkItemLife life = work.item(id);
        StringView string = register.string(life.item().stringId());
        SiteView site = register.site(string.siteCode());
        LocalDate today = rounds.todayAt(site.code());
        List<RoundView> ahead = rounds.between(today, today.plusDays(ROUNDS_AHEAD_DAYS)).stream()
                .filter(round -> round.siteCode().equals(site.code()) && round.cancelledBecause() == null)
                .toList();
        model.addAttribute("item", life.item());
        model.addAttribute("events", life.events());
        model.addAttribute("string", string);
        model.addAttribute("site", site);
        model.addAttribute("today", today);
        model.addAttribute("rounds", ahead);
        model.addAttribute("person", access.current().displayName());
        may(model);
        return "worklist/item";
    }

    @PostMapping("/work/{id}/plan")
    String plan(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(required = false) @Nullable Long round,
            @RequestParam(defaultValue = "") String who,
            @RequestParam(defaultValue = "") String note,
            RedirectAttributes redirect) {
        return act(id, redirect, "It is planned.", () -> work.plan(id, new WorkPlan(on, round, who, note)));
    }

    @PostMapping("/work/{id}/done")
    String done(
            @PathVariable long id,
            @RequestParam LocalDate on,
            @RequestParam(defaultValue = "") String by,
            @RequestParam(defaultValue = "") String note,
            @RequestParam(required = false) @Nullable Double asFound,
            @RequestParam(required = false) @Nullable Double asLeft,
            RedirectAttributes redirect) {
        return act(
                id,
                redirect,
                "It is reported done; the next reading must prove it.",
                () -> work.done(id, new WorkReport(on, by, note, asFound, asLeft)));
    }

    @PostMapping("/work/{id}/dismiss")
    String dismiss(
            @PathVariable long id,
            @RequestParam(defaultValue = "") String reason,
            @RequestParam(required = false) @Nullable LocalDate quietUntil,
            RedirectAttributes redirect) {
        return act(id, redirect, "It is dismissed.", () -> work.dismiss(id, reason, quietUntil));
    }

    @PostMapping("/work/{id}/undo")
    String undo(@PathVariable long id, @RequestParam(defaultValue = "") String note, RedirectAttributes redirect) {
        return act(id, redirect, "The last step is taken back.", () -> work.undo(id, note));
    }

    private static String act(long id, RedirectAttributes redirect, String done, Runnable act) {
        tell(redirect, done, act);
        return "redirect:/work/" + id;
    }

    /** What an auditor asks for: open at the end of a day, with the evidence of effort. */
    @GetMapping("/work/unresolved")
    String unresolved(
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(defaultValue = "") String area,
            Model model) {
        LocalDate today = rounds.today(area.isEmpty() ? null : area);
        LocalDate asOf = on == null ? today.with(IsoFields.DAY_OF_QUARTER, 1).minusDays(1) : on;
        model.addAttribute("on", asOf);
        model.addAttribute("area", area);
        model.addAttribute("areas", register.areas());
        model.addAttribute("unresolved", work.unresolved(asOf, area.isEmpty() ? null : area));
        return "worklist/unresolved";
    }

    /** The panel that the string's page fetches. */
    @GetMapping("/strings/{stringId}/work")
    String panel(@PathVariable long stringId, Model model) {
        model.addAttribute("items", work.openOf(stringId));
        model.addAttribute(
                "closed",
                work.of(stringId).stream()
                        .filter(item -> !item.isOpen())
                        .limit(3)
                        .toList());
        model.addAttribute("stringId", stringId);
        may(model);
        return "worklist/panel :: work";
    }

    /** The panel that the site's page fetches. */
    @GetMapping("/sites/{code}/work")
    String ofSite(@PathVariable String code, Model model) {
        register.site(code);
        model.addAttribute("found", work.items(WorkFilter.OPEN.ofSite(code), 0, PER_PAGE));
        return "worklist/panel :: ofSite";
    }

    @GetMapping("/strings/{stringId}/work/new")
    ModelAndView form(@PathVariable long stringId) {
        access.require(Permission.DO_WORK);
        return form(register.string(stringId), Map.of("about", "STRING"));
    }

    private static ModelAndView form(StringView string, Map<String, String> typed) {
        return new ModelAndView("worklist/new")
                .addObject("string", string)
                .addObject("typed", typed)
                .addObject(
                        "kinds",
                        List.of(WorkKind.values()).stream()
                                .filter(kind -> kind != WorkKind.OVERDUE_DUTY)
                                .toList())
                .addObject("urgencies", List.of(Urgency.ACT, Urgency.PLAN, Urgency.RECHECK));
    }

    @PostMapping("/strings/{stringId}/work")
    ModelAndView raise(
            @PathVariable long stringId, @RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        access.require(Permission.DO_WORK);
        try {
            long id = work.raise(new WorkForm(typed).work(stringId)).id();
            redirect.addFlashAttribute("notice", "It is on the list.");
            return new ModelAndView("redirect:/work/" + id);
        } catch (Refused | Conflict e) {
            ModelAndView again = form(register.string(stringId), typed).addObject("problem", e.getMessage());
            again.setStatus(e instanceof Conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
            return again;
        }
    }
}
