package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The number of strap readings per link against the register. */
final class Straps {

    private Straps() {}

    static Optional<Remark> differ(SurveyUnderCheck survey) {
        int[] straps = survey.expected().straps();
        int[] differing = linksWhere(survey, k -> count(survey, k) > 0 && count(survey, k) != straps[k]);
        if (differing.length == 0) {
            return Optional.empty();
        }
        int first = differing[0];
        return Optional.of(Remark.of(
                RemarkCode.STRAPS_DIFFER,
                survey.links(differing),
                Words.count(count(survey, first), "strap reading"),
                Words.count(straps[first], "strap")));
    }

    /** Terminal links are often left out with the closing reading; those in between are not. */
    static Optional<Remark> unmeasured(SurveyUnderCheck survey) {
        int[] unmeasured = linksWhere(
                survey,
                k -> count(survey, k) == 0 && k > 0 && k < survey.laidOut().positions());
        int between = survey.laidOut().positions() - 1;
        if (unmeasured.length == 0 || unmeasured.length == between) {
            return Optional.empty();
        }
        return Optional.of(Remark.of(
                RemarkCode.LINKS_UNMEASURED,
                survey.links(unmeasured),
                Words.count(between - unmeasured.length, "link") + " measured",
                Words.count(between, "link") + " between jars"));
    }

    private static int[] linksWhere(SurveyUnderCheck survey, IntPredicate condition) {
        return IntStream.rangeClosed(0, survey.laidOut().positions())
                .filter(condition)
                .toArray();
    }

    private static int count(SurveyUnderCheck survey, int ordinal) {
        return (int) Arrays.stream(survey.laidOut().linkMicroohms()[ordinal])
                .filter(value -> !Double.isNaN(value))
                .count();
    }
}
