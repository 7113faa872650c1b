package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Single link readings that cannot be, or that are far from the same link's last one. */
final class LinkGates {

    private LinkGates() {}

    static Optional<Remark> impossible(SurveyUnderCheck survey) {
        double[][] links = survey.laidOut().linkMicroohms();
        int[] ordinals = linksWhere(survey, k -> Arrays.stream(links[k]).anyMatch(value -> value < 0));
        if (ordinals.length == 0) {
            return Optional.empty();
        }
        double worst = Arrays.stream(links[ordinals[0]]).min().orElse(Double.NaN);
        return Optional.of(
                Remark.of(RemarkCode.LINK_IMPOSSIBLE, survey.links(ordinals), Figures.of(worst, "µΩ"), "above 0 µΩ"));
    }

    static Optional<Remark> jumped(SurveyUnderCheck survey) {
        EarlierSurvey last = survey.expected().last();
        if (last == null || UnitSlips.linkThousandfold(survey).isPresent()) {
            return Optional.empty();
        }
        double[][] links = survey.laidOut().linkMicroohms();
        double[][] before = last.linkMicroohms();
        int[] ordinals = linksWhere(survey, k -> k < before.length && isJump(links[k], before[k], survey.limits()));
        if (ordinals.length == 0) {
            return Optional.empty();
        }
        int first = ordinals[0];
        return Optional.of(Remark.of(
                RemarkCode.LINK_JUMPED,
                survey.links(ordinals),
                Figures.of(mean(links[first]), "µΩ"),
                "last time " + Figures.of(mean(before[first]), "µΩ")));
    }

    private static boolean isJump(double[] straps, double[] before, Thresholds limits) {
        return OhmicGates.isJump(mean(straps), mean(before), limits.linkJumpFactor());
    }

    private static double mean(double[] straps) {
        return Arrays.stream(straps)
                .filter(value -> !Double.isNaN(value))
                .average()
                .orElse(Double.NaN);
    }

    private static int[] linksWhere(SurveyUnderCheck survey, IntPredicate condition) {
        return IntStream.rangeClosed(0, survey.laidOut().positions())
                .filter(condition)
                .toArray();
    }
}
