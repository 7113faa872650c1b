package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.Forecaster;
import org.ohmstead.assessment.model.forecast.NextVisit;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.prospect.Prospects;
import org.ohmstead.assessment.model.prospect.Said;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/** The written table of docs/assessment.md, "Urgency": what the forecast adds to the rules. */
class JoinedJudgementTest {

    private static final Limits LIMITS = Limits.standard();

    private static StringForecast forecast(AString string) {
        Forecaster forecaster = Forecaster.of(string.history(), ForecastParameters.standard());
        return forecaster.forecast(forecaster.follow(string.history().surveys()));
    }

    private static StringJudgement joined(AString string) {
        return new Prospects(string.history().plan(), LIMITS).join(string.judged(), forecast(string));
    }

    /** Half-yearly surveys in which one jar rises by the given shares. */
    private static AString rising(double... shares) {
        AString string = AString.of(24).inServiceSince("2018-01-10").designedForYears(12);
        for (int s = 0; s < shares.length; s++) {
            string.surveyed(LocalDate.parse("2018-07-10").plusMonths(6L * s).toString())
                    .jarChanges(7, 1 + shares[s]);
        }
        return string;
    }

    private static Reason reason(JarJudgement jar, Rule rule) {
        return jar.reasons().stream()
                .filter(reason -> reason.rule() == rule)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aStringThatReadsAsUsualStaysClearAndHasAForecastForEveryUnit() {
        StringJudgement judged = joined(rising(0, 0, 0, 0, 0, 0, 0));
        assertThat(judged.urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(judged.jars()).allSatisfy(jar -> {
            assertThat(jar.reasons()).isEmpty();
            assertThat(jar.forecast().risk()).isLessThan(0.05);
            assertThat(jar.forecast().trouble()).isNull();
        });
        assertThat(judged.links())
                .allSatisfy(
                        link -> assertThat(link.forecast().chanceWithinYear()).isBetween(0.0, 0.2));
    }

    @Test
    void aJarThatRunsAwayUnderTheRulesLimitIsPlannedForByTheForecast() {
        AString string = rising(0, .01, .02, .05, .09, .14, .19);
        assertThat(string.judged().jars().get(6).urgency()).isEqualTo(Urgency.CLEAR);
        JarJudgement jar = joined(string).jars().get(6);
        assertThat(jar.urgency()).isEqualTo(Urgency.PLAN);
        assertThat(reason(jar, Rule.JAR_RISK).words())
                .matches("A .+ chance of passing its limit within twelve months; most likely between .+ and .+\\.");
        assertThat(jar.forecast().early()).isBefore(jar.forecast().middle());
        assertThat(jar.forecast().trouble()).isEqualTo(Trouble.DRY_OUT);
    }

    @Test
    void aJarThatTheEyeSeesTooAndThatWillMoreLikelyThanNotFailAsksToAct() {
        JarJudgement jar =
                joined(rising(0, .02, .05, .10, .16, .24, .32)).jars().get(6);
        assertThat(jar.urgency()).isEqualTo(Urgency.ACT);
        assertThat(reason(jar, Rule.JAR_RISK).asks()).isEqualTo(Urgency.ACT);
    }

    @Test
    void offFloatTheForecastAsksForAReReadAtMost() {
        AString string = rising(0, .02, .05, .10, .16, .24, .32).offFloat();
        assertThat(reason(joined(string).jars().get(6), Rule.JAR_RISK).asks()).isEqualTo(Urgency.RECHECK);
    }

    @Test
    void aReadingSetAsideAsksToBeReadAgainUnlessARuleDoesAlready() {
        AString mild = rising(0, 0, 0, 0, 0, 0, .145);
        JarJudgement jar = joined(mild).jars().get(6);
        assertThat(reason(jar, Rule.JAR_READ_APART).words()).contains("% over what its own history made expect");
        assertThat(jar.urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(jar.forecast().trouble()).isEqualTo(Trouble.MISREAD);
        assertThat(joined(mild).recheckBy()).isEqualTo(mild.judged().asOf().plusDays(90));
        AString plain = rising(0, 0, 0, 0, 0, 0, .40);
        assertThat(joined(plain).jars().get(6).reasons())
                .extracting(Reason::rule)
                .doesNotContain(Rule.JAR_READ_APART);
    }

    @Test
    void lowVoltsSuggestAShortAndTwoRisenLinksAtOneJarItsPosts() {
        AString low = rising(0, 0, 0, 0, 0, 0, 0).jarFloatsAt(5, 2.10);
        low.surveyed("2021-07-10").jarFloatsAt(5, 2.09);
        assertThat(joined(low).jars().get(4).forecast().trouble()).isEqualTo(Trouble.SHORTED_CELL);
        AString posts = rising(0, .02, .04, .07, .10, .14, .18).linkReads(6, 34).linkReads(7, 36);
        posts.surveyed("2021-07-10").jarChanges(7, 1.23).linkReads(6, 36).linkReads(7, 38);
        StringJudgement judged = joined(posts);
        assertThat(judged.jars().get(6).forecast().trouble()).isEqualTo(Trouble.POST);
        assertThat(judged.links().get(6).forecast().trouble()).isEqualTo(Trouble.POST);
    }

    @Test
    void aVentedJarThatRisesAloneSuggestsWearNotDryingOut() {
        AString vented = rising(0, .02, .05, .10, .16, .24, .32).ofTechnology(Technology.VENTED_LEAD_ACID, 2.25);
        assertThat(joined(vented).jars().get(6).forecast().trouble()).isEqualTo(Trouble.WEAR);
    }

    @Test
    void linksHaveChancesInWordsAndNoDates() {
        AString string = rising(0, 0, 0, 0, 0, 0, 0);
        for (int s = 0; s < 5; s++) {
            string.surveyed(LocalDate.parse("2022-01-10").plusMonths(6L * s).toString())
                    .linkReads(9, 25 * (1.03 + 0.035 * s));
        }
        LinkJudgement link = joined(string).links().get(9);
        assertThat(link.forecast().early()).isNull();
        assertThat(link.forecast().late()).isNull();
        assertThat(link.forecast().risk()).isGreaterThan(0.2);
        assertThat(link.reasons().stream().filter(r -> r.rule() == Rule.LINK_RISK))
                .singleElement()
                .satisfies(reason -> assertThat(reason.words()).containsAnyOf("likely", "quite possible"));
    }

    /** Never lowering what the rules ask: over random strings, unit by unit. */
    @Test
    void theForecastNeverMakesAJudgementMilder() {
        Random random = new Random(20260);
        for (int n = 0; n < 60; n++) {
            AString string = AString.of(12).inServiceSince("2018-01-10");
            for (int s = 0; s < 2 + random.nextInt(7); s++) {
                string.surveyed(LocalDate.parse("2018-07-10").plusMonths(5L * s).toString());
                for (int k = 0; k < 4; k++) {
                    string.jarChanges(1 + random.nextInt(12), Math.exp(0.3 * random.nextGaussian()));
                    string.linkReads(random.nextInt(13), 25 * Math.exp(0.3 * random.nextGaussian()));
                    string.jarFloatsAt(1 + random.nextInt(12), 2.25 + 0.05 * random.nextGaussian());
                }
            }
            StringJudgement rules = string.judged();
            StringJudgement both = joined(string);
            assertThat(both.urgency()).isGreaterThanOrEqualTo(rules.urgency());
            for (int i = 0; i < 12; i++) {
                assertThat(both.jars().get(i).urgency())
                        .isGreaterThanOrEqualTo(rules.jars().get(i).urgency());
                assertThat(both.jars().get(i).reasons())
                        .containsAll(rules.jars().get(i).reasons());
            }
            assertThat(Stream.of(both.recheckBy(), rules.recheckBy())
                            .filter(java.util.Objects::nonNull)
                            .sorted()
                            .findFirst())
                    .isEqualTo(java.util.Optional.ofNullable(both.recheckBy()));
        }
    }

    @Test
    void theDateByRiskNamesTheUnitThatAddsMost() {
        StringJudgement judged = joined(rising(0, .01, .02, .04, .06, .09, .12));
        assertThat(judged.riskDate()).isNotNull();
        assertThat(judged.riskDate().on())
                .isAfter(judged.asOf())
                .isBefore(judged.asOf().plusYears(2));
        assertThat(judged.riskDate().reason()).contains("string of 24 jars", "Most of it comes from ");
    }

    @Test
    void aStringWithoutASurveyIsLeftAsTheRulesSay() {
        AString string = AString.of(6).inServiceSince("2018-01-10");
        assertThat(joined(string)).isEqualTo(string.judged());
    }

    /** A forecast that fears nothing of 24 jars and their links, but for what is said of jar 7 and link 4. */
    private static StringForecast saying(Said jar, Said link, NextVisit next) {
        return new StringForecast(
                next.on(),
                2,
                IntStream.rangeClosed(1, 24)
                        .mapToObj(k -> (k == 7 ? jar : Said.of(k)).done())
                        .toList(),
                IntStream.rangeClosed(0, 24)
                        .mapToObj(k -> (k == 4 ? link : Said.of(k)).done())
                        .toList(),
                0,
                0.004,
                0,
                0.01,
                0.015,
                next,
                Set.of());
    }

    private static final LocalDate IN_A_YEAR = LocalDate.parse("2022-07-10");
    private static final NextVisit LONGEST = new NextVisit(IN_A_YEAR, NextVisit.Governs.LONGEST_INTERVAL, false, -1);

    private static StringJudgement joined(AString string, Said jar, Said link, NextVisit next) {
        return new Prospects(string.history().plan(), LIMITS).join(string.judged(), saying(jar, link, next));
    }

    @Test
    void aTroubleIsSuggestedWhereRulesOrForecastAskAndNotForANote() {
        AString quiet = rising(0, 0, 0, 0, 0, 0, 0);
        StringJudgement asked =
                joined(quiet, Said.of(7).risenBy(.3).withRisk(.3), Said.of(4).risenBy(.3), LONGEST);
        assertThat(asked.jars().get(6).forecast().trouble()).isEqualTo(Trouble.DRY_OUT);
        assertThat(asked.links().get(4).forecast().trouble()).isNull();
        StringJudgement noted = joined(quiet, Said.of(7).risenBy(.3).withRisk(.15), Said.of(4), LONGEST);
        assertThat(reason(noted.jars().get(6), Rule.JAR_RISK).asks()).isEqualTo(Urgency.CLEAR);
        assertThat(noted.jars().get(6).forecast().trouble()).isNull();
        AString risen = rising(0, 0, 0, 0, 0, .2, .3);
        StringJudgement byRules = joined(risen, Said.of(7), Said.of(4), LONGEST);
        assertThat(byRules.jars().get(6).forecast().trouble()).isEqualTo(Trouble.DRY_OUT);
    }

    @Test
    void aDoubtThatIsNotOfFloatLeavesTheChanceItsWeight() {
        AString other = rising(0, 0, 0, 0, 0, 0, 0).withInstrument("TS-2");
        assertThat(other.judged().doubts()).extracting(Doubt::kind).containsExactly(Doubt.Kind.OTHER_INSTRUMENT);
        StringJudgement judged = joined(other, Said.of(7).withRisk(.3), Said.of(4), LONGEST);
        assertThat(reason(judged.jars().get(6), Rule.JAR_RISK).asks()).isEqualTo(Urgency.PLAN);
    }

    @Test
    void aLinksTroubleIsSuggestedWhereRulesOrForecastAsk() {
        AString risen = rising(0, 0, 0, 0, 0, 0).linkReads(4, 28.5);
        risen.surveyed("2021-07-10").linkReads(4, 28.5);
        assertThat(joined(risen, Said.of(7), Said.of(4), LONGEST)
                        .links()
                        .get(4)
                        .forecast()
                        .trouble())
                .isNull();
        assertThat(joined(risen, Said.of(7), Said.of(4).withRisk(.6), LONGEST)
                        .links()
                        .get(4)
                        .forecast()
                        .trouble())
                .isEqualTo(Trouble.CORRODING);
        risen.linkReads(4, 34);
        assertThat(joined(risen, Said.of(7), Said.of(4), LONGEST)
                        .links()
                        .get(4)
                        .forecast()
                        .trouble())
                .isEqualTo(Trouble.CORRODING);
    }

    @Test
    void theDateByRiskStandsOnlyWhereRiskGovernsAndNamesLinkZeroToo() {
        AString quiet = rising(0, 0, 0, 0, 0, 0, 0);
        NextVisit byLink = new NextVisit(IN_A_YEAR, NextVisit.Governs.RISK, true, 0);
        assertThat(joined(quiet, Said.of(7), Said.of(4), LONGEST).riskDate()).isNull();
        RiskDate date = joined(quiet, Said.of(7), Said.of(4), byLink).riskDate();
        assertThat(date.on()).isEqualTo(IN_A_YEAR);
        assertThat(date.reason()).endsWith("in a string of 24 jars. Most of it comes from link 0.");
        NextVisit byNone = new NextVisit(IN_A_YEAR, NextVisit.Governs.RISK, false, -1);
        assertThat(joined(quiet, Said.of(7), Said.of(4), byNone).riskDate().reason())
                .endsWith("in a string of 24 jars.");
    }

    @Test
    void theFirstTwoSurveysOfAStringSetNoDateByRisk() {
        AString quiet = rising(0, 0, 0);
        NextVisit byJar = new NextVisit(IN_A_YEAR, NextVisit.Governs.RISK, false, 7);
        Prospects prospects = new Prospects(quiet.history().plan(), LIMITS);
        for (int readings = 1; readings <= 3; readings++) {
            int many = readings;
            StringForecast early = new StringForecast(
                    IN_A_YEAR,
                    2,
                    IntStream.rangeClosed(1, 24)
                            .mapToObj(k -> Said.of(k).afterReadings(many).done())
                            .toList(),
                    IntStream.rangeClosed(0, 24)
                            .mapToObj(k -> Said.of(k).done())
                            .toList(),
                    0,
                    0.004,
                    0,
                    0.01,
                    0.015,
                    byJar,
                    Set.of());
            assertThat(prospects.join(quiet.judged(), early).riskDate() == null).isEqualTo(readings < 3);
        }
    }
}
