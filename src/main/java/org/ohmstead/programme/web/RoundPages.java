package org.ohmstead.programme.web;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.RoundPack;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The rounds of a month by crew and area, the planning of a quarter, and one round with its pack. */
@Controller
@RequestMapping("/rounds")
class RoundPages {

    private static final int VISITS_A_DAY = 2;
    private static final int PLAN_MONTHS = 3;

    private final Rounds rounds;
    private final RoundPack packs;
    private final FleetRegister register;
    private final Access access;

    RoundPages(Rounds rounds, RoundPack packs, FleetRegister register, Access access) {
        this.rounds = rounds;
        this.packs = packs;
        this.register = register;
        this.access = access;
    }

    @GetMapping
    String month(
            @RequestParam(required = false) @Nullable YearMonth month,
            @RequestParam(defaultValue = "") String area,
            @RequestParam(defaultValue = "") String crew,
            Model model) {
        LocalDate today = rounds.today(area.isEmpty() ? null : area);
        YearMonth shown = month == null ? YearMonth.from(today) : month;
        List<RoundView> all = rounds.between(shown.atDay(1), shown.atEndOfMonth());
        List<RoundView> chosen = all.stream()
                .filter(round -> area.isEmpty() || round.areaCode().equals(area))
                .filter(round -> crew.isEmpty() || round.crew().equals(crew))
                .toList();
        model.addAttribute("today", today);
        model.addAttribute("month", shown);
        model.addAttribute("weeks", MonthGrid.of(shown, chosen));
        model.addAttribute("rounds", chosen);
        model.addAttribute("area", area);
        model.addAttribute("crew", crew);
        model.addAttribute("areas", register.areas());
        model.addAttribute(
                "crews", all.stream().map(RoundView::crew).distinct().sorted().toList());
        return "programme/rounds";
    }

    @GetMapping("/plan")
    String plan(
            @RequestParam(required = false) @Nullable LocalDate first,
            @RequestParam(required = false) @Nullable LocalDate last,
            @RequestParam(defaultValue = "" + VISITS_A_DAY) int visits,
            @RequestParam(defaultValue = "") String area,
            Model model) {
        LocalDate from = first == null ? rounds.today(area.isEmpty() ? null : area) : first;
        LocalDate to = last == null ? from.plusMonths(PLAN_MONTHS).minusDays(1) : last;
        model.addAttribute("first", from);
        model.addAttribute("last", to);
        model.addAttribute("visits", visits);
        model.addAttribute("area", area);
        model.addAttribute("areas", register.areas());
        model.addAttribute("mayPlan", access.current().may(Permission.EDIT_REGISTER));
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        try {
            model.addAttribute("plan", rounds.suggest(from, to, visits, area.isEmpty() ? null : area));
        } catch (Refused e) {
            model.addAttribute("problem", e.getMessage());
        }
        return "programme/plan";
    }

    @PostMapping("/plan")
    String adopt(
            @RequestParam LocalDate first,
            @RequestParam LocalDate last,
            @RequestParam int visits,
            @RequestParam(defaultValue = "") String area,
            @RequestParam(defaultValue = "") List<String> take,
            RedirectAttributes redirect) {
        access.require(Permission.EDIT_REGISTER);
        try {
            if (take.isEmpty()) {
                throw new Refused("Nothing was chosen; tick the visits to plan.");
            }
            int made = rounds.adopt(first, last, visits, area.isEmpty() ? null : area, take)
                    .size();
            redirect.addFlashAttribute("notice", made == 1 ? "1 round is planned." : made + " rounds are planned.");
            return "redirect:/rounds?month=" + YearMonth.from(first);
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
            redirect.addAttribute("first", first);
            redirect.addAttribute("last", last);
            redirect.addAttribute("visits", visits);
            redirect.addAttribute("area", area);
            return "redirect:/rounds/plan";
        }
    }

    @GetMapping("/{id}")
    String round(@PathVariable long id, Model model) {
        RoundView round = rounds.round(id);
        model.addAttribute("round", round);
        model.addAttribute("site", register.site(round.siteCode()));
        model.addAttribute("parts", packs.parts(id));
        model.addAttribute("today", rounds.todayAt(round.siteCode()));
        model.addAttribute("mayPlan", access.current().may(Permission.EDIT_REGISTER));
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        return "programme/round";
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable long id,
            @RequestParam int sequence,
            @RequestParam LocalDate on,
            @RequestParam(defaultValue = "") String crew,
            @RequestParam(defaultValue = "") String note,
            RedirectAttributes redirect) {
        return act(id, redirect, "The round is changed.", () -> rounds.change(id, sequence, on, crew, note));
    }

    @PostMapping("/{id}/cancel")
    String cancel(@PathVariable long id, @RequestParam String reason, RedirectAttributes redirect) {
        return act(id, redirect, "The round is cancelled; its duties are open again.", () -> rounds.cancel(id, reason));
    }

    private static String act(long id, RedirectAttributes redirect, String done, Runnable act) {
        try {
            act.run();
            redirect.addFlashAttribute("notice", done);
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/rounds/" + id;
    }
}
