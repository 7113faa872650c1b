package org.ohmstead.assessment.model.prospect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ohmstead.assessment.model.prospect.Said.asks;
import static org.ohmstead.assessment.model.prospect.Said.jar;
import static org.ohmstead.assessment.model.prospect.Said.link;
import static org.ohmstead.assessment.model.prospect.Said.notes;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.assessment.model.Trouble;
import org.ohmstead.kernel.Technology;

/** The written table of docs/assessment.md, "Kinds of trouble", row by row: the first that fits is named. */
class TroublesTest {

    private static final int JARS = 6;

    /** A string of six jars of which these links stand over their baseline. */
    private static List<LinkJudgement> links(int... risen) {
        return links(Rule.LINK_OVER_BASELINE, risen);
    }

    private static List<LinkJudgement> links(Rule rule, int... risen) {
        return IntStream.rangeClosed(0, JARS)
                .mapToObj(k -> Arrays.stream(risen).anyMatch(r -> r == k) ? link(k, 0.3, asks(rule)) : link(k, 0.0))
                .toList();
    }

    private static Troubles amongLinks(List<LinkJudgement> links) {
        return new Troubles(Technology.AGM, 0, links);
    }

    private static @Nullable Trouble of(JarJudgement jar, Said said) {
        return amongLinks(links()).of(jar, said.done(), true);
    }

    private static @Nullable Trouble ofLink(LinkJudgement link, Said said, int... risen) {
        return amongLinks(links(risen)).of(link, said.done(), true);
    }

    private static JarJudgement risenJar() {
        return jar(3, 0.3, 0.3, 0.0);
    }

    @Test
    void nothingIsSuggestedForAJarOrLinkThatAsksForNothing() {
        Troubles troubles = amongLinks(links(2, 3));
        assertThat(troubles.of(risenJar(), Said.of(3).risenBy(0.3).done(), false))
                .isNull();
        assertThat(troubles.of(link(2, 0.3), Said.of(2).stepped().done(), false))
                .isNull();
    }

    @Test
    void aJarThatAsksAndLooksSoundFitsNoRow() {
        assertThat(of(jar(3, 0.05, 0.05, 0.0), Said.of(3).risenBy(0.05))).isNull();
        assertThat(of(jar(3, null, null, null), Said.of(3).risenBy(0.05))).isNull();
        assertThat(ofLink(link(3, 0.05), Said.of(3))).isNull();
        assertThat(ofLink(link(3, null), Said.of(3))).isNull();
    }

    @Test
    void workWithoutRecordComesFirstAndNeedNotAsk() {
        Said said = Said.of(3).likeNew().setAside(-0.5).shorted(0.9);
        assertThat(amongLinks(links()).of(risenJar(), said.done(), false)).isEqualTo(Trouble.REPLACED_UNRECORDED);
        assertThat(amongLinks(links(3)).of(link(3, 0.3), said.done(), false)).isEqualTo(Trouble.REPLACED_UNRECORDED);
    }

    @Test
    void aReadingSetAsideComesBeforeEveryPatternAndNeedNotAsk() {
        Said said = Said.of(3).setAside(0.5).shorted(0.9).stepped();
        assertThat(amongLinks(links()).of(risenJar(), said.done(), false)).isEqualTo(Trouble.MISREAD);
        assertThat(amongLinks(links(3)).of(link(3, 0.3), said.done(), false)).isEqualTo(Trouble.MISREAD);
    }

    /** 2 % or more under the median, ohmic value not up 10 %. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "-0.020, 0.05, SHORTED_CELL",
                "-0.020, -0.30, SHORTED_CELL",
                "-0.020, none, SHORTED_CELL",
                "-0.019, 0.05, none",
                "-0.020, 0.099, SHORTED_CELL",
                "-0.020, 0.100, none",
                "none, 0.05, none"
            })
    void lowVoltsWithoutARiseSuggestAShortedCell(
            @Nullable Double volts, @Nullable Double change, @Nullable Trouble trouble) {
        assertThat(of(jar(3, change, 0.0, volts), Said.of(3))).isEqualTo(trouble);
    }

    @ParameterizedTest
    @CsvSource({"0.50, SHORTED_CELL", "0.49, DRY_OUT"})
    void theVoltsOwnHistorySuggestsAShortedCellWhateverTheOhmicValue(double weight, Trouble trouble) {
        assertThat(of(risenJar(), Said.of(3).shorted(weight))).isEqualTo(trouble);
    }

    @Test
    void heatComesBeforePostsAndOnlyWhenItAsks() {
        JarJudgement hot = jar(3, 0.3, 0.3, 0.0, asks(Rule.JAR_HOT));
        assertThat(amongLinks(links(2, 3)).of(hot, Said.of(3).done(), true)).isEqualTo(Trouble.HEATING);
        assertThat(of(jar(3, 0.3, 0.3, 0.0, notes(Rule.JAR_HOT)), Said.of(3))).isEqualTo(Trouble.DRY_OUT);
        assertThat(of(jar(3, 0.3, 0.3, 0.0, asks(Rule.JAR_STEP)), Said.of(3))).isEqualTo(Trouble.DRY_OUT);
        assertThat(of(jar(3, 0.0, 0.0, -0.03, asks(Rule.JAR_HOT)), Said.of(3))).isEqualTo(Trouble.SHORTED_CELL);
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 1", "3, 2, 3", "6, 5, 6"})
    void bothLinksAtOneJarSuggestItsPosts(int position, int before, int after) {
        JarJudgement jar = jar(position, 0.3, 0.3, 0.0);
        Said stepped = Said.of(position).stepped();
        assertThat(amongLinks(links(before, after)).of(jar, stepped.done(), true))
                .isEqualTo(Trouble.POST);
        assertThat(amongLinks(links(before)).of(jar, stepped.done(), true)).isEqualTo(Trouble.OPENING);
        assertThat(amongLinks(links(after)).of(jar, stepped.done(), true)).isEqualTo(Trouble.OPENING);
    }

    @ParameterizedTest
    @EnumSource(names = {"LINK_OVER_BASELINE", "LINK_OVER_KIND", "LINK_RISK"})
    void eachLimitOfALinksLevelCountsForThePosts(Rule rule) {
        assertThat(amongLinks(links(rule, 2, 3)).of(risenJar(), Said.of(3).done(), true))
                .isEqualTo(Trouble.POST);
    }

    @Test
    void linksThatOnlyNoteSomethingOrAskForSomethingElseSuggestNoPosts() {
        List<LinkJudgement> noted = links().stream()
                .map(link -> link(link.ordinal(), 0.0, notes(Rule.LINK_OVER_KIND), asks(Rule.LINK_DROP)))
                .toList();
        assertThat(amongLinks(noted).of(risenJar(), Said.of(3).done(), true)).isEqualTo(Trouble.DRY_OUT);
    }

    @Test
    void aConfirmedStepSuggestsAnOpeningConnectionUnlessVoltsAreLow() {
        assertThat(of(risenJar(), Said.of(3).stepped())).isEqualTo(Trouble.OPENING);
        assertThat(of(jar(3, 0.3, 0.3, -0.03), Said.of(3).stepped())).isNull();
        assertThat(of(jar(3, 0.3, 0.3, null), Said.of(3).stepped())).isEqualTo(Trouble.OPENING);
    }

    /** Up 10 %, as the string is, and not 10 % over its lot. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.10, 0.10, 0.05, WORN_TOGETHER",
                "0.10, 0.10, 0.099, WORN_TOGETHER",
                "0.10, 0.10, none, WORN_TOGETHER",
                "0.10, 0.10, 0.10, DRY_OUT",
                "0.099, 0.10, 0.05, DRY_OUT",
                "0.10, 0.099, 0.05, none"
            })
    void aJarThatRoseNoMoreThanItsStringWoreWithIt(
            double ofString, double ofJar, @Nullable Double onMedian, @Nullable Trouble trouble) {
        Troubles troubles = new Troubles(Technology.AGM, ofString, links());
        assertThat(troubles.of(jar(3, ofJar, onMedian, 0.0), Said.of(3).done(), true))
                .isEqualTo(trouble);
    }

    @ParameterizedTest
    @CsvSource({"AGM, DRY_OUT", "GEL, DRY_OUT", "VENTED_LEAD_ACID, WEAR", "NICKEL_CADMIUM, WEAR"})
    void aGradualRiseSuggestsDryingOutInValveRegulatedJarsAndWearInOthers(Technology technology, Trouble trouble) {
        Troubles troubles = new Troubles(technology, 0, links());
        assertThat(troubles.of(risenJar(), Said.of(3).done(), true)).isEqualTo(trouble);
    }

    @Test
    void theRiseMayBeOneOverItsBaselineOrOneThatOnlyTheForecastSees() {
        assertThat(of(jar(3, 0.10, 0.1, 0.0), Said.of(3))).isEqualTo(Trouble.DRY_OUT);
        assertThat(of(jar(3, 0.05, 0.1, 0.0), Said.of(3).risenBy(0.10))).isEqualTo(Trouble.DRY_OUT);
        assertThat(of(jar(3, null, 0.1, 0.0), Said.of(3).risenBy(0.10))).isEqualTo(Trouble.DRY_OUT);
    }

    /** Its row asks for volts that are normal. */
    @Test
    void aRiseWithLowVoltsSuggestsNeitherDryingOutNorWear() {
        assertThat(of(jar(3, 0.3, 0.3, -0.02), Said.of(3))).isNull();
        assertThat(of(jar(3, 0.3, 0.3, -0.019), Said.of(3))).isEqualTo(Trouble.DRY_OUT);
        Troubles worn = new Troubles(Technology.AGM, 0.3, links());
        assertThat(worn.of(jar(3, 0.3, 0.0, -0.02), Said.of(3).done(), true)).isEqualTo(Trouble.WORN_TOGETHER);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0", "3, 2", "3, 4", "5, 6", "6, 5"})
    void aRisenLinkWithARisenNeighbourSuggestsThePostBetween(int ordinal, int neighbour) {
        Said stepped = Said.of(ordinal).stepped();
        LinkJudgement link = link(ordinal, 0.3);
        assertThat(ofLink(link, stepped, ordinal, neighbour)).isEqualTo(Trouble.POST);
        assertThat(ofLink(link, stepped, ordinal)).isEqualTo(Trouble.LOOSENED);
        assertThat(ofLink(link, stepped, neighbour)).isEqualTo(Trouble.LOOSENED);
    }

    @Test
    void aConfirmedStepSuggestsALoosenedJointBeforeACorrodingOne() {
        assertThat(ofLink(link(3, 0.5), Said.of(3).stepped())).isEqualTo(Trouble.LOOSENED);
        assertThat(ofLink(link(3, 0.5), Said.of(3))).isEqualTo(Trouble.CORRODING);
    }

    /** 10 % and more over its first reading; otherwise over the criterion or its kind. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.10, LINK_INSTALLATION, CORRODING",
                "0.099, LINK_INSTALLATION, BADLY_MADE",
                "none, LINK_INSTALLATION, BADLY_MADE",
                "0.05, LINK_OVER_KIND, BADLY_MADE",
                "0.05, LINK_DROP, none"
            })
    void aJointOverItsLikeButNotOverItselfWasNeverWellMade(
            @Nullable Double change, Rule rule, @Nullable Trouble trouble) {
        assertThat(ofLink(link(3, change, asks(rule)), Said.of(3))).isEqualTo(trouble);
        assertThat(ofLink(link(3, change, notes(rule)), Said.of(3)))
                .isEqualTo(trouble == Trouble.BADLY_MADE ? null : trouble);
    }

    @ParameterizedTest
    @EnumSource
    void everyTroubleHasWordsAndSaysWhatWasSeen(Trouble trouble) {
        assertThat(trouble.words()).isNotBlank().doesNotContain("capacity");
        assertThat(trouble.pattern()).isNotBlank().doesNotContain("capacity");
    }
}
