package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.SurveyReadings;

/** A stored state advanced by one survey is the state rebuilt from all surveys, bit by bit. */
class StepwiseStateTest {
    private static final ForecastParameters SET = ForecastParameters.standard();
    private static final LocalDate DAY = LocalDate.of(2016, 5, 4);

    private static StringOf troubledString() {
        StringOf string =
                StringOf.jars(24).withJarReplacedOn(9, DAY.plusDays(800)).withLinkRemadeOn(4, DAY.plusDays(1000));
        for (int s = 0; s < 14; s++) {
            double rise = 1 + .03 * s * s / 10.0;
            int survey = s;
            string.instrument = s < 8 ? "A-1" : "B-2";
            string.surveyedOn(DAY.plusDays(170L * s), (ohmic, volts, links) -> {
                ohmic[3] *= rise;
                ohmic[5] = survey == 6 ? ohmic[5] * 1.6 : ohmic[5];
                ohmic[7] = survey == 2 ? Double.NaN : ohmic[7];
                volts[11] -= survey > 9 ? .09 : 0;
                links[2][0] *= 1 + .02 * survey;
            });
        }
        return string;
    }

    @Test
    void advancingAStoredStateEqualsRebuilding() {
        StringOf string = troubledString();
        Forecaster forecaster = string.forecaster();
        ForecastState stored = forecaster.start();
        for (SurveyReadings survey : string.history().surveys()) {
            ForecastState read = ForecastState.fromBytes(stored.toBytes(SET), SET);
            stored = string.forecaster().advance(read, survey);
        }
        ForecastState rebuilt = forecaster.follow(string.history().surveys());
        assertThat(stored.toBytes(SET)).isEqualTo(rebuilt.toBytes(SET));
        assertThat(forecaster.forecast(stored)).isEqualTo(forecaster.forecast(rebuilt));
    }

    @Test
    void advancingLeavesTheFormerStateAsItWas() {
        StringOf string = troubledString();
        Forecaster forecaster = string.forecaster();
        ForecastState first = forecaster.follow(string.history().surveys().subList(0, 6));
        byte[] before = first.toBytes(SET);
        forecaster.advance(first, string.history().surveys().get(6));
        assertThat(first.toBytes(SET)).isEqualTo(before);
    }

    @Test
    void aStateOfAnotherLayoutOrParameterVersionIsNotTaken() {
        byte[] bytes = StringOf.jars(3).forecaster().start().toBytes(SET);
        bytes[7] = 99;
        assertThat(ForecastState.fromBytes(bytes, SET)).isNull();
        bytes[3] = 99;
        assertThat(ForecastState.fromBytes(bytes, SET)).isNull();
    }
}
