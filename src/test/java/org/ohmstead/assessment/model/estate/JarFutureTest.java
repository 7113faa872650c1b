package org.ohmstead.assessment.model.estate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JarFutureTest {

    private static final LocalDate SURVEYED = LocalDate.of(2025, 1, 1);
    private static final LocalDate FITTED = LocalDate.of(2015, 1, 1);
    private static final LocalDate IN_A_YEAR = SURVEYED.plusDays(365);

    private static JarChances chances(double beyond, double withinYear, @Nullable Integer... yearsAhead) {
        LocalDate[] days = new LocalDate[3];
        for (int i = 0; i < yearsAhead.length; i++) {
            Integer years = yearsAhead[i];
            days[i] = years == null ? null : SURVEYED.plusYears(years);
        }
        return new JarChances(SURVEYED, beyond, withinYear, days[0], days[1], days[2]);
    }

    /** Past already with .2, then .5 of those that serve within the year: 1 − .8 · .5 = .6. */
    @Test
    void theFirstYearIsWhatTheForecastSays() {
        JarFuture jar = new JarFuture(chances(.2, .5), FITTED, null);
        assertThat(jar.past(SURVEYED)).isEqualTo(.2, within(1e-9));
        assertThat(jar.past(SURVEYED.minusYears(3))).isEqualTo(.2, within(1e-9));
        assertThat(jar.past(IN_A_YEAR)).isEqualTo(.6, within(2e-3));
    }

    /** The days are said with 1.6 times the variance: for counting, 10 and 90 % lie 1/√1.6 as far from the middle. */
    @Test
    void thenItsDaysOfCrossingAreReachedWithoutTheWidening() {
        JarFuture jar = new JarFuture(chances(0, .02, 2, 4, 9), FITTED, null);
        double nearer = 1 / Math.sqrt(1.6);
        assertThat(jar.past(SURVEYED.plusDays(Math.round((4 - 2 * nearer) * 365.25))))
                .isEqualTo(.1, within(1e-3));
        assertThat(jar.past(SURVEYED.plusYears(4))).isEqualTo(.5, within(1e-9));
        assertThat(jar.past(SURVEYED.plusDays(Math.round((4 + 5 * nearer) * 365.25))))
                .isEqualTo(.9, within(1e-3));
        // an even rate between: half way from 10 to 50 % the share left is the square root of .9 · .5
        assertThat(jar.past(SURVEYED.plusDays(Math.round((4 - nearer) * 365.25))))
                .isEqualTo(1 - Math.sqrt(.9 * .5), within(1e-3));
    }

    /** Weibull with scale 20 and shape 2: from age 11 to age 13 fails 1 − exp(−(13² − 11²)/20²). */
    @Test
    void whereItSaysNoDayTheLifeOfItsTypeGoesOn() {
        JarFuture jar = new JarFuture(chances(0, 0), FITTED, new LifeLine(20, 2));
        double expected = 1 - Math.exp(-(13.0 * 13 - 11 * 11) / 400);
        assertThat(jar.past(SURVEYED.plusYears(3))).isEqualTo(expected, within(2e-3));
    }

    @Test
    void withoutEitherNoMoreThanOneInTenFailsInFifteenYears() {
        JarFuture jar = new JarFuture(chances(0, .001), FITTED, null);
        assertThat(jar.past(SURVEYED.plusYears(3))).isBetween(.001, .02);
        assertThat(jar.past(SURVEYED.plusDays(5479))).isEqualTo(.1, within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, .03, .3, .999999, 1})
    void theChanceNeverFallsAndStaysAChance(double beyond) {
        for (JarChances chances : new JarChances[] {
            chances(beyond, .4, 0, 0, 1), chances(beyond, 0), chances(beyond, 1, 1, 2), chances(beyond, .1, 3)
        }) {
            for (LifeLine life : new LifeLine[] {null, new LifeLine(12, 3)}) {
                JarFuture jar = new JarFuture(chances, FITTED, life);
                double before = 0;
                for (int month = 0; month < 240; month++) {
                    double past = jar.past(SURVEYED.plusMonths(month));
                    assertThat(past).isBetween(before - 1e-12, 1.0);
                    before = past;
                }
            }
        }
    }

    private static LocalDate after(double years) {
        return SURVEYED.plusDays(Math.round(years * 365.25));
    }

    private static double hazard(double chance) {
        return -Math.log(1 - chance);
    }

    /** Where the middle lies beyond fifteen years the narrower law reaches 10 % 1.15 times as far ahead, and goes on evenly. */
    @Test
    void aJarWithoutAMiddleGoesOnAtTheRateOfItsFirstTenth() {
        JarFuture jar = new JarFuture(chances(0, .02, 2), FITTED, null);
        assertThat(jar.past(after(2 * 1.15))).isCloseTo(.1, within(1e-3));
        double rate = (hazard(.1) - hazard(.02)) / (2 * 1.15 - 1);
        assertThat(jar.past(after(5))).isCloseTo(1 - Math.exp(-hazard(.1) - rate * (5 - 2.3)), within(1e-3));
        assertThat(jar.past(after(12))).isCloseTo(1 - Math.exp(-hazard(.1) - rate * (12 - 2.3)), within(1e-3));
    }

    @Test
    void aDayThatContradictsTheOneBeforeIsLeftOut() {
        JarFuture jar = new JarFuture(chances(0, .02, 2, 2, 9), FITTED, null);
        double late = 9 - (1 - 1 / Math.sqrt(1.6)) * 7;
        double halfWay = (hazard(.1) + hazard(.9)) / 2;
        assertThat(jar.past(after(2))).isCloseTo(.1, within(1e-3));
        assertThat(jar.past(after((2 + late) / 2))).isCloseTo(1 - Math.exp(-halfWay), within(1e-3));
    }

    /** 10 % by the second year, but .3 within the first: the first year's word stands, the day contradicts it. */
    @Test
    void aDayWithALesserChanceThanTheFirstYearsIsLeftOut() {
        JarFuture jar = new JarFuture(chances(0, .3, 2, 4, 9), FITTED, null);
        double halfWay = (hazard(.3) + hazard(.5)) / 2;
        assertThat(jar.past(after(2.5))).isCloseTo(1 - Math.exp(-halfWay), within(1e-3));
    }
}
