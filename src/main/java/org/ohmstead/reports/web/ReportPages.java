package org.ohmstead.reports.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.Refused;
import org.ohmstead.reports.Compliance;
import org.ohmstead.reports.JarPrices;
import org.ohmstead.reports.ReportDesk;
import org.ohmstead.reports.ReportExports;
import org.ohmstead.reports.ReportKind;
import org.ohmstead.reports.ReportSubscriptions;
import org.ohmstead.reports.Rhythm;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Which reports there are and what each answers; the prices that one of them needs. */
@Controller
class ReportPages {

    private final ReportDesk desk;
    private final JarPrices prices;
    private final Compliance compliance;
    private final ReportExports exports;
    private final ReportSubscriptions subscriptions;
    private final FleetRegister register;
    private final Access access;
    private final Clock clock;

    ReportPages(
            ReportDesk desk,
            JarPrices prices,
            Compliance compliance,
            ReportExports exports,
            ReportSubscriptions subscriptions,
            FleetRegister register,
            Access access,
            Clock clock) {
        this.desk = desk;
        this.prices = prices;
        this.compliance = compliance;
        this.exports = exports;
        this.subscriptions = subscriptions;
        this.register = register;
        this.access = access;
        this.clock = clock;
    }

    @GetMapping("/reports")
    String reports(@RequestParam(defaultValue = "") String area, Model model) {
        model.addAttribute(
                "kinds", desk.kinds().stream().filter(ReportKind::isOfEstate).toList());
        model.addAttribute(
                "area", area.isEmpty() ? null : register.area(area).entry().code());
        model.addAttribute("areas", register.areas());
        model.addAttribute("quarter", compliance.latestFinished());
        model.addAttribute("strings", register.strings());
        model.addAttribute("exports", exports.recent());
        model.addAttribute("subscriptions", subscriptions.own());
        model.addAttribute("rhythms", Rhythm.values());
        return "reports/reports";
    }

    @GetMapping("/library/prices")
    String prices(Model model) {
        model.addAttribute("prices", prices.all());
        model.addAttribute("jarTypes", register.jarTypes());
        model.addAttribute("today", LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
        model.addAttribute("mayEdit", access.current().may(Permission.EDIT_REGISTER));
        return "reports/prices";
    }

    @PostMapping("/library/prices")
    String setPrice(
            @RequestParam String jarType,
            @RequestParam LocalDate validFrom,
            @RequestParam String amount,
            @RequestParam String currency,
            RedirectAttributes redirect) {
        try {
            redirect.addFlashAttribute(
                    "notice",
                    "A jar of " + jarType + " costs "
                            + prices.set(jarType, validFrom, amount, currency).words() + " from " + validFrom + " on.");
        } catch (Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/library/prices";
    }
}
