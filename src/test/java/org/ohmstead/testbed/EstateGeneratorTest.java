package org.ohmstead.testbed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;

/** Anybody can invent the same estate again. */
class EstateGeneratorTest {

    private static int fingerprint(Laws laws, long seed) {
        int print = 0;
        for (SimulatedString string : new EstateGenerator(laws, seed).estate()) {
            StringHistory history = string.history();
            print = 31 * print + history.plan().hashCode() + history.spells().hashCode();
            print = 31 * print + history.remakes().hashCode();
            for (SurveyReadings survey : history.surveys()) {
                print = 31 * print
                        + survey.takenOn().hashCode()
                        + String.valueOf(survey.instrument()).hashCode();
                print = 31 * print + Arrays.hashCode(survey.ohmic()) + Arrays.hashCode(survey.volts());
                print = 31 * print + Arrays.hashCode(survey.celsius()) + Arrays.deepHashCode(survey.linkMicroohms());
            }
            for (Truth truth : string.truths()) {
                print = 31 * print + Double.hashCode(truth.failsAt()) + Double.hashCode(truth.crossesAt());
            }
        }
        return print;
    }

    @Test
    void sameLawsAndSeedGiveTheSameEstate() {
        for (Laws laws : List.of(Laws.jumpy(), Laws.drifting())) {
            assertThat(fingerprint(laws, 5)).isEqualTo(fingerprint(laws, 5));
        }
    }

    @Test
    void anotherSeedOrOtherLawsGiveAnotherEstate() {
        int first = fingerprint(Laws.jumpy(), 5);
        assertThat(fingerprint(Laws.jumpy(), 6)).isNotEqualTo(first);
        assertThat(fingerprint(Laws.drifting(), 5)).isNotEqualTo(first);
    }

    @Test
    void everyUnitHasOneTruthOnEveryDayOfSurvey() {
        SimulatedString string =
                new EstateGenerator(Laws.ordinary(), 5).estate().get(0);
        for (boolean link : new boolean[] {false, true}) {
            History history = new History(string, link);
            for (Truth[] ofSurvey : history.truths) {
                assertThat(ofSurvey).doesNotContainNull();
            }
        }
        for (Truth truth : string.truths()) {
            boolean alone = string.truths().stream()
                            .filter(other -> other.link() == truth.link() && other.index() == truth.index())
                            .filter(other -> other.from() < truth.until() && truth.from() < other.until())
                            .count()
                    == 1;
            assertThat(alone).isTrue();
        }
    }

    @Test
    void aCourseCrossesItsLimitWhereItSaysSo() {
        for (SimulatedString string :
                new EstateGenerator(Laws.jumpy(), 5).estate().subList(0, 3)) {
            for (Truth truth : string.truths()) {
                double age = truth.failsAt() - truth.from();
                if (truth.how().equals("GRADUAL") && Double.isFinite(age) && age > .1) {
                    assertThat(truth.course().rise(age))
                            .isGreaterThan(truth.course().limit());
                    assertThat(truth.course().rise(age - .05))
                            .isLessThanOrEqualTo(truth.course().limit());
                }
            }
        }
    }
}
