package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurvivalTest {

    private static final double NAN = Double.NaN;

    /** A study of follow-up times in two groups. */
    private record Study(double[] times, boolean[] failed, Table table, String group) {

        static Study aml() {
            return new Study("aml.csv", "time", "status", "x");
        }

        static Study freireich() {
            return new Study("freireich_gehan.csv", "time", "cens", "treat");
        }

        Study(String file, String time, String status, String group) {
            this(Table.read(file).numbers(time), failed(file, status), Table.read(file), group);
        }

        private static boolean[] failed(String file, String status) {
            double[] marks = Table.read(file).numbers(status);
            boolean[] failed = new boolean[marks.length];
            for (int i = 0; i < marks.length; i++) {
                failed[i] = marks[i] == 1;
            }
            return failed;
        }

        KaplanMeier curve(String name) {
            double[] own = times.clone();
            String[] groups = table.words(group);
            for (int i = 0; i < own.length; i++) {
                own[i] = groups[i].equals(name) ? own[i] : NAN;
            }
            return KaplanMeier.of(own, failed);
        }

        LogRank logRank() {
            return LogRank.of(times, failed, table.codes(group));
        }
    }

    @ParameterizedTest
    @CsvSource({"aml", "freireich"})
    void productLimitCurvesAgree(String name) {
        Study study = name.equals("aml") ? Study.aml() : Study.freireich();
        Map<String, Double> computed = new HashMap<>();
        for (String group : study.table().codesOf(study.group()).keySet()) {
            KaplanMeier curve = study.curve(group);
            for (int i = 0; i < curve.times().length; i++) {
                String place = "[" + study.group() + "=" + group + ":" + (int) curve.times()[i] + "]";
                computed.put("S" + place, curve.survival()[i]);
                computed.put("se_greenwood" + place, curve.standardErrors()[i]);
            }
        }
        Reference.set("KM_" + name).agreesWith(computed, 1e-10);
    }

    @ParameterizedTest
    @CsvSource({"aml", "freireich"})
    void logRankStatisticsAgree(String name) {
        Study study = name.equals("aml") ? Study.aml() : Study.freireich();
        LogRank test = study.logRank();
        Reference.set("logrank_" + name).agreesWith(Map.of("chisq", test.chiSquare()), 1e-10);
        assertThat(test.degreesOfFreedom()).isEqualTo(1);
    }

    /** A chi-square of 3.84146 at one degree of freedom has the chance 0.05; R gives p = 0.0653 for aml. */
    @Test
    void theLogRankChanceIsTheUpperTail() {
        assertThat(Study.aml().logRank().pValue()).isEqualTo(0.0653, within(5e-5));
    }

    /** By the formulas at S = 10/11, se = 0.0866784 and z = 1.959964, worked by hand. */
    @Test
    void intervalsComeOnThePlainAndTheLogScale() {
        KaplanMeier curve = Study.aml().curve("Maintained");
        assertThat(curve.plainInterval(10, 0.95).lower()).isEqualTo(0.909091 - 1.959964 * 0.0866784, within(1e-5));
        assertThat(curve.plainInterval(10, 0.95).upper()).isEqualTo(1);
        assertThat(curve.logInterval(10, 0.95).lower())
                .isEqualTo(0.909091 * Math.exp(-1.959964 * 0.0866784 / 0.909091), within(1e-5));
        assertThat(curve.logInterval(10, 0.95).upper()).isEqualTo(1);
        assertThat(curve.plainInterval(100, 0.95).lower()).isZero();
        assertThat(curve.plainInterval(100, 0.95).upper())
                .isEqualTo(0.184090909 + 1.959964 * 0.153492746, within(1e-6));
        assertThat(curve.logInterval(100, 0.8).upper())
                .isEqualTo(0.184090909 * Math.exp(1.281552 * 0.153492746 / 0.184090909), within(1e-6));
    }

    /**
     * R's {@code survfit(..., conf.type = "log-log")} prints 0.508 to 0.987 at 9 weeks and 0.0117 to 0.525 at 48 (from
     * memory, re-derived from the data).
     */
    @Test
    void theLogLogIntervalStaysBetweenNothingAndAll() {
        KaplanMeier curve = Study.aml().curve("Maintained");
        assertThat(curve.logLogInterval(9, 0.95).lower()).isEqualTo(0.5080802, within(1e-6));
        assertThat(curve.logLogInterval(9, 0.95).upper()).isEqualTo(0.9866738, within(1e-6));
        assertThat(curve.logLogInterval(48, 0.95).lower()).isEqualTo(0.0117385, within(1e-6));
        assertThat(curve.logLogInterval(48, 0.95).upper()).isEqualTo(0.5250148, within(1e-6));
        assertThat(curve.logLogInterval(3, 0.8)).isEqualTo(new Interval(1, 1));
    }

    @Test
    void rowsThatStandForSeveralUnitsCountAsManyTimes() {
        KaplanMeier each =
                KaplanMeier.of(new double[] {1, 1, 2, 2, 2, 3}, new boolean[] {true, true, false, false, true, false});
        KaplanMeier counted = KaplanMeier.of(
                new double[] {1, 2, 2, 3}, new boolean[] {true, false, true, false}, new double[] {2, 2, 1, 1});
        assertThat(counted.survival()).isEqualTo(each.survival());
        assertThat(counted.standardErrors()).isEqualTo(each.standardErrors());
    }

    @Test
    void theCurveIsAStepFunction() {
        KaplanMeier curve = Study.aml().curve("Maintained");
        assertThat(curve.at(8.99)).isEqualTo(1);
        assertThat(curve.at(9)).isEqualTo(10 / 11.0, within(1e-12));
        assertThat(curve.at(12.9)).isEqualTo(10 / 11.0, within(1e-12));
        assertThat(curve.plainInterval(3, 0.8)).isEqualTo(new Interval(1, 1));
        assertThat(curve.logInterval(3, 0.8)).isEqualTo(new Interval(1, 1));
    }

    /** R prints the medians 31 and 23 weeks for aml. */
    @Test
    void mediansAreReadOffTheCurve() {
        assertThat(Study.aml().curve("Maintained").quantile(0.5)).isEqualTo(31);
        assertThat(Study.aml().curve("Nonmaintained").quantile(0.5)).isEqualTo(23);
        assertThat(Study.aml().curve("Maintained").quantile(0.9)).isNaN();
        assertThat(KaplanMeier.of(new double[] {1, 2, 3, 4}, new boolean[] {true, true, true, true})
                        .quantile(0.5))
                .isEqualTo(2);
    }

    @Test
    void withoutFailuresAllSurvive() {
        KaplanMeier curve = KaplanMeier.of(new double[] {1, 2}, new boolean[2]);
        assertThat(curve.times()).isEmpty();
        assertThat(curve.at(5)).isEqualTo(1);
        assertThat(LogRank.of(new double[] {1, 2}, new boolean[2], new int[] {0, 1}))
                .isEqualTo(new LogRank(0, 1, 1));
        assertThat(LogRank.of(new double[0], new boolean[0], new int[0])).isEqualTo(new LogRank(0, 0, 1));
        assertThat(LogRank.of(new double[] {1}, new boolean[] {true}, new int[1]))
                .isEqualTo(new LogRank(0, 0, 1));
    }

    /** Three groups of which two are copies of each other: the statistic must not depend on which is left out. */
    @Test
    void threeGroupsCompareTheSameInAnyOrder() {
        double[] times = {1, 3, 5, 7, 2, 3, 8, 9, 4, 6, 10, 11};
        boolean[] failed = {true, true, false, true, true, true, true, false, true, true, true, true};
        int[] groups = {0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2};
        int[] turned = Arrays.stream(groups).map(g -> (g + 1) % 3).toArray();
        LogRank first = LogRank.of(times, failed, groups);
        assertThat(first.degreesOfFreedom()).isEqualTo(2);
        assertThat(LogRank.of(times, failed, turned).chiSquare()).isEqualTo(first.chiSquare(), within(1e-10));
        assertThat(first.chiSquare()).isPositive();
    }
}
