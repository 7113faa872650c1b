package org.ohmstead.fleet.web;

import java.net.URI;
import java.util.List;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Jar types for programs. */
@RestController
@RequestMapping("/api/jar-types")
class JarTypesResource {

    private final FleetRegister register;

    JarTypesResource(FleetRegister register) {
        this.register = register;
    }

    @GetMapping
    List<JarTypeView> all() {
        return register.jarTypes();
    }

    @GetMapping("/{code}")
    JarTypeView one(@PathVariable String code) {
        return register.jarType(code);
    }

    @PostMapping
    ResponseEntity<JarTypeView> create(@RequestBody JarTypeEntry entry) {
        JarTypeView created = register.createJarType(entry);
        return ResponseEntity.created(URI.create("/api/jar-types/" + created.code()))
                .body(created);
    }

    /** @param version of the state that was read before */
    @PutMapping("/{code}")
    JarTypeView change(@PathVariable String code, @RequestParam int version, @RequestBody JarTypeEntry entry) {
        return register.changeJarType(register.jarType(code).id(), version, entry);
    }

    @PostMapping("/{code}/retirement")
    JarTypeView retire(@PathVariable String code, @RequestBody RetiredOn retired) {
        return register.retireJarType(code, retired.on());
    }
}
