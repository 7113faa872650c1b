package org.ohmstead.fleet.web;

import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.kernel.NotFound;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** A string's jars for programs. */
@RestController
@RequestMapping("/api/strings/{stringId}/occupancies")
class JarsResource {

    private final FleetRegister register;
    private final JarsAndLinks jarsAndLinks;

    JarsResource(FleetRegister register, JarsAndLinks jarsAndLinks) {
        this.register = register;
        this.jarsAndLinks = jarsAndLinks;
    }

    record Removal(int position, LocalDate on, @Nullable String reason) {}

    record Filling(LocalDate from) {}

    record Filled(int jars) {}

    @GetMapping
    List<OccupancyView> all(@PathVariable long stringId) {
        return register.blueprint(stringId).occupancies();
    }

    /** Puts a jar at a free position. */
    @PostMapping
    ResponseEntity<OccupancyView> place(@PathVariable long stringId, @RequestBody JarBody jar) {
        return created(jarsAndLinks.placeJar(jar.in(register.string(stringId))));
    }

    /** The jar that sits there leaves on the newcomer's first day. */
    @PostMapping("/replacement")
    ResponseEntity<OccupancyView> replace(@PathVariable long stringId, @RequestBody JarBody newcomer) {
        return created(jarsAndLinks.replaceJar(newcomer.in(register.string(stringId))));
    }

    @PostMapping("/removal")
    OccupancyView remove(@PathVariable long stringId, @RequestBody Removal removal) {
        String reason = removal.reason() == null ? "" : removal.reason();
        return jarsAndLinks.removeJar(stringId, removal.position(), removal.on(), reason);
    }

    /** One jar without serial at every empty position. */
    @PostMapping("/filling")
    Filled fill(@PathVariable long stringId, @RequestBody Filling filling) {
        return new Filled(jarsAndLinks.fillEmptyPositions(stringId, filling.from()));
    }

    @PutMapping("/{id}")
    OccupancyView change(@PathVariable long stringId, @PathVariable long id, @RequestBody JarBody jar) {
        requireOf(stringId, id);
        return jarsAndLinks.changeOccupancy(id, jar.in(register.string(stringId)));
    }

    /** Undoes a placing or replacement: the jar that left on its first day sits there again. */
    @DeleteMapping("/{id}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void takeBack(@PathVariable long stringId, @PathVariable long id) {
        requireOf(stringId, id);
        jarsAndLinks.takeBack(id);
    }

    private void requireOf(long stringId, long id) {
        if (jarsAndLinks.occupancy(id).stringId() != stringId) {
            throw NotFound.of("occupancy", id);
        }
    }

    private static ResponseEntity<OccupancyView> created(OccupancyView jar) {
        return ResponseEntity.created(URI.create("/api/strings/" + jar.stringId() + "/occupancies/" + jar.id()))
                .body(jar);
    }
}
