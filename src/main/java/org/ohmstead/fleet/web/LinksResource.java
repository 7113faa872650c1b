package org.ohmstead.fleet.web;

import java.net.URI;
import java.util.List;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.LinkView;
import org.ohmstead.fleet.RemakeView;
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

/** A string's links and their remakes for programs. */
@RestController
@RequestMapping("/api/strings/{stringId}")
class LinksResource {

    private final FleetRegister register;
    private final JarsAndLinks jarsAndLinks;

    LinksResource(FleetRegister register, JarsAndLinks jarsAndLinks) {
        this.register = register;
        this.jarsAndLinks = jarsAndLinks;
    }

    @GetMapping("/links")
    List<LinkView> links(@PathVariable long stringId) {
        return register.blueprint(stringId).links();
    }

    @PutMapping("/links/{ordinal}")
    LinkView change(@PathVariable long stringId, @PathVariable int ordinal, @RequestBody LinkBody link) {
        return jarsAndLinks.changeLink(link.in(register.string(stringId), ordinal));
    }

    @GetMapping("/remakes")
    List<RemakeView> remakes(@PathVariable long stringId) {
        return register.blueprint(stringId).remakes();
    }

    @PostMapping("/remakes")
    ResponseEntity<RemakeView> record(@PathVariable long stringId, @RequestBody RemakeBody remake) {
        RemakeView recorded = jarsAndLinks.recordRemake(remake.in(register.string(stringId)));
        return ResponseEntity.created(URI.create("/api/strings/" + stringId + "/remakes/" + recorded.id()))
                .body(recorded);
    }

    @PutMapping("/remakes/{id}")
    RemakeView changeRemake(@PathVariable long stringId, @PathVariable long id, @RequestBody RemakeBody remake) {
        requireOf(stringId, id);
        return jarsAndLinks.changeRemake(id, remake.in(register.string(stringId)));
    }

    @DeleteMapping("/remakes/{id}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void takeBack(@PathVariable long stringId, @PathVariable long id) {
        requireOf(stringId, id);
        jarsAndLinks.takeBackRemake(id);
    }

    private void requireOf(long stringId, long id) {
        if (jarsAndLinks.remake(id).stringId() != stringId) {
            throw NotFound.of("remake", id);
        }
    }
}
