package org.ohmstead.fleet.web;

import java.net.URI;
import java.util.List;
import org.ohmstead.fleet.AreaView;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.csv.AreaEntry;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Areas for programs. */
@RestController
@RequestMapping("/api/areas")
class AreasResource {

    private final FleetRegister register;

    AreasResource(FleetRegister register) {
        this.register = register;
    }

    @GetMapping
    List<AreaView> all() {
        return register.areas();
    }

    @GetMapping("/{code}")
    AreaView one(@PathVariable String code) {
        return register.area(code);
    }

    @PostMapping
    ResponseEntity<AreaView> create(@RequestBody AreaEntry entry) {
        AreaView created = register.createArea(entry);
        return ResponseEntity.created(URI.create("/api/areas/" + created.code()))
                .body(created);
    }

    /** @param version of the state that was read before */
    @PutMapping("/{code}")
    AreaView change(@PathVariable String code, @RequestParam int version, @RequestBody AreaEntry entry) {
        return register.changeArea(register.area(code).id(), version, entry);
    }

    @PostMapping("/{code}/retirement")
    AreaView retire(@PathVariable String code, @RequestBody RetiredOn retired) {
        return register.retireArea(code, retired.on());
    }
}
