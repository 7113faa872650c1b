package org.ohmstead.programme;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rounds.Standing;
import org.ohmstead.programme.rounds.Window;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.programme.rules.NextDates;
import org.ohmstead.programme.rules.Span;

/**
 * When each duty of a string may sensibly be done: from half of its time on, but no earlier than six months before it is
 * due, a capacity test two. What is waived is left out while the waiver lasts, what is monitored for good.
 */
final class RoundWindows {

    private static final int MONTHS_AHEAD = 6;
    private static final int MONTHS_AHEAD_OF_TEST = 2;

    private RoundWindows() {}

    /**
     * @param standing the days on which rounds that stand already do a duty, by its key
     */
    static List<Window> of(
            String site,
            String area,
            InService string,
            StringDuties duties,
            Map<String, NavigableSet<LocalDate>> standing) {
        List<Window> windows = new ArrayList<>();
        for (Duty duty : duties.duties()) {
            Span running = duty.running();
            if (running != null && duty.state() != DutyState.WAIVED) {
                windows.add(window(
                        site, area, string.stringId(), duty, running.from(), Objects.requireNonNull(duty.dueOn())));
            }
        }
        windows.add(survey(site, area, string, duties.asOf()));
        return windows.stream()
                .map(window -> unplanned(window, standing.get(window.key()), duties.asOf()))
                .filter(Objects::nonNull)
                .toList();
    }

    private static @Nullable Window unplanned(
            Window window, @Nullable NavigableSet<LocalDate> standing, LocalDate today) {
        return standing == null ? window : Standing.of(standing, today).left(window, today);
    }

    private static Window window(String site, String area, long stringId, Duty duty, LocalDate from, LocalDate due) {
        boolean test = duty.branch().evidence().contains(EvidenceKind.CAPACITY_TEST);
        Window.Repeat repeat =
                done -> window(site, area, stringId, duty, done, Objects.requireNonNull(duty.dueAfter(done)));
        String key = stringId + "/" + duty.requirement().code();
        LocalDate opens = opens(from, due, test ? MONTHS_AHEAD_OF_TEST : MONTHS_AHEAD);
        return new Window(site, area, key, opens, due, repeat);
    }

    private static LocalDate opens(LocalDate from, LocalDate due, int monthsAhead) {
        LocalDate half = from.plusDays(Math.max(0, ChronoUnit.DAYS.between(from, due)) / 2);
        LocalDate ahead = due.minusMonths(monthsAhead);
        LocalDate opens = half.isAfter(ahead) ? half : ahead;
        return opens.isAfter(due) ? due : opens;
    }

    /** The survey that interval, recheck or risk ask for; it is open at once when a judgement asks for it. */
    private static Window survey(String site, String area, InService string, LocalDate today) {
        NextDates.Survey survey = string.survey();
        LocalDate due = NextDates.next(survey, List.of(), string.demand()).dueOn();
        LocalDate from = survey.surveyedOn() == null ? survey.inServiceOn() : survey.surveyedOn();
        LocalDate byInterval = from.plusMonths(survey.intervalMonths());
        boolean asked = due.isBefore(byInterval);
        LocalDate opens = asked ? earlier(today, due) : opens(from, due, MONTHS_AHEAD);
        return new Window(site, area, key(string), opens, due, done -> surveyAfter(site, area, string, done));
    }

    private static Window surveyAfter(String site, String area, InService string, LocalDate done) {
        LocalDate due = done.plusMonths(string.surveyIntervalMonths());
        LocalDate opens = opens(done, due, MONTHS_AHEAD);
        return new Window(site, area, key(string), opens, due, again -> surveyAfter(site, area, string, again));
    }

    private static String key(InService string) {
        return string.stringId() + "/" + RoundTask.SURVEY;
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }
}
