package org.ohmstead.programme.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class DutiesTest {

    private static final Interval FOUR_MONTHS = Interval.ofMonths(4, Counting.END_OF_MONTH);
    private static final Requirement GROUNDS = requirement(
            periodic("periodic", EvidenceKind.CHECK_GROUNDS, FOUR_MONTHS),
            new Branch("monitored", "Monitored and alarmed", Set.of(), null, null, null));
    private static final Requirement PERFORMS = requirement(
            periodic("ohmic", EvidenceKind.READ_OHMIC, Interval.ofMonths(18, Counting.END_OF_MONTH)),
            periodic("capacity-test", EvidenceKind.CAPACITY_TEST, Interval.ofYears(6, Counting.END_OF_YEAR)));

    private static Requirement requirement(Branch... branches) {
        return new Requirement("it", "Do it", "clause", Provenance.RECALLED, List.of(branches));
    }

    private static Branch periodic(String code, EvidenceKind kind, Interval interval) {
        return new Branch(code, code, Set.of(kind), 1.0, interval, null);
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    private static Evidence grounds(String on) {
        return Evidence.whole(EvidenceKind.CHECK_GROUNDS, day(on), 7);
    }

    private static DutyCase since(String day, Evidence... done) {
        return DutyCase.of(day(day), List.of(done));
    }

    private static Span only(Duty duty) {
        assertThat(duty.spans()).hasSize(1);
        return duty.spans().get(0);
    }

    @Test
    void aDutyNeverDoneCountsFromTheDayItBegan() {
        Duty duty = Duties.of(GROUNDS, since("2024-01-10"), day("2024-05-31"));
        assertThat(duty.state()).isEqualTo(DutyState.DUE);
        assertThat(duty.dueOn()).isEqualTo(day("2024-05-31"));
        assertThat(duty.lastDone()).isNull();
        assertThat(duty.reason()).isEqualTo("Due by 2024-05-31, which is today.");
    }

    /** A day late counts as a miss: published enforcement cases on the protection-system standard. */
    @Test
    void theDayAfterTheDueDayIsAMiss() {
        Duty duty = Duties.of(GROUNDS, since("2024-01-10"), day("2024-06-01"));
        assertThat(duty.state()).isEqualTo(DutyState.MISSED);
        assertThat(duty.reason()).contains("was due by 2024-05-31, 1 day ago");
    }

    @Test
    void doneOnTheDueDayIsOnTimeAndADayLaterIsLate() {
        assertThat(Duties.of(GROUNDS, since("2024-01-10", grounds("2024-05-31")), day("2024-07-01"))
                        .spans()
                        .get(0)
                        .state())
                .isEqualTo(DutyState.ON_TIME);
        Span late = Duties.of(GROUNDS, since("2024-01-10", grounds("2024-06-01")), day("2024-07-01"))
                .spans()
                .get(0);
        assertThat(late.state()).isEqualTo(DutyState.LATE);
        assertThat(late.reason()).isEqualTo("Done on 2024-06-01 (visit 7), 1 day after 2024-05-31.");
    }

    @Test
    void everyCompletionStartsANewSpan() {
        Duty duty = Duties.of(
                GROUNDS, since("2024-01-10", grounds("2024-03-05"), grounds("2024-08-09")), day("2024-09-01"));
        assertThat(duty.spans())
                .extracting(Span::from, Span::dueOn, Span::state)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(day("2024-01-10"), day("2024-05-31"), DutyState.ON_TIME),
                        org.assertj.core.groups.Tuple.tuple(day("2024-03-05"), day("2024-07-31"), DutyState.LATE),
                        org.assertj.core.groups.Tuple.tuple(day("2024-08-09"), day("2024-12-31"), DutyState.DUE));
    }

    @Test
    void whatWasDoneBeforeTheProgrammeBeganIsCountedFrom() {
        Duty duty = Duties.of(GROUNDS, since("2024-03-01", grounds("2024-01-20")), day("2024-05-01"));
        assertThat(only(duty).from()).isEqualTo(day("2024-01-20"));
        assertThat(duty.dueOn()).isEqualTo(day("2024-05-31"));
    }

    @Test
    void aSurveyThatSkipsOneUnitDoesNotCountAndSaysSo() {
        Evidence survey = new Evidence(EvidenceKind.READ_OHMIC, day("2025-02-01"), 59, 60, 12);
        Duty duty = Duties.of(PERFORMS, since("2024-01-10", survey), day("2025-03-01"));
        assertThat(duty.lastDone()).isNull();
        assertThat(duty.reason())
                .contains("The survey 12 of 2025-02-01 does not count: it has the ohmic value of 59 out of 60 units.");
    }

    @Test
    void oneUnitInTenIsEnoughWhereThatIsAsked() {
        Branch tenth = new Branch("periodic", "one in ten", Set.of(EvidenceKind.READ_CELSIUS), 0.1, FOUR_MONTHS, null);
        Evidence six = new Evidence(EvidenceKind.READ_CELSIUS, day("2024-02-01"), 6, 60, 1);
        Evidence five = new Evidence(EvidenceKind.READ_CELSIUS, day("2024-02-01"), 5, 60, 1);
        assertThat(Duties.of(requirement(tenth), since("2024-01-01", six), day("2024-03-01"))
                        .lastDone())
                .isEqualTo(six);
        assertThat(Duties.of(requirement(tenth), since("2024-01-01", five), day("2024-03-01"))
                        .lastDone())
                .isNull();
    }

    @Test
    void anEitherOrIsMetByTheElectedBranchOnly() {
        Evidence test = Evidence.whole(EvidenceKind.CAPACITY_TEST, day("2024-02-24"), 3);
        Evidence survey = Evidence.whole(EvidenceKind.READ_OHMIC, day("2024-05-01"), 4);
        List<Election> capacity = List.of(new Election(day("2020-01-01"), "capacity-test"));
        DutyCase known = new DutyCase(day("2020-01-01"), List.of(test, survey), capacity, List.of(), List.of());
        Duty duty = Duties.of(PERFORMS, known, day("2024-06-01"));
        assertThat(duty.lastDone()).isEqualTo(test);
        assertThat(duty.dueOn()).isEqualTo(day("2030-12-31"));
        Duty byDefault = Duties.of(PERFORMS, since("2020-01-01", test, survey), day("2024-06-01"));
        assertThat(byDefault.lastDone()).isEqualTo(survey);
        assertThat(byDefault.dueOn()).isEqualTo(day("2025-11-30"));
    }

    @Test
    void electingAnotherBranchNeverMovesARunningDeadlineAway() {
        Evidence survey = Evidence.whole(EvidenceKind.READ_OHMIC, day("2024-01-10"), 4);
        DutyCase known = new DutyCase(
                day("2023-01-01"),
                List.of(survey),
                List.of(new Election(day("2025-01-01"), "capacity-test")),
                List.of(),
                List.of());
        assertThat(Duties.of(PERFORMS, known, day("2025-02-01")).dueOn()).isEqualTo(day("2025-07-31"));
    }

    @Test
    void electingAStricterBranchBringsTheDeadlineForward() {
        DutyCase known = new DutyCase(
                day("2023-01-01"),
                List.of(),
                List.of(new Election(day("2023-01-01"), "capacity-test"), new Election(day("2024-01-10"), "ohmic")),
                List.of(),
                List.of());
        assertThat(Duties.of(PERFORMS, known, day("2024-02-01")).dueOn()).isEqualTo(day("2025-07-31"));
    }

    @Test
    void monitoringRemovesThePeriodicActivityWhileItLasts() {
        List<Election> elections =
                List.of(new Election(day("2024-03-01"), "monitored"), new Election(day("2025-03-10"), "periodic"));
        DutyCase known = new DutyCase(day("2024-01-10"), List.of(), elections, List.of(), List.of());
        Duty meanwhile = Duties.of(GROUNDS, known, day("2024-12-31"));
        assertThat(meanwhile.state()).isEqualTo(DutyState.MONITORED);
        assertThat(meanwhile.dueOn()).isNull();
        assertThat(meanwhile.spans()).isEmpty();
        assertThat(Duties.of(GROUNDS, known, day("2025-04-01")).dueOn()).isEqualTo(day("2025-07-31"));
    }

    @Test
    void monitoringDoesNotHideWhatWasMissedBefore() {
        List<Election> elections = List.of(new Election(day("2024-08-01"), "monitored"));
        DutyCase known = new DutyCase(day("2024-01-10"), List.of(), elections, List.of(), List.of());
        assertThat(only(Duties.of(GROUNDS, known, day("2024-12-31"))).state()).isEqualTo(DutyState.MISSED);
    }

    @Test
    void theOwnersShorterIntervalStandsBesideTheStandards() {
        DutyCase known = new DutyCase(
                day("2024-01-10"), List.of(), List.of(), List.of(new OwnInterval(day("2024-01-10"), 2)), List.of());
        Duty duty = Duties.of(GROUNDS, known, day("2024-04-15"));
        assertThat(duty.dueOn()).isEqualTo(day("2024-03-31"));
        assertThat(duty.standardDueOn()).isEqualTo(day("2024-05-31"));
        assertThat(duty.state()).isEqualTo(DutyState.DUE);
        assertThat(only(duty).ownState()).isEqualTo(DutyState.MISSED);
    }

    @Test
    void aWaiverExcusesTheSpanItWasGrantedInAndMovesNoDueDay() {
        Waiver waiver = new Waiver(day("2024-05-20"), day("2024-07-31"), "road closed by a slide");
        DutyCase known = new DutyCase(day("2024-01-10"), List.of(), List.of(), List.of(), List.of(waiver));
        Duty duty = Duties.of(GROUNDS, known, day("2024-07-31"));
        assertThat(duty.state()).isEqualTo(DutyState.WAIVED);
        assertThat(duty.standardDueOn()).isEqualTo(day("2024-05-31"));
        assertThat(duty.reason()).contains("road closed by a slide").contains("stays 2024-05-31");
        assertThat(Duties.of(GROUNDS, known, day("2024-08-01")).state()).isEqualTo(DutyState.MISSED);
        assertThat(Duties.of(GROUNDS, known, day("2024-05-19")).state()).isEqualTo(DutyState.DUE);
    }

    @Test
    void aWaiverOfThisSpanDoesNotExcuseAnEarlierOne() {
        Waiver waiver = new Waiver(day("2024-09-01"), day("2030-01-01"), "because");
        DutyCase known =
                new DutyCase(day("2024-01-10"), List.of(grounds("2024-07-09")), List.of(), List.of(), List.of(waiver));
        Duty duty = Duties.of(GROUNDS, known, day("2024-12-31"));
        assertThat(duty.spans()).extracting(Span::state).containsExactly(DutyState.LATE, DutyState.WAIVED);
    }

    @Test
    void aReportOfAQuarterNamesWhatFellDueOrWasDoneInIt() {
        Duty duty = Duties.of(
                GROUNDS, since("2024-01-10", grounds("2024-03-05"), grounds("2024-08-09")), day("2024-12-31"));
        assertThat(duty.spansBetween(day("2024-07-01"), day("2024-09-30")))
                .extracting(Span::doneOn)
                .containsExactly(day("2024-08-09"));
        assertThat(duty.spansBetween(day("2024-04-01"), day("2024-06-30")))
                .extracting(Span::dueOn)
                .containsExactly(day("2024-05-31"));
    }

    /** Random histories: what happens later changes nothing of what was said before. */
    @Test
    void laterEvidenceChangesNoEarlierAnswer() {
        Random random = new Random(5);
        for (int round = 0; round < 400; round++) {
            DutyCase whole = randomCase(random);
            LocalDate asOf = whole.since().plusDays(random.nextInt(2000));
            DutyCase known = whole.asOf(asOf);
            assertThat(Duties.of(PERFORMS, whole, asOf)).isEqualTo(Duties.of(PERFORMS, known, asOf));
        }
    }

    /** The same answers as of walking through the calendar day by day. */
    @Test
    void statesAreThoseOfAWalkDayByDay() {
        Random random = new Random(6);
        for (int round = 0; round < 200; round++) {
            LocalDate since = day("2019-01-01").plusDays(random.nextInt(400));
            Set<LocalDate> done = new TreeSet<>();
            for (int visit = random.nextInt(9); visit > 0; visit--) {
                done.add(since.plusDays(1 + random.nextInt(1200)));
            }
            LocalDate asOf = since.plusDays(random.nextInt(1300));
            Evidence[] history = done.stream().map(on -> grounds(on.toString())).toArray(Evidence[]::new);
            assertThat(Duties.of(GROUNDS, since(since.toString(), history), asOf).spans().stream()
                            .map(Span::state))
                    .containsExactlyElementsOf(byWalking(since, done, asOf));
        }
    }

    private static List<DutyState> byWalking(LocalDate since, Set<LocalDate> done, LocalDate asOf) {
        List<DutyState> states = new ArrayList<>();
        int monthOfCompletion = month(since);
        for (LocalDate day = since.plusDays(1); !day.isAfter(asOf); day = day.plusDays(1)) {
            if (done.contains(day)) {
                states.add(month(day) - monthOfCompletion <= 4 ? DutyState.ON_TIME : DutyState.LATE);
                monthOfCompletion = month(day);
            }
        }
        states.add(month(asOf) - monthOfCompletion <= 4 ? DutyState.DUE : DutyState.MISSED);
        return states;
    }

    private static int month(LocalDate day) {
        return 12 * day.getYear() + day.getMonthValue();
    }

    @Test
    void nobodyIsEverShownADayLaterThanTheStandards() {
        Random random = new Random(8);
        for (int round = 0; round < 400; round++) {
            DutyCase known = randomCase(random);
            Duty duty = Duties.of(PERFORMS, known, known.since().plusDays(random.nextInt(2000)));
            Span running = duty.running();
            assertThat(running).isNotNull();
            assertThat(duty.dueOn()).isBeforeOrEqualTo(running.dueOn());
            NextDates.Survey survey = new NextDates.Survey(known.since(), null, 72, null, null);
            if (duty.state() != DutyState.WAIVED) {
                assertThat(NextDates.next(survey, List.of(duty)).dueOn()).isBeforeOrEqualTo(running.dueOn());
            }
        }
    }

    private static DutyCase randomCase(Random random) {
        LocalDate since = day("2016-01-01").plusDays(random.nextInt(700));
        List<Evidence> history = new ArrayList<>();
        for (int i = random.nextInt(10); i > 0; i--) {
            EvidenceKind kind = random.nextBoolean() ? EvidenceKind.READ_OHMIC : EvidenceKind.CAPACITY_TEST;
            history.add(new Evidence(kind, any(since, random), random.nextInt(4) == 0 ? 59 : 60, 60, i));
        }
        return new DutyCase(
                since,
                history,
                Stream.generate(() ->
                                new Election(any(since, random), random.nextBoolean() ? "ohmic" : "capacity-test"))
                        .limit(random.nextInt(3))
                        .toList(),
                Stream.generate(() -> new OwnInterval(any(since, random), months(random)))
                        .limit(random.nextInt(3))
                        .toList(),
                Stream.generate(() -> any(since, random))
                        .limit(random.nextInt(2))
                        .map(granted -> new Waiver(
                                granted,
                                granted.plusDays(90),
                                "because",
                                random.nextBoolean() ? null : granted.plusDays(random.nextInt(90))))
                        .toList());
    }

    private static @Nullable Integer months(Random random) {
        return random.nextInt(4) == 0 ? null : 1 + random.nextInt(17);
    }

    private static LocalDate any(LocalDate since, Random random) {
        return since.plusDays(random.nextInt(2200) - 200L);
    }
}
