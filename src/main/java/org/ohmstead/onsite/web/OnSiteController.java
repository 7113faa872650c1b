package org.ohmstead.onsite.web;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.onsite.Walks;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What a device holds: walks taken along, walks half typed, surveys that wait to be handed in. */
@Controller
class OnSiteController {

    private final FleetRegister register;
    private final Walks walks;
    private final Access access;

    OnSiteController(FleetRegister register, Walks walks, Access access) {
        this.register = register;
        this.walks = walks;
        this.access = access;
    }

    /**
     * @param site whose strings are offered for taking along
     * @param strings or these strings, such as a round's
     */
    @GetMapping("/on-site")
    String onSite(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(name = "strings", required = false) @Nullable List<Long> strings,
            Model model) {
        model.addAttribute("sites", register.sites());
        model.addAttribute("site", site == null || site.isEmpty() ? null : register.site(site));
        model.addAttribute("offered", offered(site, strings));
        model.addAttribute("ticket", UUID.randomUUID());
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        return "onsite/on-site";
    }

    private List<StringView> offered(@Nullable String site, @Nullable List<Long> strings) {
        if (strings != null) {
            return strings.stream().map(register::string).toList();
        }
        return site == null || site.isEmpty() ? List.of() : walks.stringsAt(site);
    }
}
