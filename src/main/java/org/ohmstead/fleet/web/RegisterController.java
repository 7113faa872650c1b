package org.ohmstead.fleet.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.AreaView;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.RegisterFiles;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The register at a glance: areas, their sites, the sites' strings. */
@Controller
class RegisterController {

    private final FleetRegister register;
    private final RegisterFiles files;
    private final Access access;

    RegisterController(FleetRegister register, RegisterFiles files, Access access) {
        this.register = register;
        this.files = files;
        this.access = access;
    }

    record SiteRow(SiteView site, List<StringView> strings) {

        boolean matches(String wanted) {
            String text = site.code() + " " + site.name() + " "
                    + strings.stream().map(StringView::name).collect(Collectors.joining(" "));
            return text.toLowerCase(Locale.ROOT).contains(wanted);
        }
    }

    record AreaRow(AreaView area, List<SiteRow> sites) {}

    @GetMapping("/register")
    String register(@RequestParam(defaultValue = "") String q, Model model) {
        String wanted = q.strip().toLowerCase(Locale.ROOT);
        Map<Long, List<StringView>> stringsOf =
                register.strings().stream().collect(Collectors.groupingBy(StringView::siteId));
        List<SiteRow> sites = register.sites().stream()
                .map(site -> new SiteRow(site, stringsOf.getOrDefault(site.id(), List.of())))
                .filter(row -> row.matches(wanted))
                .toList();
        model.addAttribute("areas", areas(sites, wanted.isEmpty()));
        model.addAttribute("q", q.strip());
        model.addAttribute("kinds", files.kinds());
        model.addAttribute("mayEdit", access.current().may(Permission.EDIT_REGISTER));
        model.addAttribute("mayEditAreas", access.current().may(Permission.ADMINISTER));
        return "register/register";
    }

    private List<AreaRow> areas(List<SiteRow> sites, boolean emptyOnesToo) {
        Map<Long, List<SiteRow>> sitesOf =
                sites.stream().collect(Collectors.groupingBy(row -> row.site().areaId()));
        return register.areas().stream()
                .map(area -> new AreaRow(area, sitesOf.getOrDefault(area.id(), List.of())))
                .filter(row -> emptyOnesToo || !row.sites().isEmpty())
                .toList();
    }
}
