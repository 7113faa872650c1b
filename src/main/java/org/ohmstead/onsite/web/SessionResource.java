package org.ohmstead.onsite.web;

import java.time.Clock;
import java.time.Instant;
import org.ohmstead.access.Access;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Who is signed in, for a page that may be days old: it needs a fresh form token before it can send anything. */
@RestController
class SessionResource {

    private final Access access;
    private final Clock clock;

    SessionResource(Access access, Clock clock) {
        this.access = access;
        this.clock = clock;
    }

    /**
     * @param header under which the token is sent back
     * @param now by the service's clock, against which a device can check its own
     */
    record Session(String username, String header, String token, Instant now) {}

    @GetMapping("/api/session")
    Session session(CsrfToken csrf) {
        return new Session(access.current().username(), csrf.getHeaderName(), csrf.getToken(), clock.instant());
    }
}
