package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.statistics.Quantiles;

/** Where a survey's values should lie, before it is known what they are. NaN where nothing is known. */
final class Levels {

    private static final double MILLI = 1_000;
    private static final double LINK_MICROOHMS = 25;

    private Levels() {}

    /** From the last survey, the baseline or the jar type, in that order, and else from the gates of its technology. */
    static double ohmic(SurveyUnderCheck survey) {
        Expectation expected = survey.expected();
        return Stream.of(Optional.ofNullable(expected.last()), Optional.ofNullable(expected.baseline()))
                .flatMap(Optional::stream)
                .filter(earlier -> earlier.kind() == survey.kind())
                .mapToDouble(earlier -> Quantiles.median(earlier.ohmic()))
                .filter(median -> median > 0)
                .findFirst()
                .orElseGet(() -> ohmicOfType(survey.expected().jar(), survey));
    }

    /** From the last survey, and else the order of magnitude that links have ("a few µΩ and under 100", FIST 3-6). */
    static double linkMicroohms(SurveyUnderCheck survey) {
        EarlierSurvey last = survey.expected().last();
        double median = last == null ? Double.NaN : medianLink(last.linkMicroohms());
        return median > 0 ? median : LINK_MICROOHMS;
    }

    static double medianLink(double[][] linkMicroohms) {
        return Quantiles.median(
                Arrays.stream(linkMicroohms).flatMapToDouble(Arrays::stream).toArray());
    }

    private static double ohmicOfType(ExpectedJar jar, SurveyUnderCheck survey) {
        if (jar.referenceKind() == survey.kind() && jar.referenceOhmic() > 0) {
            return jar.referenceOhmic();
        }
        Thresholds limits = survey.limits();
        return ofProduct(
                Math.sqrt(limits.gateLowOhmAmpereHours() * limits.gateHighOhmAmpereHours()), jar, survey.kind());
    }

    /**
     * The value at which ohmic value times capacity, per cell, is the given one. For conductance the reciprocal: good for a
     * gate's order of magnitude, and for nothing else.
     */
    static double ofProduct(double ohmAmpereHours, ExpectedJar jar, OhmicKind kind) {
        if (!jar.technology().isLeadAcid()) {
            return Double.NaN;
        }
        double milliohms = MILLI * ohmAmpereHours * jar.cellsPerJar() / jar.ratedAmpereHours();
        return kind == OhmicKind.CONDUCTANCE ? MILLI / milliohms : milliohms;
    }
}
