package org.ohmstead.access;

import java.util.function.Supplier;
import org.ohmstead.kernel.NotFound;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** The one place that decides who may do what, for pages, REST resources, files and jobs alike. */
@Component
public class Access {

    private final People people;

    Access(People people) {
        this.people = people;
    }

    /**
     * The person who asks.
     *
     * @throws AuthenticationCredentialsNotFoundException when nobody is signed in, or the account was closed meanwhile
     */
    public Person current() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        if (authentication instanceof PersonAuthentication known) {
            return known.person();
        }
        if (authentication == null || !(authentication.getPrincipal() instanceof SignedIn signedIn)) {
            throw new AuthenticationCredentialsNotFoundException("Nobody is signed in.");
        }
        return people.findEnabled(signedIn.getUsername())
                .orElseThrow(() -> new AuthenticationCredentialsNotFoundException("This account was closed."));
    }

    public Reach reach() {
        return current().reach();
    }

    /** @throws AccessDeniedException when the person may not */
    public void require(Permission permission) {
        Person person = current();
        if (!person.may(permission)) {
            throw new AccessDeniedException(person.role().word() + " accounts may not " + permission.words() + ".");
        }
    }

    /**
     * @throws AccessDeniedException when the person may not
     * @throws NotFound when the area is out of reach: what one may not see does not exist
     */
    public void require(Permission permission, long areaId) {
        require(permission);
        if (!reach().covers(areaId)) {
            throw new NotFound("There is no such thing, or it lies outside the areas in your reach.");
        }
    }

    /** Does the work as the service itself: scheduled jobs and first loading. The name goes into the audit trail. */
    public <T> T asSystem(String name, Supplier<T> work) {
        return as(Person.service(name), work);
    }

    /** Does the work as that person, whose own secret was shown; nothing but what they may do. */
    public <T> T as(Person person, Supplier<T> work) {
        SecurityContext before = SecurityContextHolder.getContext();
        SecurityContext own = SecurityContextHolder.createEmptyContext();
        own.setAuthentication(new PersonAuthentication(person));
        SecurityContextHolder.setContext(own);
        try {
            return work.get();
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }

    public void asSystem(String name, Runnable work) {
        asSystem(name, () -> {
            work.run();
            return true;
        });
    }
}
