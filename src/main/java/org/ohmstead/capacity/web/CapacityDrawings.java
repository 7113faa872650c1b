package org.ohmstead.capacity.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.ohmstead.capacity.CapacityTestView;
import org.ohmstead.capacity.model.DischargeCurve;
import org.ohmstead.capacity.model.JarFinding;
import org.ohmstead.capacity.model.JarResult;
import org.ohmstead.capacity.model.JarResults;
import org.ohmstead.capacity.model.Practice;
import org.ohmstead.chart.Course;
import org.ohmstead.chart.CourseDrawing;
import org.ohmstead.chart.Strip;
import org.ohmstead.chart.StripDrawing;
import org.ohmstead.chart.Trend;
import org.ohmstead.chart.TrendDrawing;
import org.ohmstead.kernel.Urgency;

/** The drawings of capacity tests; each stands beside its table. */
final class CapacityDrawings {

    private CapacityDrawings() {}

    static String trend(List<CapacityTestView> tests) {
        return TrendDrawing.of(
                "capacity",
                new Trend(
                        "Percent of rated capacity, test by test",
                        "%",
                        tests.stream().map(CapacityTestView::testedOn).toList(),
                        tests.stream()
                                .mapToDouble(test -> test.capacity().percent())
                                .toArray(),
                        List.of(
                                new Trend.Level("rated", 100, false),
                                new Trend.Level("tested yearly under this", Practice.YEARLY_UNDER, false),
                                new Trend.Level("replaced under this", JarResults.REPLACE_UNDER, true)),
                        List.of()));
    }

    static String jars(CapacityTestView test) {
        List<Strip.Mark> marks = test.jars().stream()
                .filter(jar -> jar.endVolts() != null)
                .map(CapacityDrawings::mark)
                .toList();
        return StripDrawing.of(
                "jars", new Strip("Volts of each jar when the test ended", "V", List.of(new Strip.Row("Jars", marks))));
    }

    /** The average jar of the string beside the lowest ones, so that all share one scale. */
    static String discharge(CapacityTestView test, DischargeCurve curve, int positions) {
        List<Course.Line> lines = new ArrayList<>();
        lines.add(new Course.Line(
                "string ÷ " + positions,
                DoubleStream.of(curve.stringVolts())
                        .map(volts -> volts / positions)
                        .toArray(),
                true,
                false));
        for (DischargeCurve.Jar jar : curve.lowest()) {
            boolean failed = test.failed().stream().anyMatch(one -> one.position() == jar.position());
            lines.add(new Course.Line("jar " + jar.position(), jar.volts(), false, failed));
        }
        return CourseDrawing.of(
                "discharge",
                new Course(
                        "Volts over the discharge",
                        "V a jar",
                        "minutes since current flowed",
                        curve.minutes(),
                        lines,
                        List.of(new Trend.Level("end voltage", test.jarLineVolts(), true))));
    }

    private static Strip.Mark mark(JarResult jar) {
        Double volts = jar.endVolts();
        return new Strip.Mark("jar " + jar.position(), volts == null ? Double.NaN : volts, asks(jar.finding()));
    }

    /** For the disc beside a finding. */
    static Urgency asks(JarFinding finding) {
        return switch (finding) {
            case SOUND, UNREAD -> Urgency.CLEAR;
            case UNDECIDED -> Urgency.RECHECK;
            case WEAK, REVERSED -> Urgency.ACT;
        };
    }
}
