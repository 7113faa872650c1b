package org.ohmstead.intake.repair;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.ohmstead.intake.check.EarlierSurvey;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.statistics.Quantiles;

/**
 * What each jar and link of a survey should read: the string's own pattern over its last surveys, brought to the level of
 * this one. NaN where nothing is known.
 *
 * @param ohmic one per position
 * @param linkMicroohms per link ordinal, of the mean of its straps
 */
public record Beside(double[] ohmic, double[] linkMicroohms) {

    /** @param recent the last surveys, whatever their kind */
    public static Beside of(LaidOut survey, OhmicKind kind, List<EarlierSurvey> recent) {
        double[] links = means(survey.linkMicroohms());
        List<double[]> ohmicBefore = recent.stream()
                .filter(earlier -> earlier.kind() == kind)
                .map(EarlierSurvey::ohmic)
                .toList();
        List<double[]> linksBefore =
                recent.stream().map(earlier -> means(earlier.linkMicroohms())).toList();
        return new Beside(pattern(survey.ohmic(), ohmicBefore), pattern(links, linksBefore));
    }

    /** How far the jars' ohmic values typically lie off, as a share; NaN where nothing is known. */
    public double misfit(LaidOut survey) {
        double[] off = new double[ohmic.length];
        Arrays.setAll(off, i -> Math.abs(survey.ohmic()[i] / ohmic[i] - 1));
        return Quantiles.median(off);
    }

    public static double[] means(double[][] linkMicroohms) {
        return Arrays.stream(linkMicroohms)
                .mapToDouble(straps -> Arrays.stream(straps)
                        .filter(value -> !Double.isNaN(value))
                        .average()
                        .orElse(Double.NaN))
                .toArray();
    }

    private static double[] pattern(double[] now, List<double[]> before) {
        List<double[]> shares = before.stream()
                .filter(values -> values.length == now.length)
                .map(Beside::shares)
                .toList();
        double level = Quantiles.median(now);
        Function<Integer, Double> share = index -> Quantiles.median(
                shares.stream().mapToDouble(values -> values[index]).toArray());
        double[] expected = new double[now.length];
        Arrays.setAll(expected, index -> level * share.apply(index));
        return expected;
    }

    private static double[] shares(double[] values) {
        double level = Quantiles.median(values);
        return Arrays.stream(values).map(value -> value / level).toArray();
    }
}
