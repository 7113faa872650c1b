package org.ohmstead.access;

import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Lets the first administrator in without any default password. */
@Component
public class FirstStart {

    private static final String FIRST_ADMINISTRATOR = "administrator";

    private final People people;
    private final Access access;

    FirstStart(People people, Access access) {
        this.people = people;
        this.access = access;
    }

    /** A one-time link's secret, as long as nobody can sign in; a fresh one at every start until it is used. */
    @Transactional
    public Optional<String> secret() {
        return access.asSystem(
                "first start",
                () -> people.nobodyCanSignIn()
                        ? Optional.of(people.newLink(administrator().id()))
                        : Optional.empty());
    }

    private PersonView administrator() {
        return people.find(FIRST_ADMINISTRATOR)
                .orElseGet(() -> people.open(
                        new NewPerson(FIRST_ADMINISTRATOR, "Administrator", Role.ADMINISTRATOR, Reach.EVERYWHERE)));
    }
}
