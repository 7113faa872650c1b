package org.ohmstead.assessment.model.prospect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ohmstead.assessment.model.prospect.Said.asks;
import static org.ohmstead.assessment.model.prospect.Said.jar;
import static org.ohmstead.assessment.model.prospect.Said.link;
import static org.ohmstead.assessment.model.prospect.Said.notes;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.kernel.Urgency;

/** The table of docs/assessment.md, "the forecast finds", at its limits. */
class RiskRulesTest {

    private static final JarJudgement SOUND = jar(7, 0.0, 0.0, 0.0);

    private static RiskRules onFloat(boolean onFloat) {
        return new RiskRules(Said.DAY, onFloat, Limits.standard());
    }

    private static List<Reason> ofJar(JarJudgement jar, Said said) {
        return onFloat(true).of(jar, said.done());
    }

    private static List<Reason> ofLink(Said said) {
        return onFloat(true).of(link(4, 0.0), said.done());
    }

    private static @Nullable Urgency asked(List<Reason> reasons, Rule rule) {
        return reasons.stream()
                .filter(reason -> reason.rule() == rule)
                .map(Reason::asks)
                .findFirst()
                .orElse(null);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"0.099, none", "0.10, CLEAR", "0.199, CLEAR", "0.20, PLAN", "0.80, PLAN", "1, PLAN"})
    void aJarsChanceIsNotedFromOneInTenAndPlannedForFromOneInFive(double chance, @Nullable Urgency asks) {
        assertThat(asked(ofJar(SOUND, Said.of(7).withRisk(chance)), Rule.JAR_RISK))
                .isEqualTo(asks);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"0, 0.9, none", "1, 0.9, RECHECK", "2, 0.9, RECHECK", "3, 0.9, PLAN", "2, 0.19, CLEAR"})
    void fewerThanThreeReadingsAskForAnotherAtMost(int readings, double chance, @Nullable Urgency asks) {
        Said said = Said.of(7).withRisk(chance).afterReadings(readings);
        assertThat(asked(ofJar(SOUND, said), Rule.JAR_RISK)).isEqualTo(asks);
    }

    @Test
    void offFloatOrWithAReadingSetAsideAChanceAsksForAReReadAtMost() {
        JarJudgement risen = jar(7, 0.5, 0.5, 0.0);
        Said high = Said.of(7).withRisk(0.9);
        assertThat(asked(ofJar(risen, high), Rule.JAR_RISK)).isEqualTo(Urgency.ACT);
        assertThat(asked(onFloat(false).of(risen, high.done()), Rule.JAR_RISK)).isEqualTo(Urgency.RECHECK);
        assertThat(asked(ofJar(risen, high.setAside(0.3)), Rule.JAR_RISK)).isEqualTo(Urgency.RECHECK);
    }

    /** ≥ 0.80, and it is 20 % over its own baseline or 4 % low in volts. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.80, 0.20, none, ACT",
                "0.80, 0.199, none, PLAN",
                "0.799, 0.20, none, PLAN",
                "0.80, none, -0.04, ACT",
                "0.80, none, -0.039, PLAN",
                "0.80, none, 0.04, PLAN",
                "0.80, -0.20, 0.01, PLAN",
                "0.80, none, none, PLAN"
            })
    void actingNeedsAHighChanceAndSomethingThatTheRulesSeeToo(
            double chance, @Nullable Double onBaseline, @Nullable Double voltsOffMedian, Urgency asks) {
        JarJudgement jar = jar(7, onBaseline, null, voltsOffMedian);
        assertThat(asked(ofJar(jar, Said.of(7).withRisk(chance)), Rule.JAR_RISK))
                .isEqualTo(asks);
    }

    @Test
    void aJarPastItsLimitMoreLikelyThanNotIsSaidToBe() {
        Said said = Said.of(7).withRisk(0.6).beyondLimit(0.5).shorted(0.9);
        assertThat(ofJar(SOUND, said).get(0).words()).isEqualTo("Past its limit already with a chance of 1 in 2.");
        assertThat(ofJar(SOUND, said.beyondLimit(0.49)).get(0).words()).doesNotStartWith("Past its limit");
    }

    @Test
    void aShortedCellMoreLikelyThanNotIsSaidToBe() {
        Said said = Said.of(7).withRisk(0.6).shorted(0.5);
        assertThat(ofJar(SOUND, said).get(0).words())
                .isEqualTo("Its volts behave like those of a jar with a shorted cell (chance 1 in 2).");
        assertThat(ofJar(SOUND, said.shorted(0.49)).get(0).words())
                .isEqualTo("A 6 in 10 chance of passing its limit within twelve months;"
                        + " most likely between November 2028 and November 2031.");
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"0.199, none", "0.20, CLEAR", "0.499, CLEAR", "0.50, PLAN"})
    void aLinksChanceIsNotedFromOneInFiveAndPlannedForFromOneHalf(double chance, @Nullable Urgency asks) {
        assertThat(asked(ofLink(Said.of(4).withRisk(chance)), Rule.LINK_RISK)).isEqualTo(asks);
    }

    @Test
    void aLinkOfFewerThanThreeReadingsSaysNothingOfItsChance() {
        Said said = Said.of(4).withRisk(0.9);
        assertThat(ofLink(said.afterReadings(2))).isEmpty();
        assertThat(ofLink(said.afterReadings(3)))
                .singleElement()
                .satisfies(reason -> assertThat(reason.words()).contains("is likely;"));
    }

    @Test
    void aLinkWithAReadingSetAsideIsNotPlannedFor() {
        List<Reason> reasons = ofLink(Said.of(4).withRisk(0.9).setAside(0.4));
        assertThat(asked(reasons, Rule.LINK_RISK)).isEqualTo(Urgency.CLEAR);
        assertThat(asked(reasons, Rule.LINK_READ_APART)).isEqualTo(Urgency.RECHECK);
    }

    /** ln 1.25 either way: 25 % over what was expected, and as far under it. */
    @ParameterizedTest
    @CsvSource({"0.22314355131420976, 25 % over", "-0.22314355131420976, 25 % under"})
    void aReadingSetAsideIsSaidWithItsDistance(double logarithmic, String words) {
        List<Reason> reasons = ofJar(SOUND, Said.of(7).setAside(logarithmic));
        assertThat(reasons)
                .singleElement()
                .satisfies(reason -> assertThat(reason.words()).contains("lies " + words + " what its own history"));
        assertThat(reasons.get(0).recheckDays()).isEqualTo(90);
    }

    @Test
    void aReadingSetAsideAsksOnlyWhereNoRuleAsksAlready() {
        Said apart = Said.of(7).setAside(0.3);
        assertThat(ofJar(jar(7, 0.3, 0.3, 0.0, asks(Rule.JAR_STEP)), apart)).isEmpty();
        assertThat(asked(ofJar(jar(7, 0.3, 0.3, 0.0, notes(Rule.JAR_HOT)), apart), Rule.JAR_READ_APART))
                .isEqualTo(Urgency.RECHECK);
    }
}
