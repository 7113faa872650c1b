package org.ohmstead.demo;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.ohmstead.ledger.NewSurvey;

/** The last surveys of some quiet strings, taken in the past quarter: they come in as files, not with the history. */
final class FiledSurveys {

    private static final int PER_AREA = 2;
    private static final int LEAST_HISTORY = 3;

    private FiledSurveys() {}

    static List<DemoString> of(DemoEstate estate) {
        return IntStream.range(0, Places.AREAS.size())
                .boxed()
                .flatMap(area -> estate.strings().stream()
                        .filter(string -> Places.areaOf(string.site()) == area && isFiled(string, estate.today()))
                        .limit(PER_AREA))
                .toList();
    }

    private static boolean isFiled(DemoString string, LocalDate today) {
        List<LocalDate> days = SurveyDays.of(string, today);
        LocalDate thisQuarter = today.withDayOfMonth(1).minusMonths((today.getMonthValue() - 1) % 3);
        LocalDate last = days.get(days.size() - 1);
        return days.size() >= LEAST_HISTORY
                && last.isBefore(thisQuarter)
                && !last.isBefore(thisQuarter.minusMonths(3))
                && string.story().isUneventful();
    }

    static String fileName(DemoString string, LocalDate today) {
        return "survey-" + string.entry().site() + "-" + string.entry().name() + "-"
                + last(string, today).facts().takenOn() + ".csv";
    }

    static byte[] content(DemoString string, LocalDate today) {
        NewSurvey survey = last(string, today);
        LocalDateTime siteTime = survey.facts().takenAt().atZone(Places.ZONE).toLocalDateTime();
        return SheetText.of(survey, string.entry().site(), string.entry().name(), siteTime)
                .getBytes(StandardCharsets.UTF_8);
    }

    private static NewSurvey last(DemoString string, LocalDate today) {
        List<LocalDate> days = SurveyDays.of(string, today);
        LocalDate on = days.get(days.size() - 1);
        return new Simulation(string, today).survey(0, on, on, 1);
    }
}
