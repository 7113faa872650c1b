package org.ohmstead.intake.check;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** The survey's place in time. */
final class Times {

    private Times() {}

    static Optional<Remark> future(SurveyUnderCheck survey) {
        Duration allowed = Duration.ofMinutes(survey.limits().clockMinutes());
        return takenAt(survey).isAfter(survey.expected().now().plus(allowed))
                ? remark(
                        survey,
                        RemarkCode.TIME_FUTURE,
                        "today is " + day(survey, survey.expected().now()))
                : Optional.empty();
    }

    static Optional<Remark> beforeService(SurveyUnderCheck survey) {
        LocalDate inServiceOn = survey.expected().inServiceOn();
        return takenOn(survey).isBefore(inServiceOn)
                ? remark(survey, RemarkCode.TIME_BEFORE_SERVICE, "in service since " + inServiceOn)
                : Optional.empty();
    }

    static Optional<Remark> outOfOrder(SurveyUnderCheck survey) {
        return survey.expected().earlier().stream()
                .filter(earlier -> earlier.isAfter(takenAt(survey)))
                .max(Instant::compareTo)
                .flatMap(latest ->
                        remark(survey, RemarkCode.TIME_OUT_OF_ORDER, "latest survey of " + day(survey, latest)));
    }

    static Optional<Remark> sameDay(SurveyUnderCheck survey) {
        return survey.expected().earlier().stream()
                        .anyMatch(earlier -> day(survey, earlier).equals(takenOn(survey)))
                ? remark(survey, RemarkCode.TIME_SAME_DAY, "one survey a day")
                : Optional.empty();
    }

    static Optional<Remark> siteTimeDoubtful(SurveyUnderCheck survey) {
        return survey.takenAt().isPlain(survey.expected().zone())
                ? Optional.empty()
                : remark(survey, RemarkCode.SITE_TIME_DOUBTFUL, "read as " + takenAt(survey));
    }

    private static Optional<Remark> remark(SurveyUnderCheck survey, RemarkCode code, String expected) {
        String seen = survey.takenAt().written().toString().replace('T', ' ');
        return Optional.of(Remark.of(code, survey.fact("taken at"), seen, expected));
    }

    private static Instant takenAt(SurveyUnderCheck survey) {
        return survey.takenAt().instant(survey.expected().zone());
    }

    private static LocalDate takenOn(SurveyUnderCheck survey) {
        return survey.takenAt().date(survey.expected().zone());
    }

    private static LocalDate day(SurveyUnderCheck survey, Instant instant) {
        return LocalDate.ofInstant(instant, survey.expected().zone());
    }
}
