package org.ohmstead.testbed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Who is healthy is left alone: the rules and the forecast together, on an estate that nothing was tuned on. */
class HealthyStringsTest {

    @Test
    void fewerThanTwoJarsInAThousandOfHealthyStringsAskToAct() {
        Alarms alarms = new Alarms();
        alarms.hearAll(Laws.ordinary(), 54);
        assertThat(alarms.jars()).isGreaterThan(2000);
        assertThat(alarms.shareOfActs()).isLessThan(.002);
    }
}
