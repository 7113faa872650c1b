package org.ohmstead.overview.web;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.overview.EstateFilter;
import org.ohmstead.overview.EstateOverview;
import org.ohmstead.overview.EstateView;
import org.ohmstead.overview.SitePage;
import org.ohmstead.overview.StringOverview;
import org.ohmstead.overview.StringPage;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The overview pages for programs. */
@RestController
@RequestMapping("/api")
class OverviewResource {

    private final EstateOverview estate;
    private final StringOverview strings;

    OverviewResource(EstateOverview estate, StringOverview strings) {
        this.estate = estate;
        this.strings = strings;
    }

    @GetMapping("/estate")
    EstateView estate(@RequestParam(required = false) @Nullable String show) {
        return estate.estate(EstateFilter.of(show).orElseThrow(() -> new NotFound("There is no such filter: " + show)));
    }

    @GetMapping("/sites/{code}/overview")
    SitePage site(@PathVariable String code) {
        return estate.site(code);
    }

    @GetMapping("/strings/{stringId}/overview")
    StringPage string(@PathVariable long stringId) {
        return strings.string(stringId).page();
    }
}
