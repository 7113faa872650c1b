package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What the forecast makes of histories that any engineer would read at a glance. */
class ForecastBehaviourTest {
    private static final LocalDate DAY = LocalDate.of(2016, 5, 4);

    private static StringOf quietString(int surveys) {
        StringOf string = StringOf.jars(24);
        for (int s = 0; s < surveys; s++) {
            string.surveyedOn(DAY.plusMonths(6L * s));
        }
        return string;
    }

    @Test
    void aQuietStringRaisesNothingAndWaitsLong() {
        StringForecast forecast = quietString(8).forecast();
        assertThat(forecast.jars()).noneMatch(UnitForecast::flagged).allMatch(jar -> jar.probability() < .05);
        assertThat(forecast.links()).noneMatch(UnitForecast::flagged);
        assertThat(forecast.next().on()).isAfter(forecast.asOf().plusMonths(3));
        assertThat(Math.abs(forecast.commonRise())).isLessThan(.05);
    }

    @Test
    void aJarThatRunsAwayIsFlaggedAndItsDateDrawsNear() {
        StringOf string = StringOf.jars(24);
        for (int s = 0; s < 8; s++) {
            double rise = Math.exp(.006 * s * s);
            string.surveyedOn(DAY.plusMonths(6L * s), (ohmic, volts, links) -> ohmic[3] *= rise);
        }
        StringForecast forecast = string.forecast();
        UnitForecast jar = forecast.jars().get(3);
        assertThat(jar.flagged()).isTrue();
        assertThat(jar.probability()).isGreaterThan(.5);
        assertThat(jar.goingWeight()).isGreaterThan(.9);
        assertThat(jar.median()).isNotNull().isBefore(forecast.asOf().plusYears(1));
        assertThat(jar.early()).isBeforeOrEqualTo(jar.median());
        assertThat(jar.riseOverNew()).isBetween(.2, .5);
        assertThat(forecast.jars().stream().filter(UnitForecast::flagged).count())
                .isEqualTo(1);
    }

    @Test
    void oneWildReadingIsSetAsideAndForgottenWhenTheNextIsSound() {
        StringOf string = quietString(5);
        string.surveyedOn(DAY.plusMonths(30), (ohmic, volts, links) -> ohmic[5] *= 1.6);
        UnitForecast pending = string.forecast().jars().get(5);
        assertThat(pending.pendingChange()).isBetween(.4, .55);
        assertThat(pending.flagged()).isFalse();
        UnitForecast sound =
                string.surveyedOn(DAY.plusMonths(36)).forecast().jars().get(5);
        assertThat(sound.pendingChange()).isNaN();
        assertThat(sound.stepped()).isFalse();
        assertThat(sound.probability()).isLessThan(.05);
    }

    @Test
    void aStepThatTwoSurveysSeeIsReal() {
        StringOf string = quietString(5);
        for (int s = 5; s < 7; s++) {
            string.surveyedOn(DAY.plusMonths(6L * s), (ohmic, volts, links) -> ohmic[5] *= 1.6);
        }
        UnitForecast jar = string.forecast().jars().get(5);
        assertThat(jar.stepped()).isTrue();
        assertThat(jar.flagged()).isTrue();
        assertThat(jar.riseOverNew()).isBetween(.4, .8);
    }

    @Test
    void aRecordedNewJarStartsAnewAndAnUnrecordedOneIsSuspected() {
        StringOf recorded = StringOf.jars(24).withJarReplacedOn(4, DAY.plusMonths(45));
        StringOf quiet = StringOf.jars(24);
        for (StringOf string : new StringOf[] {recorded, quiet}) {
            for (int s = 0; s < 10; s++) {
                double rise = s < 8 ? Math.exp(.05 * s) : 1;
                string.surveyedOn(DAY.plusMonths(6L * s), (ohmic, volts, links) -> ohmic[3] *= rise);
            }
        }
        UnitForecast known = recorded.forecast().jars().get(3);
        assertThat(known.readings()).isEqualTo(2);
        assertThat(known.renewedAround()).isNull();
        assertThat(known.doubts()).isEmpty();
        UnitForecast suspected = quiet.forecast().jars().get(3);
        assertThat(suspected.doubts()).contains(DataDoubt.RENEWED_WITHOUT_RECORD);
        assertThat(suspected.renewedAround()).isBetween(DAY.plusMonths(42), DAY.plusMonths(54));
        assertThat(suspected.flagged()).isFalse();
    }

    @Test
    void voltsThatFallAreAShortAndNoNewJar() {
        StringOf string = quietString(6);
        for (int s = 6; s < 8; s++) {
            string.surveyedOn(DAY.plusMonths(6L * s), (ohmic, volts, links) -> {
                volts[9] -= .12;
                ohmic[9] *= .85;
            });
        }
        UnitForecast jar = string.forecast().jars().get(9);
        assertThat(jar.shortWeight()).isGreaterThan(.9);
        assertThat(jar.flagged()).isTrue();
        assertThat(jar.renewedAround()).isNull();
    }

    @Test
    void aStringThatRisesTogetherIsCommonRiseAndNotOfOneJar() {
        StringOf string = StringOf.jars(24);
        for (int s = 0; s < 12; s++) {
            double rise = Math.exp(.02 * s);
            string.surveyedOn(
                    DAY.plusMonths(6L * s), (ohmic, volts, links) -> Arrays.setAll(ohmic, i -> ohmic[i] * rise));
        }
        StringForecast forecast = string.forecast();
        assertThat(forecast.commonRise()).isBetween(.15, .35);
        assertThat(forecast.commonRatePerYear()).isBetween(.02, .06);
        assertThat(forecast.jars()).allMatch(jar -> jar.goingWeight() < .3);
    }

    @Test
    void aLinkThatLoosensSlowlyIsFlagged() {
        StringOf string = StringOf.jars(24);
        for (int s = 0; s < 8; s++) {
            double rise = 1 + .05 * s;
            string.surveyedOn(DAY.plusMonths(6L * s), (ohmic, volts, links) -> links[7][0] *= rise);
        }
        StringForecast forecast = string.forecast();
        assertThat(forecast.links().get(7).flagged()).isTrue();
        assertThat(forecast.links().stream().filter(UnitForecast::flagged).count())
                .isEqualTo(1);
    }

    @Test
    void aFirstReadingOfALinkFarOffIsForgottenWhenTwoLikeItsKindFollow() {
        StringOf string = StringOf.jars(24);
        string.surveyedOn(DAY, (ohmic, volts, links) -> links[7][0] *= .45);
        for (int s = 1; s < 4; s++) {
            string.surveyedOn(DAY.plusMonths(6L * s));
        }
        UnitForecast link = string.forecast().links().get(7);
        assertThat(link.flagged()).isFalse();
        assertThat(link.riseOverNew()).isLessThan(.1);
        assertThat(link.stepped()).isFalse();
    }

    @Test
    void aPowerOfTenIsTakenForTheSlipThatItIs() {
        StringOf string = quietString(5);
        string.surveyedOn(DAY.plusMonths(30), (ohmic, volts, links) -> {
            Arrays.setAll(ohmic, i -> ohmic[i] * 1000);
            links[3][0] *= 1000;
        });
        StringForecast forecast = string.forecast();
        assertThat(forecast.jars()).noneMatch(UnitForecast::flagged);
        assertThat(forecast.links().get(3).pendingChange()).isNaN();
        assertThat(Math.abs(forecast.commonRise())).isLessThan(.05);
    }
}
