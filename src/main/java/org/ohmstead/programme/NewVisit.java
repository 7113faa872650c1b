package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.rules.EvidenceKind;

/**
 * A visit to be recorded.
 *
 * @param visitedOn in the site's calendar
 * @param visitedBy who signs for it
 */
public record NewVisit(long stringId, LocalDate visitedOn, String visitedBy, String note, List<Item> items) {

    public enum Outcome {
        SOUND,
        FOUND
    }

    /**
     * One point that was looked at.
     *
     * @param value in the point's unit, where it has one
     * @param note what was found; needed when something was
     */
    public record Item(
            EvidenceKind item, Outcome outcome, @Nullable Double value, String note) {

        public Item {
            note = note == null ? "" : note.strip();
            if (!item.isCheck()) {
                throw new Refused("\"" + item.words() + "\" is no point of a checklist.");
            }
            if (outcome == Outcome.FOUND && note.isEmpty()) {
                throw new Refused("Say what was found: " + item.words() + ".");
            }
            if (value != null && !Double.isFinite(value)) {
                throw new Refused("The value of \"" + item.words() + "\" is no number.");
            }
        }

        public static Item sound(EvidenceKind item) {
            return new Item(item, Outcome.SOUND, null, "");
        }
    }

    public NewVisit {
        note = note == null ? "" : note.strip();
        visitedBy = visitedBy == null ? "" : visitedBy.strip();
        items = items == null ? List.of() : List.copyOf(items);
        if (visitedBy.isEmpty()) {
            throw new Refused("Say who made the visit: the name signs for what was looked at.");
        }
        if (items.stream().map(Item::item).distinct().count() != items.size()) {
            throw new Refused("A point of the list was given twice.");
        }
    }
}
