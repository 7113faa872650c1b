package org.ohmstead.fleet.web;

import java.net.URI;
import java.util.List;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.csv.SiteEntry;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Sites for programs. */
@RestController
@RequestMapping("/api/sites")
class SitesResource {

    private final FleetRegister register;

    SitesResource(FleetRegister register) {
        this.register = register;
    }

    @GetMapping
    List<SiteView> all() {
        return register.sites();
    }

    @GetMapping("/{code}")
    SiteView one(@PathVariable String code) {
        return register.site(code);
    }

    @PostMapping
    ResponseEntity<SiteView> create(@RequestBody SiteEntry entry) {
        SiteView created = register.createSite(entry);
        return ResponseEntity.created(URI.create("/api/sites/" + created.code()))
                .body(created);
    }

    /** @param version of the state that was read before */
    @PutMapping("/{code}")
    SiteView change(@PathVariable String code, @RequestParam int version, @RequestBody SiteEntry entry) {
        return register.changeSite(register.site(code).id(), version, entry);
    }

    @PostMapping("/{code}/retirement")
    SiteView retire(@PathVariable String code, @RequestBody RetiredOn retired) {
        return register.retireSite(code, retired.on());
    }
}
