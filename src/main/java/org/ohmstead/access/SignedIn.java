package org.ohmstead.access;

import java.util.List;
import org.springframework.security.core.userdetails.User;

/** What a browser session remembers of a person: the name alone, so that changes of role and reach act at once. */
final class SignedIn extends User {

    SignedIn(String username, String passwordHash, boolean enabled) {
        super(username, passwordHash, enabled, true, true, true, List.of());
    }
}
