package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.util.List;

/** Which branch of a requirement was in force when. */
final class Elected {

    private final Requirement requirement;
    private final List<Election> elections;

    /** @param elections oldest first */
    Elected(Requirement requirement, List<Election> elections) {
        this.requirement = requirement;
        this.elections = elections;
    }

    Branch on(LocalDate day) {
        Branch inForce = requirement.branches().get(0);
        for (Election election : elections) {
            if (!election.from().isAfter(day)) {
                inForce = requirement.branchOrFirst(election.branch());
            }
        }
        return inForce;
    }

    /** The earliest day that the branches in force from {@code from} to {@code to} allow. */
    LocalDate dueAfter(LocalDate from, LocalDate to) {
        LocalDate due = due(on(from), from, LocalDate.MAX);
        for (Election election : elections) {
            if (election.from().isAfter(from) && !election.from().isAfter(to)) {
                due = due(requirement.branchOrFirst(election.branch()), election.from(), due);
            }
        }
        return due;
    }

    private static LocalDate due(Branch branch, LocalDate from, LocalDate soFar) {
        Interval interval = branch.interval();
        if (interval == null) {
            return soFar;
        }
        LocalDate due = interval.dueAfter(from);
        return due.isBefore(soFar) ? due : soFar;
    }
}
