package org.ohmstead.worklist.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.NewWork;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;

/** Reads what a person typed to raise work. */
record WorkForm(Map<String, String> typed) {

    NewWork work(long stringId) {
        Subject.Kind about = choice(Subject.Kind.class, "about", "what it is about");
        return new NewWork(
                stringId,
                choice(WorkKind.class, "kind", "what is to be done"),
                about,
                about == Subject.Kind.STRING ? null : unit(),
                choice(Urgency.class, "urgency", "how urgent it is"),
                day(),
                text("reason"));
    }

    private String text(String name) {
        return typed.getOrDefault(name, "").strip();
    }

    private <E extends Enum<E>> E choice(Class<E> of, String name, String what) {
        try {
            return Enum.valueOf(of, text(name));
        } catch (IllegalArgumentException e) {
            throw new Refused("Choose " + what + ".");
        }
    }

    private int unit() {
        try {
            return Integer.parseInt(text("unit"));
        } catch (NumberFormatException e) {
            throw new Refused("Give the number: of a jar its position, of a link the jar before it (0 for the positive"
                    + " terminal).");
        }
    }

    private @Nullable LocalDate day() {
        String by = text("by");
        try {
            return by.isEmpty() ? null : LocalDate.parse(by);
        } catch (DateTimeParseException e) {
            throw new Refused("\"" + by + "\" is no day; write it as 2026-11-30, or leave it out.");
        }
    }
}
