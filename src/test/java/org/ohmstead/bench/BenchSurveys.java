package org.ohmstead.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;

/** Surveys of ordinary strings: each jar read for ohmic value, volts and temperature, each link once. */
final class BenchSurveys {

    private static final LocalTime MORNING = LocalTime.of(10, 0);

    private BenchSurveys() {}

    /** The history of a string, oldest first, half a year between surveys. */
    static Stream<NewSurvey> history(StringView string, int surveys) {
        return IntStream.range(0, surveys).mapToObj(n -> next(string, n));
    }

    /** The survey after so many of that history. */
    static NewSurvey next(StringView string, int surveys) {
        return survey(string, BenchEstate.IN_SERVICE.plusMonths(6L * surveys + 6), surveys);
    }

    static NewSurvey survey(StringView string, LocalDate on, int number) {
        Random random = new Random(string.id() * 1_000 + number);
        int jars = string.positions();
        double[][] links = new double[jars + 1][];
        for (int ordinal = 0; ordinal <= jars; ordinal++) {
            double usual = ordinal == 0 || ordinal == jars ? 12 : ordinal == jars / 2 ? 134 : 24;
            links[ordinal] = values(1, usual, 0.02, 1, random);
        }
        Readings readings = new Readings(
                values(jars, 0.352 * (1 + 0.003 * number), 0.02, 3, random),
                values(jars, 2.23, 0.003, 3, random),
                values(jars, 22, 0.02, 1, random),
                new double[0],
                links);
        return NewSurvey.of(facts(string, on), readings);
    }

    private static SurveyFacts facts(StringView string, LocalDate on) {
        Instant takenAt = on.atTime(MORNING).atZone(BenchEstate.ZONE).toInstant();
        return new SurveyFacts(
                string.id(),
                takenAt,
                on,
                "Crew",
                "TS-1",
                on.plusYears(1),
                OhmicKind.IMPEDANCE,
                60,
                21.4,
                2.23 * string.positions(),
                0.3,
                1.1,
                0.1,
                10.02,
                9.98,
                true,
                "");
    }

    private static double[] values(int count, double usual, double spread, int decimals, Random random) {
        double scale = Math.pow(10, decimals);
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = Math.rint(usual * (1 + spread * random.nextGaussian()) * scale) / scale;
        }
        return values;
    }
}
