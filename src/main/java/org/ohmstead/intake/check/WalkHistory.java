package org.ohmstead.intake.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.forensics.Fingerprint;
import org.ohmstead.intake.forensics.Series;
import org.ohmstead.intake.forensics.WalkJudge;
import org.ohmstead.intake.forensics.WalkVerdict;
import org.ohmstead.kernel.OhmicKind;

/** Lays a survey beside the last ones of its string, and of its neighbours, as the walk's judge wants them. */
final class WalkHistory {

    private WalkHistory() {}

    /** Nothing where there is nothing to weigh: a short string, or its first survey. */
    static @Nullable WalkVerdict verdict(LaidOut survey, OhmicKind kind, Expectation expected, int fewestJars) {
        int jars = survey.positions();
        if (jars < fewestJars || expected.recent().isEmpty()) {
            return null;
        }
        Map<String, Fingerprint> others = new LinkedHashMap<>();
        expected.neighbours().forEach((name, surveys) -> others.put(name, fingerprint(jars, kind, surveys)));
        return WalkJudge.judge(fingerprint(jars, kind, expected.recent()), others, series(survey));
    }

    private static Fingerprint fingerprint(int jars, OhmicKind kind, List<EarlierSurvey> surveys) {
        List<List<Series>> history = new ArrayList<>();
        for (EarlierSurvey survey : surveys) {
            if (survey.ohmic().length == jars) {
                history.add(series(survey, kind));
            }
        }
        return Fingerprint.of(jars, history);
    }

    private static List<Series> series(LaidOut survey) {
        return series(survey.ohmic(), survey.volts(), survey.linkMicroohms());
    }

    /** Values of another kind are no measure of these. */
    private static List<Series> series(EarlierSurvey survey, OhmicKind kind) {
        double[] none = new double[survey.ohmic().length];
        Arrays.fill(none, Double.NaN);
        double[] volts = survey.volts().length == none.length ? survey.volts() : none;
        return series(survey.kind() == kind ? survey.ohmic() : none, volts, survey.linkMicroohms());
    }

    private static List<Series> series(double[] ohmic, double[] volts, double[][] linkMicroohms) {
        double[] links =
                Arrays.stream(linkMicroohms).mapToDouble(WalkHistory::parallel).toArray();
        return List.of(Series.ofOhmicValues(ohmic), Series.ofVolts(volts), Series.ofLinks(links));
    }

    /** Of the straps that were read; NaN when none was. */
    private static double parallel(double[] straps) {
        double siemens = Arrays.stream(straps)
                .filter(value -> value > 0)
                .map(value -> 1 / value)
                .sum();
        return siemens > 0 ? 1 / siemens : Double.NaN;
    }
}
