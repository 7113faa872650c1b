package org.ohmstead.programme.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.NewVisit.Item;
import org.ohmstead.programme.NewVisit.Outcome;
import org.ohmstead.programme.rules.EvidenceKind;

/** The checklist form of a site: a set of fields per string and point, named {@code <string>-<point>-<field>}. */
final class VisitForm {

    private final Map<String, String> typed;

    VisitForm(Map<String, String> typed) {
        this.typed = typed;
    }

    /** A string with its list. */
    public record Part(StringView string, List<EvidenceKind> points) {}

    /** By which it is known when it is sent twice; a form without a name is never taken for another. */
    UUID name() {
        String name = field("form");
        try {
            return name.isEmpty() ? UUID.randomUUID() : UUID.fromString(name);
        } catch (IllegalArgumentException e) {
            throw new Refused("The form has lost its name. Open it again.");
        }
    }

    /** The visit to that string; null when nothing of it was looked at. */
    @Nullable
    NewVisit visit(Part part) {
        List<Item> items = new ArrayList<>();
        for (EvidenceKind point : part.points()) {
            String key = part.string().id() + "-" + point + "-";
            String outcome = field(key + "outcome");
            if (!outcome.isEmpty()) {
                items.add(item(point, outcome, key));
            }
        }
        String note = field(part.string().id() + "-note");
        if (items.isEmpty() && !note.isEmpty()) {
            throw new Refused("String " + part.string().name() + " has a note, but no point of its list is marked.");
        }
        return items.isEmpty() ? null : new NewVisit(part.string().id(), day(), field("visitedBy"), note, items);
    }

    private Item item(EvidenceKind point, String outcome, String key) {
        if (!outcome.equals(Outcome.SOUND.name()) && !outcome.equals(Outcome.FOUND.name())) {
            throw new Refused(point.words() + ": mark it sound or found.");
        }
        return new Item(point, Outcome.valueOf(outcome), value(point, field(key + "value")), field(key + "note"));
    }

    private static @Nullable Double value(EvidenceKind point, String text) {
        if (text.isEmpty()) {
            return null;
        }
        try {
            return Double.valueOf(text.replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new Refused(point.words() + ": \"" + text + "\" is no number.");
        }
    }

    private LocalDate day() {
        try {
            return LocalDate.parse(field("visitedOn"));
        } catch (DateTimeParseException e) {
            throw new Refused("Give the day of the visit.");
        }
    }

    private String field(String name) {
        return typed.getOrDefault(name, "").strip();
    }
}
