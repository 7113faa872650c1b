package org.ohmstead.onsite.web;

import org.ohmstead.onsite.Walk;
import org.ohmstead.onsite.Walks;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The walk of a string, for a device to take along. */
@RestController
class WalkResource {

    private final Walks walks;

    WalkResource(Walks walks) {
        this.walks = walks;
    }

    @GetMapping("/api/strings/{stringId}/walk")
    Walk walk(@PathVariable long stringId) {
        return walks.walk(stringId);
    }
}
