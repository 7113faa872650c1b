package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.springframework.stereotype.Component;

/** Writes the digest of whoever is signed in: overdue, due soon, and what other features add. */
@Component
class Digest {

    private static final int MOST_LINES = 60;

    private final Programme programme;
    private final FleetRegister register;
    private final List<DigestPart> parts;

    Digest(Programme programme, FleetRegister register, List<DigestPart> parts) {
        this.programme = programme;
        this.register = register;
        this.parts = parts;
    }

    /** Empty when there is nothing to say. */
    String text(LocalDate today, int daysAhead) {
        Map<Long, String> titles =
                register.strings().stream().collect(Collectors.toMap(StringView::id, StringView::title));
        List<NextDateView> dates = programme.nextDates();
        Function<NextDateView, String> line =
                date -> date.dueOn() + "  " + titles.get(date.stringId()) + ": " + date.reason();
        StringBuilder text = new StringBuilder();
        section(
                text,
                "Overdue",
                dates.stream()
                        .filter(date -> date.dueOn().isBefore(today))
                        .map(line)
                        .toList());
        section(
                text,
                "Due within " + daysAhead + " days",
                dates.stream()
                        .filter(date ->
                                !date.dueOn().isBefore(today) && !date.dueOn().isAfter(today.plusDays(daysAhead)))
                        .map(line)
                        .toList());
        parts.forEach(part -> section(text, part.title(), part.lines()));
        return text.toString();
    }

    private static void section(StringBuilder text, String title, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        List<String> shown = new ArrayList<>(lines.subList(0, Math.min(lines.size(), MOST_LINES)));
        if (lines.size() > MOST_LINES) {
            shown.add("and " + (lines.size() - MOST_LINES) + " more");
        }
        text.append(title).append(" (").append(lines.size()).append(")\n");
        shown.forEach(line -> text.append("  ").append(line).append('\n'));
        text.append('\n');
    }
}
