package org.ohmstead.demo;

import java.util.List;
import java.util.Set;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.PersonView;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's accounts, with the password that the sign-in page shows. */
@Component
@Profile("demo")
class DemoPeople {

    static final String PASSWORD = "quiet standby power";

    private final People people;

    DemoPeople(People people) {
        this.people = people;
    }

    /** @param crewArea the only area that the crew member sees */
    void open(long crewArea) {
        Reach own = new Reach(false, Set.of(crewArea));
        List.of(
                        new NewPerson("engineer", "Engineer", Role.ENGINEER, Reach.EVERYWHERE),
                        new NewPerson("crew", "Crew", Role.CREW, own),
                        new NewPerson("manager", "Manager", Role.MANAGER, Reach.EVERYWHERE),
                        new NewPerson("administrator", "Administrator", Role.ADMINISTRATOR, Reach.EVERYWHERE))
                .forEach(this::open);
    }

    /** An account that somebody chose a password for keeps it. */
    private void open(NewPerson person) {
        PersonView account = people.find(person.username()).orElseGet(() -> people.open(person));
        if (!account.hasPassword()) {
            people.choosePassword(account.id(), PASSWORD);
        }
    }
}
