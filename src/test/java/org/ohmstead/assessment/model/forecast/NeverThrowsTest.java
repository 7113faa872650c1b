package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.kernel.OhmicKind;

/** Poor histories give a forecast without a single NaN where a number is promised. */
class NeverThrowsTest {
    private static final LocalDate DAY = LocalDate.of(2018, 5, 4);

    private static void isWhole(StringForecast forecast) {
        List<UnitForecast> units = new ArrayList<>(forecast.jars());
        units.addAll(forecast.links());
        for (UnitForecast unit : units) {
            assertThat(unit.probability()).isBetween(0.0, 1.0);
            assertThat(unit.score()).isBetween(0.0, 1.0);
            assertThat(unit.beyondLimit()).isBetween(0.0, 1.0);
            assertThat(unit.goingWeight()).isBetween(0.0, 1.0);
            assertThat(unit.shortWeight()).isBetween(0.0, 1.0);
            assertThat(unit.riseOverNew()).isFinite();
            assertThat(unit.ratePerYear()).isFinite();
        }
        assertThat(forecast.commonRise()).isFinite();
        assertThat(forecast.readingNoise()).isPositive();
        assertThat(forecast.next().on()).isAfter(forecast.asOf());
    }

    @Test
    void noSurveyAtAll() {
        isWhole(StringOf.jars(24).forecast());
    }

    @Test
    void oneSurvey() {
        isWhole(StringOf.jars(24).surveyedOn(DAY).forecast());
    }

    @Test
    void aStringOfOneJar() {
        isWhole(StringOf.jars(1).surveyedOn(DAY).surveyedOn(DAY.plusYears(1)).forecast());
    }

    @Test
    void allValuesMissing() {
        StringOf string = StringOf.jars(24);
        for (int s = 0; s < 3; s++) {
            string.surveyedOn(DAY.plusMonths(6 * s), (ohmic, volts, links) -> {
                Arrays.fill(ohmic, Double.NaN);
                Arrays.fill(volts, Double.NaN);
                Arrays.setAll(links, i -> new double[0]);
            });
        }
        isWhole(string.surveyedOn(DAY.plusYears(3)).forecast());
    }

    @Test
    void aJarNeverMeasured() {
        StringOf string = StringOf.jars(24);
        for (int s = 0; s < 5; s++) {
            string.surveyedOn(DAY.plusMonths(6 * s), (ohmic, volts, links) -> ohmic[6] = Double.NaN);
        }
        StringForecast forecast = string.forecast();
        isWhole(forecast);
        assertThat(forecast.jars().get(6).doubts()).contains(DataDoubt.NEVER_READ);
    }

    @Test
    void twoSurveysOnOneDay() {
        isWhole(StringOf.jars(24).surveyedOn(DAY).surveyedOn(DAY).forecast());
    }

    @Test
    void aSurveyBeforeTheStringWentIntoService() {
        isWhole(StringOf.jars(24)
                .surveyedOn(StringOf.IN_SERVICE.minusDays(30))
                .surveyedOn(DAY)
                .forecast());
    }

    @Test
    void aThousandSurveys() {
        StringOf string = StringOf.jars(12);
        for (int s = 0; s < 1000; s++) {
            string.surveyedOn(DAY.plusDays(7L * s));
        }
        isWhole(string.forecast());
    }

    @Test
    void anotherOhmicKindMidWayStartsAnewWithAMark() {
        StringOf string = StringOf.jars(24).surveyedOn(DAY).surveyedOn(DAY.plusYears(1));
        string.kind = OhmicKind.CONDUCTANCE;
        StringForecast forecast = string.surveyedOn(DAY.plusYears(2)).forecast();
        isWhole(forecast);
        assertThat(forecast.doubts()).contains(DataDoubt.KIND_CHANGED);
        assertThat(forecast.jars()).noneMatch(UnitForecast::flagged);
    }

    @Test
    void temperaturesMissingWithACoefficient() {
        StringOf string = StringOf.jars(4).withTemperatureCoefficient(-.01);
        double[] missing = new double[4];
        Arrays.fill(missing, Double.NaN);
        double[] ohmic = {.4, .41, .39, .4};
        double[][] links = {{20}, {25}, {Double.NaN}, {}, {24}};
        string.add(DAY, ohmic, missing, missing, links);
        string.add(DAY.plusYears(1), ohmic, missing, missing, links);
        isWhole(string.forecast());
    }

    @Test
    void absurdReadings() {
        StringOf string = StringOf.jars(24).surveyedOn(DAY);
        string.surveyedOn(DAY.plusYears(1), (ohmic, volts, links) -> {
            ohmic[0] = -3;
            ohmic[1] = 0;
            ohmic[2] = Double.POSITIVE_INFINITY;
            ohmic[3] = 1e300;
            ohmic[4] = 1e-300;
            volts[0] = -1e9;
            volts[1] = 1e9;
            links[3] = new double[] {Double.NaN, 0, -1};
            links[4] = new double[] {1e200};
        });
        isWhole(string.surveyedOn(DAY.plusYears(2)).forecast());
    }

    @Test
    void arraysShorterThanTheString() {
        StringOf string = StringOf.jars(6);
        string.add(DAY, new double[] {.4, .41}, new double[0], new double[0], new double[][] {{20}});
        isWhole(string.forecast());
    }

    @Test
    void conductanceThroughout() {
        StringOf string = StringOf.jars(24);
        string.kind = OhmicKind.CONDUCTANCE;
        for (int s = 0; s < 6; s++) {
            double falls = Math.exp(-.08 * s);
            string.surveyedOn(DAY.plusMonths(6L * s), (ohmic, volts, links) -> ohmic[4] *= falls);
        }
        StringForecast forecast = string.forecast();
        isWhole(forecast);
        assertThat(forecast.jars().get(4).riseOverNew()).isGreaterThan(.2);
        assertThat(forecast.jars().get(4).flagged()).isTrue();
    }

    @Test
    void aChangedInstrumentIsMarked() {
        StringOf string = StringOf.jars(24).surveyedOn(DAY).surveyedOn(DAY.plusYears(1));
        string.instrument = "B-2";
        StringForecast forecast = string.surveyedOn(DAY.plusYears(2)).forecast();
        isWhole(forecast);
        assertThat(forecast.doubts()).contains(DataDoubt.INSTRUMENT_CHANGED);
    }

    @Test
    void aJarLeftOutLastTimeIsMarked() {
        StringForecast forecast = StringOf.jars(24)
                .surveyedOn(DAY)
                .surveyedOn(DAY.plusYears(1), (ohmic, volts, links) -> ohmic[2] = Double.NaN)
                .forecast();
        isWhole(forecast);
        assertThat(forecast.jars().get(2).doubts()).contains(DataDoubt.NOT_IN_LAST_SURVEY);
        assertThat(forecast.jars().get(3).doubts()).isEmpty();
    }

    @Test
    void aReadingFarOffIsSetAsideMarkedAndAskedForAgainSoon() {
        StringOf string = StringOf.jars(24);
        for (int s = 0; s < 4; s++) {
            string.surveyedOn(DAY.plusMonths(6L * s));
        }
        StringForecast forecast = string.surveyedOn(DAY.plusMonths(24), (ohmic, volts, links) -> ohmic[7] *= 1.5)
                .forecast();
        isWhole(forecast);
        assertThat(forecast.jars().get(7).doubts()).contains(DataDoubt.PENDING_READING);
        assertThat(forecast.next().governs()).isEqualTo(NextVisit.Governs.PENDING_READING);
        assertThat(forecast.next().unit()).isEqualTo(8);
        assertThat(forecast.next().on()).isBeforeOrEqualTo(forecast.asOf().plusDays(92));
    }

    @Test
    void readingsThatNeverChangeByADigit() {
        StringOf string = StringOf.jars(24);
        string.repeatability = 0;
        for (int s = 0; s < 8; s++) {
            string.surveyedOn(DAY.plusMonths(3L * s), (ohmic, volts, links) -> Arrays.fill(volts, 2.25));
        }
        isWhole(string.forecast());
    }

    @Test
    void surveysOutOfOrder() {
        isWhole(StringOf.jars(6).surveyedOn(DAY.plusYears(2)).surveyedOn(DAY).forecast());
    }
}
