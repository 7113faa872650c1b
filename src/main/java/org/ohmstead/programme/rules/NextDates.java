package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.NextDate.Governs;

/** The rule for a string's next date: the earliest of interval, demanded re-measure, programme and risk. */
public final class NextDates {

    private NextDates() {}

    /**
     * What the assessment and the register say.
     *
     * @param inServiceOn the interval counts from here while there is no survey
     * @param surveyedOn day of the last survey, null without any
     * @param intervalMonths the owner's own survey interval, 1 or more
     * @param recheckBy null when no judgement asks for another reading
     * @param riskOn null when the forecast gives no date
     */
    public record Survey(
            LocalDate inServiceOn,
            @Nullable LocalDate surveyedOn,
            int intervalMonths,
            @Nullable LocalDate recheckBy,
            @Nullable LocalDate riskOn) {}

    /**
     * A reading that work demands beside what the judgement asks.
     *
     * @param reason a sentence without its full stop
     */
    public record Demand(LocalDate by, String reason) {}

    /**
     * Months of the survey interval are counted to the day. Where the month that is reached has no such day its last day
     * is meant: six months after 31 August is 28 February, or 29 February in a leap year, and the day after that is late.
     * Each interval is counted from the survey itself, so a day lost to a short month does not carry over.
     *
     * <p>A duty that is waived does not govern while its waiver lasts, and is named with its due day. Between equal days
     * the duty governs, then the recheck, then the demanded reading, then the risk, then the interval.
     *
     * @param duties what the programme asks; empty without one
     * @param demand null when no work demands a reading
     */
    public static NextDate next(Survey survey, List<Duty> duties, @Nullable Demand demand) {
        if (survey.intervalMonths() < 1) {
            throw new IllegalArgumentException("An interval has at least one month, not " + survey.intervalMonths());
        }
        LocalDate byInterval = from(survey).plusMonths(survey.intervalMonths());
        Optional<Duty> first = first(duties);
        LocalDate byDuty = first.map(Duty::dueOn).orElse(null);
        LocalDate demandedBy = demand == null ? null : demand.by();
        LocalDate due = earliest(
                earliest(byInterval, demandedBy),
                earliestOrNull(byDuty, earliestOrNull(survey.recheckBy(), survey.riskOn())));
        Governs governs = governs(due, byDuty, survey, demandedBy);
        String reason = reason(governs, survey, byInterval, first.orElse(null), demand, due) + waived(duties);
        return new NextDate(due, governs, byInterval, survey.recheckBy(), byDuty, survey.riskOn(), demandedBy, reason);
    }

    /** The same while no work demands a reading. */
    public static NextDate next(Survey survey, List<Duty> duties) {
        return next(survey, duties, null);
    }

    private static LocalDate from(Survey survey) {
        return survey.surveyedOn() == null ? survey.inServiceOn() : survey.surveyedOn();
    }

    private static Optional<Duty> first(List<Duty> duties) {
        return duties.stream()
                .filter(duty -> duty.state().isOpen())
                .min(Comparator.comparing(duty -> Objects.requireNonNull(duty.dueOn())));
    }

    private static Governs governs(
            LocalDate due, @Nullable LocalDate byDuty, Survey survey, @Nullable LocalDate demandedBy) {
        if (due.equals(byDuty)) {
            return Governs.DUTY;
        }
        if (due.equals(survey.recheckBy())) {
            return Governs.RECHECK;
        }
        if (due.equals(demandedBy)) {
            return Governs.WORK;
        }
        return due.equals(survey.riskOn()) ? Governs.RISK : Governs.INTERVAL;
    }

    private static String reason(
            Governs governs,
            Survey survey,
            LocalDate byInterval,
            @Nullable Duty duty,
            @Nullable Demand demand,
            LocalDate due) {
        return switch (governs) {
            case DUTY -> Objects.requireNonNull(duty).requirement().activity() + ": " + lowerFirst(duty.reason());
            case RECHECK ->
                "A finding is to be read again by " + due + "; the interval would end on " + byInterval + ".";
            case WORK ->
                "The work list demands a reading by " + due + ": "
                        + Objects.requireNonNull(demand).reason() + "; the interval would end on " + byInterval + ".";
            case RISK ->
                "The forecast does not let the string wait longer than " + due + "; the interval would end on "
                        + byInterval + ".";
            case INTERVAL -> months(survey.intervalMonths()) + " after " + since(survey) + ".";
        };
    }

    private static String since(Survey survey) {
        return survey.surveyedOn() == null
                ? "it came into service on " + survey.inServiceOn() + " and has not been surveyed"
                : "its last survey on " + survey.surveyedOn();
    }

    private static String waived(List<Duty> duties) {
        List<Duty> waived =
                duties.stream().filter(duty -> duty.state() == DutyState.WAIVED).toList();
        return waived.isEmpty()
                ? ""
                : " Waived for now: " + waived.get(0).requirement().activity() + ", due by "
                        + waived.get(0).dueOn()
                        + (waived.size() == 1 ? "." : ", and " + (waived.size() - 1) + " more.");
    }

    private static @Nullable LocalDate earliestOrNull(@Nullable LocalDate a, @Nullable LocalDate b) {
        return a == null ? b : earliest(a, b);
    }

    private static LocalDate earliest(LocalDate a, @Nullable LocalDate b) {
        return b == null || a.isBefore(b) ? a : b;
    }

    private static String lowerFirst(String words) {
        return words.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + words.substring(1);
    }

    private static String months(int count) {
        return count == 1 ? "1 month" : count + " months";
    }
}
