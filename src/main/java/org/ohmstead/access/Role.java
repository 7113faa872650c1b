package org.ohmstead.access;

import static org.ohmstead.access.Permission.DO_WORK;
import static org.ohmstead.access.Permission.EDIT_REGISTER;
import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.OVERRULE;
import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;
import static org.ohmstead.access.Permission.SIGN_OFF;

import java.util.Set;

/** What kind of work a person does here, and so what they may do. */
public enum Role {
    CREW("Crew", Set.of(SEE_ESTATE, HAND_IN_SURVEYS, DO_WORK)),
    ENGINEER("Engineer", Set.of(SEE_ESTATE, HAND_IN_SURVEYS, DO_WORK, SETTLE_SURVEYS, EDIT_REGISTER, OVERRULE)),
    MANAGER("Manager", Set.of(SEE_ESTATE, SIGN_OFF)),
    ADMINISTRATOR("Administrator", Set.of(Permission.values()));

    private final String word;
    private final Set<Permission> permissions;

    Role(String word, Set<Permission> permissions) {
        this.word = word;
        this.permissions = permissions;
    }

    public String word() {
        return word;
    }

    public Set<Permission> permissions() {
        return permissions;
    }
}
