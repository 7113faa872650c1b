package org.ohmstead.programme;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Writes calendar entries in the form of RFC 5545: CR LF, lines folded at 75 octets, text escaped. */
final class CalendarText {

    private static final int OCTETS_A_LINE = 75;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd", Locale.ROOT);
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final StringBuilder text = new StringBuilder();

    private CalendarText() {}

    static String of(String name, List<CalendarEvent> events, Instant now) {
        CalendarText calendar = new CalendarText();
        calendar.line("BEGIN:VCALENDAR");
        calendar.line("VERSION:2.0");
        calendar.line("PRODID:-//Ohmstead//Due dates//EN");
        calendar.line("CALSCALE:GREGORIAN");
        calendar.line("NAME:" + escaped(name));
        calendar.line("REFRESH-INTERVAL;VALUE=DURATION:PT12H");
        events.forEach(event -> calendar.event(event, now));
        calendar.line("END:VCALENDAR");
        return calendar.text.toString();
    }

    private void event(CalendarEvent event, Instant now) {
        line("BEGIN:VEVENT");
        line("UID:" + event.uid());
        line("DTSTAMP:" + MOMENT.format(now));
        line("LAST-MODIFIED:" + MOMENT.format(event.changedAt()));
        line("SEQUENCE:" + event.sequence());
        line("DTSTART;VALUE=DATE:" + DAY.format(event.on()));
        line("DTEND;VALUE=DATE:" + DAY.format(event.on().plusDays(1)));
        line("SUMMARY:" + escaped(event.summary()));
        line("DESCRIPTION:" + escaped(event.description()));
        line("LOCATION:" + escaped(event.location()));
        line("STATUS:" + (event.cancelled() ? "CANCELLED" : "CONFIRMED"));
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }

    static String escaped(String words) {
        return words.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\n")
                .replace("\n", "\\n")
                .replaceAll("\\p{Cntrl}", " ");
    }

    /** A blank begins each further part of a long line; no character is cut in two. */
    private void line(String line) {
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            int character = line.codePointAt(i);
            int size = Character.toString(character).getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > OCTETS_A_LINE) {
                text.append("\r\n ");
                octets = 1;
            }
            text.appendCodePoint(character);
            octets += size;
            i += Character.charCount(character);
        }
        text.append("\r\n");
    }
}
