package org.ohmstead.worklist.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.assessment.model.Advice;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.assessment.model.StringFigures;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.Trouble;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.check.Severity;
import org.ohmstead.kernel.Urgency;

/** The table of docs/worklist.md. */
class RuleTableTest {

    private static final LocalDate AS_OF = LocalDate.parse("2026-03-02");
    private static final LocalDate SINCE = LocalDate.parse("2018-04-01");

    @ParameterizedTest
    @EnumSource
    void aRecheckAsksForAReadingAndANoteForNothing(Rule rule) {
        assertThat(RuleTable.kindOf(rule, Urgency.CLEAR)).isNull();
        assertThat(RuleTable.kindOf(rule, Urgency.RECHECK)).isEqualTo(WorkKind.MEASURE_AGAIN);
    }

    @ParameterizedTest
    @CsvSource({
        "LINK_OVER_BASELINE, REMAKE_LINK",
        "LINK_OVER_KIND, REMAKE_LINK",
        "LINK_INSTALLATION, REMAKE_LINK",
        "LINK_DROP, REMAKE_LINK",
        "LINK_RISK, REMAKE_LINK",
        "JAR_OVER_BASELINE, REPLACE_JAR",
        "JAR_UNDER_BASELINE, REPLACE_JAR",
        "JAR_OVER_LOT, REPLACE_JAR",
        "JAR_RISK, REPLACE_JAR",
        "JAR_VOLTS_LOW, EQUALISE",
        "JAR_VOLTS_OFF_MEDIAN, INVESTIGATE",
        "JAR_HOT, INVESTIGATE",
        "STRING_FLOAT, INVESTIGATE",
        "STRING_RIPPLE, INVESTIGATE",
        "STRING_RISEN, TEST_CAPACITY",
        "STRING_AGE, TEST_CAPACITY"
    })
    void whatAsksForWorkRaises(Rule rule, WorkKind kind) {
        assertThat(RuleTable.kindOf(rule, Urgency.PLAN)).isEqualTo(kind);
        assertThat(RuleTable.kindOf(rule, Urgency.ACT)).isEqualTo(kind);
    }

    private static Reason reason(Rule rule, Urgency asks, int days) {
        return new Reason(rule, asks, "Seen by " + rule + ".", "Something else.", days);
    }

    private static JarJudgement jar(int position, @Nullable Trouble trouble, Reason... reasons) {
        UnitForecast forecast = new UnitForecast(.3, .3, .1, null, null, null, .1, .05, trouble);
        return new JarJudgement(
                position,
                null,
                SINCE,
                Urgency.CLEAR,
                AS_OF,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(reasons),
                forecast);
    }

    private static StringJudgement judgement(List<Advice> advice, List<Reason> reasons, JarJudgement... jars) {
        return new StringJudgement(
                1,
                AS_OF,
                5L,
                "test",
                Urgency.CLEAR,
                "",
                null,
                null,
                org.mockito.Mockito.mock(StringFigures.class),
                reasons,
                List.of(),
                advice,
                List.of(jars),
                List.of());
    }

    private static Wants wants(StringJudgement judgement, Overruled... overruled) {
        return JudgementWork.of(judgement, List.of(overruled), null, AS_OF.plusDays(8));
    }

    private static @Nullable Want jarWork(Wants wants, WorkKind kind) {
        return wants.of(new WorkKey(kind, Subject.jar(1)));
    }

    @Test
    void aJarThatAsksForWorkIsNotMeasuredAgainAsWell() {
        Wants wants = wants(judgement(
                List.of(),
                List.of(),
                jar(
                        1,
                        Trouble.DRY_OUT,
                        reason(Rule.JAR_OVER_BASELINE, Urgency.ACT, 30),
                        reason(Rule.JAR_STEP, Urgency.RECHECK, 90))));
        Want replace = jarWork(wants, WorkKind.REPLACE_JAR);
        assertThat(replace).isNotNull();
        assertThat(replace.by()).isEqualTo(AS_OF.plusDays(30));
        assertThat(replace.reason()).contains("Seen by JAR_OVER_BASELINE.", "drying out");
        assertThat(wants.asked()).hasSize(1);
    }

    @Test
    void workWithoutRecordIsInvestigated() {
        Wants wants = wants(judgement(
                List.of(),
                List.of(),
                jar(1, Trouble.REPLACED_UNRECORDED, reason(Rule.JAR_READ_APART, Urgency.RECHECK, 90))));
        assertThat(jarWork(wants, WorkKind.INVESTIGATE)).isNotNull();
        assertThat(jarWork(wants, WorkKind.MEASURE_AGAIN)).isNotNull();
    }

    @Test
    void moreThanSixReadingsAreAskedForAtOnce() {
        List<JarJudgement> jars = new ArrayList<>();
        for (int position = 1; position <= 7; position++) {
            jars.add(jar(position, null, reason(Rule.JAR_NOT_READ, Urgency.RECHECK, 90)));
        }
        Wants wants = wants(judgement(List.of(), List.of(), jars.toArray(JarJudgement[]::new)));
        assertThat(wants.asked().stream().filter(Want::raises)).singleElement().satisfies(want -> {
            assertThat(want.key().subject()).isEqualTo(Subject.STRING);
            assertThat(want.reason()).startsWith("7 of its jars and links").contains("jar 7");
        });
    }

    @Test
    void whereTheStringIsToBeTestedOnlyUrgentJarsAreRaised() {
        Advice test = new Advice(Advice.Kind.TEST_CAPACITY, "A rule.", "Test.");
        Wants wants = wants(judgement(
                List.of(test),
                List.of(),
                jar(1, null, reason(Rule.JAR_OVER_BASELINE, Urgency.PLAN, 0)),
                jar(2, null, reason(Rule.JAR_OVER_BASELINE, Urgency.ACT, 30))));
        assertThat(wants.asked().stream()
                        .filter(Want::raises)
                        .map(want -> want.key().subject()))
                .containsExactlyInAnyOrder(Subject.jar(2), Subject.STRING);
        assertThat(jarWork(wants, WorkKind.REPLACE_JAR).raises()).isFalse();
    }

    @Test
    void aTestOfTheLastTwelveMonthsIsEnough() {
        StringJudgement old = judgement(List.of(new Advice(Advice.Kind.TEST_CAPACITY, "A rule.", "Test.")), List.of());
        WorkKey test = new WorkKey(WorkKind.TEST_CAPACITY, Subject.STRING);
        LocalDate today = AS_OF.plusDays(8);
        Wants tested = JudgementWork.of(old, List.of(), today.minusMonths(12).plusDays(1), today);
        assertThat(tested.of(test)).isNull();
        assertThat(tested.excuse(test)).contains("tested on");
        assertThat(JudgementWork.of(old, List.of(), today.minusMonths(12), today)
                        .of(test))
                .isNotNull();
    }

    @Test
    void anOverruleLowersWhatIsAskedOrAsksItself() {
        StringJudgement act =
                judgement(List.of(), List.of(), jar(1, null, reason(Rule.JAR_OVER_BASELINE, Urgency.ACT, 30)));
        WorkKey replace = new WorkKey(WorkKind.REPLACE_JAR, Subject.jar(1));
        Wants clear = wants(act, new Overruled(Subject.jar(1), Urgency.CLEAR, "tested alone"));
        assertThat(clear.asked()).isEmpty();
        assertThat(clear.excuse(replace)).isEqualTo("tested alone");
        Wants recheck = wants(act, new Overruled(Subject.jar(1), Urgency.RECHECK, "read it again"));
        assertThat(jarWork(recheck, WorkKind.MEASURE_AGAIN)).isNotNull();
        assertThat(recheck.excuse(replace)).isEqualTo("read it again");
        Wants plan = wants(act, new Overruled(Subject.jar(1), Urgency.PLAN, "ordered"));
        assertThat(plan.of(replace).urgency()).isEqualTo(Urgency.PLAN);
        Wants more = wants(
                judgement(List.of(), List.of(), jar(1, null)), new Overruled(Subject.jar(1), Urgency.ACT, "it leaks"));
        assertThat(jarWork(more, WorkKind.INVESTIGATE).reason()).isEqualTo("it leaks");
    }

    @Test
    void aLowCellAsksToEqualiseTheStringAndIsNamed() {
        Wants wants = wants(judgement(List.of(), List.of(), jar(1, null, reason(Rule.JAR_VOLTS_LOW, Urgency.PLAN, 0))));
        assertThat(wants.of(new WorkKey(WorkKind.EQUALISE, Subject.STRING)).reason())
                .startsWith("Jar 1: ");
    }

    @ParameterizedTest
    @EnumSource(
            value = RemarkCode.class,
            names = {"OFF_FLOAT", "CURRENT_PAST_CLAMP", "ORDER_SWAPPED", "COPIED"})
    void aRemarkThatSpoilsTheReadingsAsksForOthers(RemarkCode code) {
        Want want = RemarkWork.of(code, "jar 3", AS_OF);
        assertThat(want.key()).isEqualTo(new WorkKey(WorkKind.MEASURE_AGAIN, Subject.STRING));
        assertThat(want.by()).isAfter(AS_OF);
        assertThat(RemarkWork.codes())
                .allSatisfy(any -> assertThat(any.severity()).isIn(Severity.HOLD, Severity.DOUBT));
    }
}
