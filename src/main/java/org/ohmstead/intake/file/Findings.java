package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Flaw;

/** Collects findings, and stops listing them one by one when they become too many to read. */
public final class Findings {

    static final int LISTED = 100;

    private final List<Finding> listed = new ArrayList<>();
    private int unlisted;
    private int unreadable;
    private @Nullable Finding gravest;

    public void add(Finding finding) {
        if (finding.weight() == Weight.UNREADABLE ? ++unreadable <= LISTED : listed.size() < LISTED) {
            listed.add(finding);
            return;
        }
        unlisted++;
        if (gravest == null || finding.weight().compareTo(gravest.weight()) > 0) {
            gravest = finding;
        }
    }

    /** Whether nothing so far says that the file cannot be read. */
    public boolean isReadable() {
        return unreadable == 0;
    }

    public List<Finding> all() {
        Finding first = gravest;
        if (first == null) {
            return List.copyOf(listed);
        }
        List<Finding> all = new ArrayList<>(listed);
        Flaw flaw = first.flaw();
        String message = "The sheet has " + unlisted + " more findings, this one among them: " + flaw.message();
        all.add(new Finding(
                first.weight(), new Flaw(flaw.line(), flaw.column(), flaw.value(), message, flaw.remedy())));
        return all;
    }
}
