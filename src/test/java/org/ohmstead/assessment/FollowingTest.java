package org.ohmstead.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.LinkPlan;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** A string followed survey by survey is where one followed from the start is; changes of the past are noticed. */
class FollowingTest {

    private static final int JARS = 8;
    private static final LocalDate BEGAN = LocalDate.parse("2018-01-10");
    private static final ForecastParameters SET = ForecastParameters.standard();

    private final List<SurveyReadings> surveys =
            IntStream.range(0, 9).mapToObj(FollowingTest::survey).toList();

    private static SurveyReadings survey(int n) {
        Random random = new Random(100 + n);
        LocalDate day = BEGAN.plusMonths(6 + 5L * n);
        double[] ohmic = random.doubles(JARS, 0.39, 0.41).toArray();
        ohmic[2] *= 1 + 0.02 * n;
        double[] volts = random.doubles(JARS, 2.24, 2.26).toArray();
        double[][] links = random.doubles(JARS + 1, 24, 26)
                .mapToObj(link -> new double[] {link})
                .toArray(double[][]::new);
        double[] celsius = new double[JARS];
        Arrays.fill(celsius, 25);
        return new SurveyReadings(
                n + 1,
                day.atTime(9, 0).toInstant(ZoneOffset.UTC),
                day,
                OhmicKind.IMPEDANCE,
                n == 4 ? null : "A-1",
                25,
                18,
                Double.NaN,
                true,
                ohmic,
                volts,
                celsius,
                links);
    }

    private static StringHistory history(List<SurveyReadings> surveys, LinkRemake... remakes) {
        JarTypeFacts type = new JarTypeFacts(
                "T", Technology.AGM, 1, 2, 100, 2.25, Double.NaN, OhmicKind.IMPEDANCE, Double.NaN, 12, 25);
        List<LinkPlan> links = IntStream.rangeClosed(0, JARS)
                .mapToObj(k -> new LinkPlan(k, LinkKind.STRAP, 1, null))
                .toList();
        List<JarSpell> spells = IntStream.rangeClosed(1, JARS)
                .mapToObj(p -> new JarSpell(p, "S" + p, DateRange.startingOn(BEGAN), Double.NaN))
                .toList();
        StringPlan plan = new StringPlan(1, type, JARS, links, 2.25, 50, 60, BEGAN);
        return new StringHistory(plan, spells, List.of(remakes), surveys);
    }

    private static Known known(StringHistory history) {
        Fingerprint seen = Fingerprint.over(history);
        return new Known(history, seen, seen.judgedBy(Limits.standard()));
    }

    private static Followed fromScratch(StringHistory history) {
        return new Following(known(history), SET, null).followed();
    }

    private static Followed goingOn(StringHistory history, Followed before) {
        return new Following(known(history), SET, before).followed();
    }

    private static void assertSame(Followed one, Followed other) {
        assertThat(one).usingRecursiveComparison().isEqualTo(other);
    }

    @Test
    void surveyBySurveyIsTheSameAsFromTheStart() {
        Followed followed = null;
        for (int n = 1; n <= surveys.size(); n++) {
            followed = new Following(known(history(surveys.subList(0, n))), SET, followed).followed();
        }
        assertSame(followed, fromScratch(history(surveys)));
        assertThat(followed.surveyIds()).containsExactly(1L, 2L, 3L, 4L, 6L, 7L, 8L, 9L);
    }

    /** Proves that the kept state is used at all: a state of other bytes leads elsewhere. */
    @Test
    void itGoesOnFromWhereItWasLeft() {
        Followed five = fromScratch(history(surveys.subList(0, 5)));
        Followed other = fromScratch(history(surveys.subList(1, 6)));
        Followed forged = new Followed(
                5, five.fingerprint(), other.state(), five.surveyIds(), five.innovations(), five.variances());
        assertThat(goingOn(history(surveys), forged).state())
                .isNotEqualTo(fromScratch(history(surveys)).state());
    }

    @Test
    void aSurveyWithdrawnInsertedOrAmendedInThePastIsFollowedAnew() {
        Followed all = fromScratch(history(surveys));
        List<SurveyReadings> without = new ArrayList<>(surveys);
        without.remove(3);
        assertSame(goingOn(history(without), all), fromScratch(history(without)));
        assertSame(goingOn(history(surveys), fromScratch(history(without))), all);
        List<SurveyReadings> amended = new ArrayList<>(surveys);
        amended.set(2, survey(20));
        assertSame(goingOn(history(amended), all), fromScratch(history(amended)));
        List<SurveyReadings> shortened = surveys.subList(0, 6);
        assertSame(goingOn(history(shortened), all), fromScratch(history(shortened)));
    }

    @Test
    void workRecordedLateIsFollowedAnewAndWorkAfterTheLastSurveyIsNot() {
        Followed six = fromScratch(history(surveys.subList(0, 6)));
        LinkRemake late = new LinkRemake(3, surveys.get(2).takenOn().plusDays(9));
        assertSame(goingOn(history(surveys, late), six), fromScratch(history(surveys, late)));
        LinkRemake since = new LinkRemake(3, surveys.get(5).takenOn().plusDays(9));
        assertThat(Fingerprint.over(history(surveys, since)).ofFirst(6)).isEqualTo(six.fingerprint());
        assertThat(Fingerprint.over(history(surveys, late)).ofFirst(6)).isNotEqualTo(six.fingerprint());
        assertSame(goingOn(history(surveys, since), six), fromScratch(history(surveys, since)));
    }

    @Test
    void aStateOfAnotherParameterSetIsMadeAgain() {
        Followed five = fromScratch(history(surveys.subList(0, 5)));
        byte[] old = five.state().clone();
        old[7] = 99;
        Followed before =
                new Followed(5, five.fingerprint(), old, five.surveyIds(), five.innovations(), five.variances());
        assertSame(goingOn(history(surveys), before), fromScratch(history(surveys)));
    }
}
