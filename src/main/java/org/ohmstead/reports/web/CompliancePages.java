package org.ohmstead.reports.web;

import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.reports.Compliance;
import org.ohmstead.reports.ComplianceSummary;
import org.ohmstead.reports.Quarter;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The quarter on a page: totals, exceptions, sign-off, exports. */
@Controller
class CompliancePages {

    private final Compliance compliance;
    private final FleetRegister register;
    private final Access access;

    CompliancePages(Compliance compliance, FleetRegister register, Access access) {
        this.compliance = compliance;
        this.register = register;
        this.access = access;
    }

    @GetMapping("/compliance")
    String latest() {
        return "redirect:/compliance/" + compliance.latestFinished();
    }

    /** The form that goes to another quarter. */
    @GetMapping(path = "/compliance", params = "quarter")
    String other(@RequestParam String quarter, @RequestParam(defaultValue = "") String area) {
        return address(Quarter.parse(quarter.strip()), area.isEmpty() ? null : area);
    }

    @GetMapping("/compliance/{quarter}")
    String quarter(@PathVariable String quarter, @RequestParam(required = false) @Nullable String area, Model model) {
        ComplianceSummary summary = compliance.summary(Quarter.parse(quarter), area);
        model.addAttribute("summary", summary);
        model.addAttribute("states", DutyState.values());
        model.addAttribute("areas", register.areas());
        model.addAttribute("before", summary.quarter().before());
        model.addAttribute("after", summary.quarter().after());
        model.addAttribute(
                "maySign",
                access.current().may(Permission.SIGN_OFF)
                        && summary.isOver()
                        && (area != null || access.reach().everywhere()));
        return "reports/compliance";
    }

    @PostMapping("/compliance/{quarter}/sign-off")
    String sign(
            @PathVariable String quarter,
            @RequestParam(defaultValue = "") String area,
            @RequestParam String sha256,
            @RequestParam(defaultValue = "") String note) {
        String scope = area.isEmpty() ? null : area;
        compliance.sign(Quarter.parse(quarter), scope, sha256, note);
        return address(Quarter.parse(quarter), scope);
    }

    private static String address(Quarter quarter, @Nullable String area) {
        return "redirect:/compliance/" + quarter + (area == null ? "" : "?area=" + area);
    }
}
