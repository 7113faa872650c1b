package org.ohmstead.overview.web;

import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.chart.Tile;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.overview.EstateFilter;
import org.ohmstead.overview.EstateOverview;
import org.ohmstead.overview.EstateView;
import org.ohmstead.overview.Figures;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The estate, who is in line, and a site. */
@Controller
class EstateController {

    private final EstateOverview overview;
    private final Access access;

    EstateController(EstateOverview overview, Access access) {
        this.overview = overview;
        this.access = access;
    }

    @GetMapping("/")
    String estate(@RequestParam(required = false) @Nullable String show, Model model) {
        EstateFilter filter = EstateFilter.of(show).orElseThrow(() -> new NotFound("There is no such filter: " + show));
        EstateView estate = overview.estate(filter);
        common(model);
        model.addAttribute("estate", estate);
        model.addAttribute("symbols", Tile.symbols());
        model.addAttribute("choices", choices(estate, filter));
        if (estate.assessedAt() != null) {
            model.addAttribute("assessed", Figures.moment(estate.assessedAt(), ZoneOffset.UTC) + " UTC");
        }
        return "overview/estate";
    }

    @GetMapping("/line")
    String line(Model model) {
        common(model);
        model.addAttribute("sentence", overview.estate(EstateFilter.ACT).sentence());
        model.addAttribute("line", overview.line());
        return "overview/line";
    }

    @GetMapping("/sites/{code}")
    String site(@PathVariable String code, Model model) {
        common(model);
        model.addAttribute("site", overview.site(code));
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        return "overview/site";
    }

    @GetMapping("/find")
    String find(@RequestParam(name = "q", defaultValue = "") String words, Model model) {
        common(model);
        model.addAttribute("found", overview.find(words));
        return "overview/find";
    }

    static void common(Model model) {
        model.addAttribute("figures", Figures.FOR_PAGES);
        model.addAttribute("urgencies", Urgency.values());
        model.addAttribute("drawings", new PageDrawings(ZoneOffset.UTC));
    }

    private static List<Choice> choices(EstateView estate, EstateFilter chosen) {
        return Arrays.stream(EstateFilter.values())
                .map(filter -> new Choice(filter, estate.filters().getOrDefault(filter, 0L), filter == chosen))
                .filter(choice -> choice.count() > 0 || choice.chosen())
                .toList();
    }
}
