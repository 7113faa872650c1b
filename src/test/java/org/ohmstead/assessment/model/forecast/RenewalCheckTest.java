package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work without record that concerns the whole string. */
class RenewalCheckTest {

    private static final ForecastParameters PARAMETERS = ForecastParameters.standard();
    private static final double LEVEL = Math.log(25);
    private static final double RISE = .3;

    /** Ten units that have risen by .3 together, surveyed a few times, five years after their start. */
    private static GroupState risen(UnitConstants constants) {
        GroupState group = new GroupState(constants, 10);
        Arrays.setAll(group.units, i -> new UnitState(constants));
        for (UnitState unit : group.units) {
            unit.restart(0);
            unit.readings = 3;
        }
        group.common.restart(1, LEVEL, .01);
        group.common.state.mean[CommonState.RISE] = RISE;
        group.surveys = 3;
        return group;
    }

    private static boolean jarsRenewed(GroupState jars, double centre, double sinceLast) {
        return new RenewalCheck(jars, PARAMETERS, 5, sinceLast).apply(new double[10], new Centre(centre, 1e-4, 10));
    }

    /** A joint fall of more than the limit, after as much rise. */
    @Test
    void aStringOfJarsThatFellAsFarAsItHadRisenWasRenewed() {
        double limit = PARAMETERS.renewalFall();
        double expected = LEVEL + RISE;
        assertThat(jarsRenewed(risen(UnitConstants.jars()), expected - limit - 1e-6, .5))
                .isTrue();
        assertThat(jarsRenewed(risen(UnitConstants.jars()), expected - limit + 1e-6, .5))
                .isFalse();
        assertThat(jarsRenewed(risen(UnitConstants.jars()), expected - limit - 1e-6, 0))
                .isFalse();
        GroupState little = risen(UnitConstants.jars());
        little.common.state.mean[CommonState.RISE] = limit - 1e-6;
        assertThat(jarsRenewed(little, LEVEL - limit, .5)).isFalse();
        GroupState unsurveyed = risen(UnitConstants.jars());
        unsurveyed.surveys = 0;
        assertThat(jarsRenewed(unsurveyed, LEVEL, .5)).isFalse();
    }

    private static boolean linksRemade(GroupState links, double log, int read) {
        double[] logs = new double[10];
        Arrays.setAll(logs, i -> i < read ? log : Double.NaN);
        return new RenewalCheck(links, PARAMETERS, 5, .5).apply(logs, new Centre(log, 1e-4, read));
    }

    @Test
    void linksThatAllReadAsNewWereRemade() {
        assertThat(linksRemade(risen(UnitConstants.links()), LEVEL, 10)).isTrue();
        assertThat(linksRemade(risen(UnitConstants.links()), LEVEL + RISE, 10)).isFalse();
    }

    /** Eight links that had been read before, and two surveys, are needed. */
    @ParameterizedTest
    @CsvSource({
        "10, 2, 0, true",
        "10, 1, 0, false",
        "8, 2, 0, true",
        "7, 2, 0, false",
        "9, 2, 1, true",
        "8, 2, 1, false"
    })
    void fewLinksOrSurveysSayNothing(int read, int surveys, int firstTime, boolean remade) {
        GroupState links = risen(UnitConstants.links());
        links.surveys = surveys;
        for (int i = 0; i < firstTime; i++) {
            links.units[i].readings = 0;
        }
        assertThat(linksRemade(links, LEVEL, read)).isEqualTo(remade);
    }

    /** What a link reads is held against its own level where that is its own affair. */
    @Test
    void linksOfLevelsOfTheirOwnAreHeldAgainstThese() {
        GroupState links = risen(UnitConstants.links());
        for (UnitState unit : links.units) {
            unit.ownLevel = true;
            unit.healthy.setLevel(.5, 1e-4);
            unit.going.setLevel(.5, 1e-4);
        }
        assertThat(linksRemade(links, LEVEL + .5 + RISE, 10)).isFalse();
        assertThat(linksRemade(links, LEVEL + .5, 10)).isTrue();
    }

    @Test
    void everythingStartsAnewHalfWayBetweenTheSurveys() {
        GroupState links = risen(UnitConstants.links());
        assertThat(linksRemade(links, LEVEL, 10)).isTrue();
        assertThat(links.suspectedRenewalYears).isEqualTo(4.75);
        assertThat(links.startYears).isEqualTo(4.75);
        assertThat(links.common.rise()).isCloseTo(0, within(.01));
        assertThat(links.common.expected()).isCloseTo(LEVEL, within(.01));
        assertThat(links.units).allSatisfy(unit -> {
            assertThat(unit.suspectedRestartYears).isEqualTo(4.75);
            assertThat(unit.startYears).isEqualTo(4.75);
            assertThat(unit.readings).isZero();
        });
    }
}
