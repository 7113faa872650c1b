package org.ohmstead.capacity.web;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ohmstead.capacity.Agreements;
import org.ohmstead.capacity.CapacityOutcomes;
import org.ohmstead.capacity.CapacityTestView;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** All capacity tests in reach, and per jar type how far ohmic urgency agreed with them. */
@Controller
class AgreementPages {

    private final CapacityOutcomes outcomes;
    private final Agreements agreements;
    private final FleetRegister register;

    AgreementPages(CapacityOutcomes outcomes, Agreements agreements, FleetRegister register) {
        this.outcomes = outcomes;
        this.agreements = agreements;
        this.register = register;
    }

    @GetMapping("/capacity")
    String all(@RequestParam(defaultValue = "") String type, Model model) {
        List<CapacityTestView> tests = outcomes.tests();
        List<String> types = agreements.jarTypes();
        String chosen = types.contains(type) ? type : types.isEmpty() ? "" : types.get(0);
        Map<Long, String> titles =
                register.strings().stream().collect(Collectors.toMap(StringView::id, StringView::title));
        model.addAttribute("tests", tests);
        model.addAttribute("titles", titles);
        model.addAttribute("types", types);
        model.addAttribute("chosen", chosen);
        model.addAttribute("agreement", chosen.isEmpty() ? null : agreements.of(chosen));
        return "capacity/capacity";
    }
}
