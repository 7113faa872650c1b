package org.ohmstead.programme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

/** Read back and validated by ical4j, an implementation of RFC 5545 that is not ours. */
class CalendarTextTest {

    private static final String AWKWARD =
            "Jars 7, 9; back\\slash \"quoted\"\nsecond line: 21 °C, 24.6 µΩ – 🔋 " + "ü".repeat(90);

    private static CalendarEvent event(String words) {
        return new CalendarEvent(
                "round-7@ohmstead",
                LocalDate.parse("2026-03-31"),
                words,
                words,
                "Sandrock Quay",
                3,
                Instant.parse("2026-03-01T08:00:00Z"),
                false);
    }

    private static String text(CalendarEvent... events) {
        return CalendarText.of("Due, dates", List.of(events), Instant.parse("2026-03-10T09:30:00Z"));
    }

    @Test
    void anotherImplementationFindsItValidAndReadsTheSame() throws Exception {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text(event(AWKWARD))));
        assertThat(calendar.validate(true).getEntries())
                .extracting(entry -> entry.getSeverity() + " " + entry.getContext() + " " + entry.getMessage())
                .isEmpty();
        VEvent read = (VEvent) calendar.getComponents(Component.VEVENT).get(0);
        assertThat(read.getProperty("SUMMARY").orElseThrow().getValue()).isEqualTo(AWKWARD);
        assertThat(read.getProperty("UID").orElseThrow().getValue()).isEqualTo("round-7@ohmstead");
        assertThat(read.getProperty("SEQUENCE").orElseThrow().getValue()).isEqualTo("3");
        assertThat(read.getProperty("DTSTART").orElseThrow().getValue()).isEqualTo("20260331");
        assertThat(read.getProperty("DTEND").orElseThrow().getValue()).isEqualTo("20260401");
    }

    /** RFC 5545, 3.1. */
    @Test
    void noLineIsLongerThan75OctetsAndEachEndsWithCrLf() {
        String text = text(event(AWKWARD));
        assertThat(text).endsWith("\r\n").doesNotContainPattern("[^\r]\n");
        for (String line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
            assertThat(line).doesNotContain("\uFFFD");
        }
    }

    @Test
    void aCancelledRoundSaysSo() {
        CalendarEvent stands = event("x");
        CalendarEvent cancelled =
                new CalendarEvent(stands.uid(), stands.on(), "x", "x", "y", 4, stands.changedAt(), true);
        assertThat(text(cancelled)).contains("STATUS:CANCELLED");
        assertThat(text(stands)).contains("STATUS:CONFIRMED");
    }
}
