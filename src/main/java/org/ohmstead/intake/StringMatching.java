package org.ohmstead.intake;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.check.Place;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.repair.AssignTo;
import org.springframework.stereotype.Component;

/** The second stage: which string of the register the sheet is about. */
@Component
class StringMatching {

    private static final Place NAMES = new Place("site and string", 0, 0);

    private final FleetRegister register;

    StringMatching(FleetRegister register) {
        this.register = register;
    }

    boolean match(Passage passage) {
        SheetFacts facts = Objects.requireNonNull(passage.sheet()).facts();
        Long claimed = passage.handover().claimedStringId();
        Optional<AssignTo> assigned = AssignTo.lastOf(passage.steps());
        Optional<StringView> string = assigned.isPresent()
                ? assigned(passage, assigned.get())
                : isNamed(facts) ? named(passage, facts, claimed) : claimed(passage, claimed);
        string.ifPresent(found -> passage.matched(register.blueprint(found.id())));
        return string.isPresent();
    }

    /** A person has said which it is: neither sheet nor upload is asked any more. */
    private Optional<StringView> assigned(Passage passage, AssignTo assigned) {
        Optional<StringView> string = register.findString(assigned.site(), assigned.string());
        if (string.isEmpty()) {
            String name = assigned.site() + " / " + assigned.string();
            hold(passage, RemarkCode.STRING_UNKNOWN, name, "a string of the register");
        }
        return string;
    }

    private Optional<StringView> named(Passage passage, SheetFacts facts, @Nullable Long claimed) {
        String name = facts.site() + " / " + facts.string();
        Optional<StringView> string = register.findString(facts.site(), facts.string());
        if (string.isEmpty()) {
            hold(passage, RemarkCode.STRING_UNKNOWN, name, "a string of the register");
        } else if (claimed != null && claimed != string.get().id()) {
            hold(
                    passage,
                    RemarkCode.STRING_NOT_AS_CLAIMED,
                    name,
                    register.string(claimed).title());
        }
        return string;
    }

    private Optional<StringView> claimed(Passage passage, @Nullable Long claimed) {
        if (claimed == null) {
            hold(passage, RemarkCode.STRING_NOT_NAMED, "nothing", "site and string");
            return Optional.empty();
        }
        return Optional.of(register.string(claimed));
    }

    private static boolean isNamed(SheetFacts facts) {
        return !facts.site().isEmpty() || !facts.string().isEmpty();
    }

    private static void hold(Passage passage, RemarkCode code, String seen, String expected) {
        passage.remark(List.of(Remark.of(code, NAMES, seen, expected)));
    }
}
