package org.ohmstead.access;

import java.util.List;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;

/** A request made by a known person: through a personal token, or the service itself at work. */
public final class PersonAuthentication extends AbstractAuthenticationToken {

    private final transient Person person;

    public PersonAuthentication(Person person) {
        super(List.of(new SimpleGrantedAuthority("ROLE_" + person.role())));
        this.person = person;
        setAuthenticated(true);
    }

    Person person() {
        return person;
    }

    @Override
    public Object getCredentials() {
        return "";
    }

    @Override
    public Object getPrincipal() {
        return person;
    }

    @Override
    public String getName() {
        return person.username();
    }
}
