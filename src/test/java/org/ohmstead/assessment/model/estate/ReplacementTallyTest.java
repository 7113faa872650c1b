package org.ohmstead.assessment.model.estate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReplacementTallyTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 2, 10);
    private static final LocalDate FITTED = LocalDate.of(2016, 1, 1);

    private static JarChances chances(double beyond, double withinYear) {
        return new JarChances(TODAY, beyond, withinYear, null, null, null);
    }

    @Test
    void theFirstQuarterIsTheCurrentOne() {
        ReplacementForecast forecast = new ReplacementTally(TODAY, 8).forecast();
        assertThat(forecast.quarters())
                .extracting(CalendarQuarter::title)
                .startsWith("Q1 2026", "Q2 2026")
                .hasSize(8);
        assertThat(forecast.quarters().get(0).until()).isEqualTo(LocalDate.of(2026, 4, 1));
    }

    /** 1,000 jars past their limit with a chance of one half: 500 ± 20 alone, ± 130 with a fifth more or less together. */
    @Test
    void whatAllChancesMayBeWrongByTogetherWidensTheRange() {
        ReplacementTally tally = new ReplacementTally(TODAY, 1);
        for (int i = 0; i < 1000; i++) {
            tally.add("N", "A", FITTED, new JarChances(TODAY.minusDays(1), .5, .9, null, null, null), null);
        }
        Expected already = tally.forecast().total().already();
        double alone = 1.2816 * Math.sqrt(already.expected() * .5);
        assertThat(already.high() - already.expected())
                .isEqualTo(Math.hypot(alone, 1.2816 * .2 * already.expected()), within(3.0));
    }

    @Test
    void anEmptyEstateNeedsNothing() {
        ForecastLine total = new ReplacementTally(TODAY, 4).forecast().total();
        assertThat(total.jars()).isZero();
        assertThat(total.inAll()).isEqualTo(new Expected(0, 0, 0));
    }

    /** 100 jars that serve, a fifth of which fails evenly within the year: its quarters share 20 between them. */
    @Test
    void theQuartersShareTheYearsFailures() {
        ReplacementTally tally = new ReplacementTally(TODAY, 5);
        for (int i = 0; i < 100; i++) {
            tally.add("N", "A", FITTED, chances(0, .2), null);
        }
        ForecastLine line = tally.forecast().total();
        double left = 1;
        for (int q = 0; q < 4; q++) {
            long days = q == 0 ? 50 : q == 1 ? 91 : 92;
            double fails = left * (1 - Math.pow(.8, days / 365.25));
            assertThat(line.byQuarter().get(q).expected()).as("quarter " + q).isEqualTo(100 * fails, within(.01));
            left -= fails;
        }
        assertThat(line.already().expected()).isZero();
    }

    @Test
    void whatIsMoreLikelyThanNotPastItsLimitIsDueAlready() {
        ReplacementTally tally = new ReplacementTally(TODAY, 2);
        tally.add("N", "A", FITTED, chances(.9, .5), null);
        tally.add("N", "A", FITTED, chances(.3, .1), null);
        ForecastLine line = tally.forecast().total();
        assertThat(line.already().expected()).isEqualTo(.9, within(1e-9));
        assertThat(line.inAll().expected()).isLessThan(1.1);
    }

    @Test
    void areasAndTypesAddUpAndAJarOfWhichNothingIsKnownIsSaidToBe() {
        ReplacementTally tally = new ReplacementTally(TODAY, 3);
        tally.add("N", "A", FITTED, chances(0, .5), null);
        tally.add("N", "B", FITTED, chances(0, .5), null);
        tally.add("S", "B", FITTED, null, null);
        tally.add("S", "B", FITTED, null, new LifeLine(12, 3));
        ReplacementForecast forecast = tally.forecast();
        assertThat(forecast.total().jars()).isEqualTo(4);
        assertThat(forecast.total().unforeseen()).isEqualTo(1);
        assertThat(forecast.byJarType()).extracting(ForecastLine::jarType).containsExactly("A", "B");
        assertThat(forecast.byArea()).extracting(ForecastLine::area).containsExactly("N", "S");
        assertThat(forecast.byAreaAndJarType()).hasSize(3);
        double parts = forecast.byAreaAndJarType().stream()
                .mapToDouble(line -> line.inAll().expected())
                .sum();
        assertThat(parts).isEqualTo(forecast.total().inAll().expected(), within(1e-9));
        assertThat(forecast.byArea().get(1).inAll().expected()).isPositive();
    }

    /** Jars that fail by chance as said, each by itself: the range must hold at least four times in five. */
    @Test
    void theRangeHoldsFourTimesInFiveAndMore() {
        Random random = new Random(20260210);
        int holds = 0;
        int rounds = 400;
        for (int round = 0; round < rounds; round++) {
            ReplacementTally tally = new ReplacementTally(TODAY, 1);
            int fell = 0;
            for (int i = 0; i < 150; i++) {
                double chance = .3 * random.nextDouble();
                JarChances jar = chances(0, chance);
                tally.add("N", "A", FITTED, jar, null);
                fell += random.nextDouble() < new JarFuture(jar, FITTED, null).past(LocalDate.of(2026, 4, 1)) ? 1 : 0;
            }
            Expected said = tally.forecast().total().byQuarter().get(0);
            holds += said.low() <= fell && fell <= said.high() ? 1 : 0;
        }
        assertThat(holds / (double) rounds).isBetween(.8, .98);
    }

    /** Past already with .3, then a fifth within the year: on the condition that it serves, 1 − .8^(days/365.25). */
    @Test
    void aJarBelowOneHalfCountsAsServingAndItsQuartersRestOnThat() {
        ReplacementTally tally = new ReplacementTally(TODAY, 2);
        tally.add("N", "A", FITTED, chances(.3, .2), null);
        ForecastLine line = tally.forecast().total();
        double first = 1 - Math.pow(.8, 50 / 365.25);
        double both = 1 - Math.pow(.8, 141 / 365.25);
        assertThat(line.already().expected()).isZero();
        assertThat(line.byQuarter().get(0).expected()).isEqualTo(first, within(1e-9));
        assertThat(line.byQuarter().get(1).expected()).isEqualTo(both - first, within(1e-9));
        assertThat(line.inAll().expected()).isEqualTo(both, within(1e-9));
    }

    /** A jar that is past with .6 adds .6 already and, of the rest, what its year adds: no condition. */
    @Test
    void aJarDueAlreadyAddsItsQuartersWithoutACondition() {
        ReplacementTally tally = new ReplacementTally(TODAY, 1);
        tally.add("N", "A", FITTED, chances(.6, .2), null);
        ForecastLine line = tally.forecast().total();
        assertThat(line.already().expected()).isEqualTo(.6, within(1e-9));
        assertThat(line.byQuarter().get(0).expected()).isEqualTo(.4 * (1 - Math.pow(.8, 50 / 365.25)), within(1e-9));
    }

    @Test
    void oneHalfIsDueAlready() {
        ReplacementTally tally = new ReplacementTally(TODAY, 1);
        tally.add("N", "A", FITTED, chances(.5, .2), null);
        tally.add("N", "A", FITTED, chances(.4999, .2), null);
        assertThat(tally.forecast().total().already().expected()).isEqualTo(.5, within(1e-9));
    }

    /** Weibull with scale 20 and shape 2, fitted 3,693 days ago, 50 days to go. */
    @Test
    void aJarNeverReadCountsByTheLifeOfItsTypeFromItsAgeOn() {
        ReplacementTally tally = new ReplacementTally(TODAY, 1);
        tally.add("N", "A", FITTED, null, new LifeLine(20, 2));
        double age = 3693 / 365.25;
        double then = 3743 / 365.25;
        assertThat(tally.forecast().total().byQuarter().get(0).expected())
                .isEqualTo(1 - Math.exp(-(then * then - age * age) / 400), within(1e-9));
    }

    @Test
    void linesStandInOrderOfAreaThenJarType() {
        ReplacementTally tally = new ReplacementTally(TODAY, 1);
        for (String area : new String[] {"Tower", "Annex", "North", "Cellar", "Works", "Bridge", "Quay", "Mill"}) {
            for (String type : new String[] {"V-300", "A-200", "G-150", "C-900", "B-100"}) {
                tally.add(area, type, FITTED, chances(0, .1), null);
            }
        }
        ReplacementForecast forecast = tally.forecast();
        assertThat(forecast.byArea()).extracting(ForecastLine::area).isSorted().hasSize(8);
        assertThat(forecast.byJarType())
                .extracting(ForecastLine::jarType)
                .isSorted()
                .hasSize(5);
        assertThat(forecast.byAreaAndJarType())
                .extracting(line -> line.area() + "/" + line.jarType())
                .isSorted()
                .hasSize(40);
    }
}
