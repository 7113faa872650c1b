package org.ohmstead.fleet.web;

import java.net.URI;
import java.util.List;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.StringEntry;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Strings for programs. */
@RestController
@RequestMapping("/api/strings")
class StringsResource {

    private final FleetRegister register;

    StringsResource(FleetRegister register) {
        this.register = register;
    }

    @GetMapping
    List<StringView> all(@RequestParam(defaultValue = "") String site) {
        return site.isEmpty() ? register.strings() : register.stringsOf(site);
    }

    @GetMapping("/{id}")
    StringView one(@PathVariable long id) {
        return register.string(id);
    }

    /** The string with its site, jar type, links, jars and remakes. */
    @GetMapping("/{id}/blueprint")
    StringBlueprint blueprint(@PathVariable long id) {
        return register.blueprint(id);
    }

    @PostMapping
    ResponseEntity<StringView> create(@RequestBody StringEntry entry) {
        StringView created = register.createString(entry);
        return ResponseEntity.created(URI.create("/api/strings/" + created.id()))
                .body(created);
    }

    /** @param version of the state that was read before */
    @PutMapping("/{id}")
    StringView change(@PathVariable long id, @RequestParam int version, @RequestBody StringEntry entry) {
        return register.changeString(id, version, entry);
    }

    @PostMapping("/{id}/retirement")
    StringView retire(@PathVariable long id, @RequestBody RetiredOn retired) {
        return register.retireString(id, retired.on());
    }
}
