package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds what an instrument reads off from the survey-wide errors of the whole estate. A string's own level soon takes up an
 * error that lasts, so two kinds of surveys tell: the first that a string was read with it after another one, which shows
 * the whole offset, and the first of each string since a day on which the instrument began to read otherwise, which shows
 * the step. What strings read with unchanged instruments show at the same time is taken off, since all may be expected
 * alike wrongly.
 */
public final class InstrumentFinder {

    /** A step must be so clear, as the square of its number of standard errors: there are many days to choose from. */
    private static final double STEP_NEEDS = 15;

    private static final double LEAST_STEP = 0.01;

    /** So many surveys with one instrument in a row, and what is left of its offset in the string's errors is small. */
    private static final int SETTLED_AFTER_ANOTHER = 6;

    private static final int SETTLED = 4;

    private static final int LEAST_SURVEYS = 4;
    private static final double UNDOES = 0.6;
    private static final int PAST_YEARS = 3;
    private static final int ENOUGH = 30;
    private static final double MEDIAN_OF_CHI_SQUARE = .4549;
    private static final double NORMAL_975 = 1.959964;

    /**
     * @param run how many surveys in a row the string was read with it, this one included
     * @param another whether it was read with another one before these
     */
    private record Read(SurveyError survey, int run, boolean another) {

        boolean afterAnother() {
            return another && run == 1;
        }

        boolean isSettled() {
            return run >= (another ? SETTLED_AFTER_ANOTHER : SETTLED);
        }

        LocalDate on() {
            return survey.on();
        }
    }

    private record Step(LocalDate since, List<SurveyError> evidence, SharedShift shift) {

        boolean isClear() {
            return strength() >= STEP_NEEDS && Math.abs(shift.mean()) >= LEAST_STEP;
        }

        double strength() {
            return shift.mean() * shift.mean() / shift.variance();
        }

        boolean undoes(Step other) {
            return -shift.mean() * Math.signum(other.shift.mean()) >= UNDOES * Math.abs(other.shift.mean());
        }
    }

    private final List<Read> all = new ArrayList<>();
    private final double factor;

    /** @param surveys of all strings, in any order */
    public InstrumentFinder(List<SurveyError> surveys) {
        Map<Long, Read> last = new HashMap<>();
        surveys.stream()
                .sorted(Comparator.comparing(SurveyError::on).thenComparing(SurveyError::surveyId))
                .forEach(survey -> {
                    Read read = read(survey, last.get(survey.stringId()));
                    last.put(survey.stringId(), read);
                    if (survey.tells()) {
                        all.add(read);
                    }
                });
        factor = factor();
    }

    /** By the middle of the squares, which errors that last cannot move. */
    private double factor() {
        double[] squares = unchanged(read -> true).stream()
                .mapToDouble(SharedShift::square)
                .sorted()
                .toArray();
        return squares.length < ENOUGH
                ? 1
                : Math.max(.25, Math.min(2, squares[squares.length / 2] / MEDIAN_OF_CHI_SQUARE));
    }

    private static Read read(SurveyError survey, @Nullable Read before) {
        if (before == null) {
            return new Read(survey, 1, false);
        }
        boolean same = before.survey().instrument().equals(survey.instrument());
        return same ? new Read(survey, before.run() + 1, before.another()) : new Read(survey, 1, true);
    }

    /** @return empty when nothing can be told: no string was read with another one before, and it never changed */
    public Optional<InstrumentOff> of(String instrument) {
        List<Read> own = all.stream()
                .filter(read -> read.survey().instrument().equals(instrument))
                .toList();
        List<Step> steps = steps(instrument, own);
        Step level = level(
                instrument,
                own,
                LocalDate.MIN,
                steps.isEmpty() ? LocalDate.MAX : steps.get(0).since());
        for (int i = 0; i < steps.size(); i++) {
            LocalDate until = i + 1 < steps.size() ? steps.get(i + 1).since() : LocalDate.MAX;
            level = after(
                    level, steps.get(i), level(instrument, own, steps.get(i).since(), until));
        }
        return Optional.ofNullable(level).map(InstrumentFinder::said);
    }

    /**
     * The clearest step, and the one that undid it or that it undid. No more: the strings' levels follow a step, and what
     * they say in the surveys after it is its echo.
     */
    private List<Step> steps(String instrument, List<Read> own) {
        List<Read> settled = own.stream().filter(Read::isSettled).toList();
        Step clearest = clearest(instrument, settled, step -> true);
        if (clearest == null) {
            return List.of();
        }
        Step opposite = clearest(instrument, settled, step -> step.undoes(clearest));
        return opposite == null
                ? List.of(clearest)
                : Stream.of(clearest, opposite)
                        .sorted(Comparator.comparing(Step::since))
                        .toList();
    }

    private @Nullable Step clearest(String instrument, List<Read> settled, Predicate<Step> which) {
        Step best = null;
        for (LocalDate day : new TreeSet<>(settled.stream().map(Read::on).toList())) {
            List<SurveyError> evidence =
                    firstOfEachString(settled, read -> !read.on().isBefore(day));
            Step step = isWorthALook(evidence) ? step(instrument, day, evidence) : null;
            if (step != null
                    && step.isClear()
                    && which.test(step)
                    && (best == null || step.strength() > best.strength())) {
                best = step;
            }
        }
        return best;
    }

    /** Before the rest of the estate is asked. */
    private boolean isWorthALook(List<SurveyError> evidence) {
        SharedShift alone = SharedShift.of(evidence).scaled(factor);
        return alone.mean() * alone.mean() > STEP_NEEDS / 2 * alone.variance();
    }

    private static List<SurveyError> firstOfEachString(List<Read> sorted, Predicate<Read> which) {
        Set<Long> seen = new HashSet<>();
        return sorted.stream()
                .filter(which)
                .map(Read::survey)
                .filter(survey -> seen.add(survey.stringId()))
                .toList();
    }

    /** What the strings tell that were read with another one before; null when there are too few. */
    private @Nullable Step level(String instrument, List<Read> own, LocalDate from, LocalDate until) {
        List<SurveyError> switched = own.stream()
                .filter(read -> read.afterAnother()
                        && !read.on().isBefore(from)
                        && read.on().isBefore(until))
                .map(Read::survey)
                .toList();
        return switched.isEmpty() ? null : step(instrument, switched.get(0).on(), switched);
    }

    private @Nullable Step step(String instrument, LocalDate since, List<SurveyError> evidence) {
        if (evidence.size() < LEAST_SURVEYS) {
            return null;
        }
        SharedShift alone = SharedShift.of(evidence).scaled(factor);
        LocalDate until = evidence.get(evidence.size() - 1).on();
        Set<Long> strings =
                new HashSet<>(evidence.stream().map(SurveyError::stringId).toList());
        List<SurveyError> past = unchanged(read -> read.on().isBefore(since)
                && read.on().isAfter(since.minusYears(PAST_YEARS))
                && strings.contains(read.survey().stringId()));
        List<SurveyError> others = unchanged(read -> !read.on().isBefore(since)
                && !read.on().isAfter(until)
                && !read.survey().instrument().equals(instrument));
        return new Step(since, evidence, alone.beyond(SharedShift.ofReference(past, others, factor)));
    }

    /** Surveys of strings that were read with the same one before. */
    private List<SurveyError> unchanged(Predicate<Read> which) {
        return all.stream()
                .filter(read -> read.run() > 1)
                .filter(which)
                .map(Read::survey)
                .toList();
    }

    /** The level before with the step on it, together with what is seen of the level since. */
    private static Step after(@Nullable Step before, Step step, @Nullable Step since) {
        SharedShift stepped = before == null ? step.shift() : before.shift().plus(step.shift());
        if (since == null) {
            return new Step(step.since(), step.evidence(), stepped);
        }
        List<SurveyError> both = Stream.concat(step.evidence().stream(), since.evidence().stream())
                .sorted(Comparator.comparing(SurveyError::on).thenComparing(SurveyError::surveyId))
                .toList();
        return new Step(step.since(), both, stepped.togetherWith(since.shift()));
    }

    private static InstrumentOff said(Step level) {
        double mean = level.shift().mean();
        double reach = NORMAL_975 * Math.sqrt(level.shift().variance());
        return new InstrumentOff(
                Math.expm1(mean),
                Math.expm1(mean - reach),
                Math.expm1(mean + reach),
                level.since(),
                level.evidence(),
                (int) level.evidence().stream().map(SurveyError::on).distinct().count());
    }
}
