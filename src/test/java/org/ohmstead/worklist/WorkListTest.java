package org.ohmstead.worklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.NewOverrule;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.capacity.CapacityTests;
import org.ohmstead.capacity.Drawn;
import org.ohmstead.capacity.NewCapacityTest;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.RemakeView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.programme.rules.NextDate.Governs;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.ohmstead.worklist.model.Evidence;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkEvent;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;

/** A string of twelve jars with two straps a link; today is 10 March 2026. */
@ServiceTest
class WorkListTest {

    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static final int HOT = 3;
    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks links;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Assessments assessments;

    @Autowired
    private Overruling overruling;

    @Autowired
    private Programme programme;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private VisitBook visits;

    @Autowired
    private CapacityTests tests;

    @Autowired
    private WorkList work;

    @Autowired
    private WorkKeeping nightly;

    @Autowired
    private Access access;

    @Autowired
    private SettableClock clock;

    @Autowired
    private JdbcClient jdbc;

    private StringView string;

    @BeforeEach
    void aStringWithoutTrouble() {
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        String code = "WRK-" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
        });
        string = register.createString(Entries.string(code, "A", code, 6, 6));
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
        clock.set(SettableClock.START);
    }

    private static PersonAuthentication signIn(Role role, Reach reach) {
        PersonAuthentication known = new PersonAuthentication(new Person(9, "work.test", "Test", role, reach));
        SecurityContextHolder.getContext().setAuthentication(known);
        return known;
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    /** On each of the other links 30 µΩ. */
    private long survey(String on, double hotMicroohms) {
        return survey(on, hotMicroohms, 0.41);
    }

    private long survey(String on, double hotMicroohms, double jarSeven) {
        double[] ohmic = new double[12];
        Arrays.setAll(ohmic, i -> i == 6 ? jarSeven : .41 * (1 + .002 * ((i * 7 + day(on).getMonthValue()) % 5 - 2)));
        double[][] straps = new double[13][2];
        for (int k = 0; k < straps.length; k++) {
            Arrays.fill(straps[k], k == HOT ? hotMicroohms : 30);
        }
        SurveyFacts facts = SurveyFacts.of(
                string.id(), day(on).atTime(10, 0).atZone(OSLO).toInstant(), day(on), OhmicKind.IMPEDANCE);
        double[] none = {};
        return ledger.accept(NewSurvey.of(facts, new Readings(ohmic, none, none, none, straps)));
    }

    /** The link rises over three surveys, the last of them of 2 March. */
    private long aHotLink() {
        survey("2024-09-01", 30);
        survey("2025-03-01", 30);
        survey("2025-09-01", 35);
        return survey("2026-03-02", 48);
    }

    private WorkItemView only(WorkKind kind, Subject.Kind subject, @Nullable Integer unit) {
        List<WorkItemView> found = work.of(string.id()).stream()
                .filter(item ->
                        item.kind() == kind && item.subject() == subject && java.util.Objects.equals(item.unit(), unit))
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private WorkItemView remake() {
        return only(WorkKind.REMAKE_LINK, Subject.Kind.LINK, HOT);
    }

    private List<WorkEvent.Kind> events(WorkItemView item) {
        return work.item(item.id()).events().stream().map(WorkEventView::kind).toList();
    }

    private long storedEvents() {
        return jdbc.sql("select count(*) from work_event e join work_item w on w.id = e.item_id where w.string_id = ?")
                .param(string.id())
                .query(Long.class)
                .single();
    }

    @Test
    void aHotLinkIsRaisedPlannedDoneAndProvenByTheNextSurvey() {
        long asking = aHotLink();
        WorkItemView raised = remake();
        assertThat(raised.state()).isEqualTo(WorkState.RAISED);
        assertThat(raised.urgency()).isEqualTo(Urgency.ACT);
        assertThat(raised.by()).isEqualTo("2026-04-01");
        assertThat(raised.askedSurvey()).isEqualTo(asking);
        assertThat(raised.what()).isEqualTo("link 3|4");
        work.plan(raised.id(), new WorkPlan(day("2026-03-12"), null, "Crew North", "with the switching on Thursday"));
        assertThat(remake().state()).isEqualTo(WorkState.PLANNED);
        clock.tick(Duration.ofDays(2));
        work.done(raised.id(), new WorkReport(day("2026-03-12"), "A. Crew", "lug was loose", 61.0, 24.5));
        assertThat(remake().state()).isEqualTo(WorkState.DONE);
        assertThat(register.blueprint(string.id()).remakes()).singleElement().satisfies(remake -> {
            assertThat(remake.ordinal()).isEqualTo(HOT);
            assertThat(remake.remadeOn()).isEqualTo("2026-03-12");
            assertThat(remake.asFoundMicroohms()).isEqualTo(61.0);
            assertThat(remake.asLeftMicroohms()).isEqualTo(24.5);
        });
        clock.tick(Duration.ofDays(30));
        long clear = survey("2026-04-10", 30);
        WorkItemView proven = remake();
        assertThat(proven.state()).isEqualTo(WorkState.PROVEN);
        assertThat(proven.proof()).isEqualTo(Evidence.survey(clear));
        assertThat(events(proven))
                .containsExactly(
                        WorkEvent.Kind.RAISED, WorkEvent.Kind.PLANNED, WorkEvent.Kind.DONE, WorkEvent.Kind.PROVEN);
    }

    @Test
    void whatIsStillHotAfterTheWorkIsRaisedAgain() {
        aHotLink();
        long id = remake().id();
        work.done(id, new WorkReport(day("2026-03-09"), "A. Crew", "", null, null));
        clock.tick(Duration.ofDays(60));
        survey("2026-04-10", 60);
        survey("2026-04-20", 75);
        WorkItemView again = remake();
        assertThat(again.id()).isEqualTo(id);
        assertThat(again.state()).isEqualTo(WorkState.RAISED);
        assertThat(events(again)).contains(WorkEvent.Kind.NOT_CURED).doesNotContain(WorkEvent.Kind.PROVEN);
    }

    @Test
    void aRemakeInTheRegisterMakesItDoneAndTakenBackThereItIsToBeDoneAgain() {
        aHotLink();
        RemakeView remade = links.recordRemake(Entries.remake(string, HOT, day("2026-03-09")));
        assertThat(remake().state()).isEqualTo(WorkState.DONE);
        assertThat(remake().doneBy()).isEqualTo("the register");
        assertThatThrownBy(() -> work.undo(remake().id(), ""))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("correct it there");
        links.takeBackRemake(remade.id());
        assertThat(remake().state()).isEqualTo(WorkState.RAISED);
        assertThat(events(remake())).containsExactly(WorkEvent.Kind.RAISED, WorkEvent.Kind.DONE, WorkEvent.Kind.UNDONE);
    }

    @Test
    void takingAReportBackTakesItsRemakeBackFromTheRegister() {
        aHotLink();
        work.done(remake().id(), new WorkReport(day("2026-03-09"), "A. Crew", "", 61.0, null));
        work.undo(remake().id(), "wrong link");
        assertThat(remake().state()).isEqualTo(WorkState.RAISED);
        assertThat(register.blueprint(string.id()).remakes()).isEmpty();
    }

    @Test
    void theSameOnceMoreWritesNothing() {
        aHotLink();
        long before = storedEvents();
        assessments.assess(string.id());
        nightly.reckonEstate();
        assertThat(storedEvents()).isEqualTo(before);
    }

    @Test
    void anotherSurveyThatStillAsksChangesTheItemAndSaysSo() {
        aHotLink();
        clock.tick(Duration.ofDays(40));
        long later = survey("2026-04-10", 55);
        assertThat(remake().state()).isEqualTo(WorkState.RAISED);
        assertThat(remake().askedSurvey()).isEqualTo(later);
        assertThat(events(remake())).containsExactly(WorkEvent.Kind.RAISED, WorkEvent.Kind.STILL_ASKED);
    }

    @Test
    void aProofThatIsVoidedLeavesTheItemDoneAndAnAmendedOneProvesItAgain() {
        aHotLink();
        work.done(remake().id(), new WorkReport(day("2026-03-09"), "A. Crew", "", null, null));
        clock.tick(Duration.ofDays(60));
        long clear = survey("2026-04-10", 30);
        assertThat(remake().state()).isEqualTo(WorkState.PROVEN);
        ledger.withdraw(clear, "another string");
        assertThat(remake().state()).isEqualTo(WorkState.DONE);
        assertThat(events(remake())).endsWith(WorkEvent.Kind.PROOF_WITHDRAWN);
        long corrected = survey("2026-04-11", 30);
        assertThat(remake().proof()).isEqualTo(Evidence.survey(corrected));
    }

    @Test
    void whatALaterSurveyNoLongerAsksIsClosedWithTheReason() {
        aHotLink();
        clock.tick(Duration.ofDays(60));
        survey("2026-04-10", 30);
        assertThat(remake().state()).isEqualTo(WorkState.DISMISSED);
        assertThat(remake().closedByService()).isTrue();
        assertThat(remake().closedReason()).isEqualTo("No longer asked since the survey of 2026-04-10.");
    }

    @Test
    void aFindingOfOneReadingIsMeasuredAgainAndTheReadingDoesIt() {
        survey("2025-03-01", 30);
        survey("2026-03-02", 48);
        WorkItemView again = only(WorkKind.MEASURE_AGAIN, Subject.Kind.LINK, HOT);
        assertThat(again.by()).isEqualTo("2026-04-01");
        assertThatThrownBy(() -> work.done(again.id(), WorkReport.of(day("2026-03-09"), "A. Crew", "")))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("hand it in");
        long clear = survey("2026-03-08", 30);
        WorkItemView proven = only(WorkKind.MEASURE_AGAIN, Subject.Kind.LINK, HOT);
        assertThat(proven.state()).isEqualTo(WorkState.PROVEN);
        assertThat(proven.proof()).isEqualTo(Evidence.survey(clear));
        ledger.withdraw(clear, "another string");
        assertThat(only(WorkKind.MEASURE_AGAIN, Subject.Kind.LINK, HOT).state()).isEqualTo(WorkState.RAISED);
    }

    @Test
    void aReplacedJarMakesItsItemDoneAndTheFirstClearReadingOfTheNewOneProvesIt() {
        survey("2024-09-01", 30, .41);
        survey("2025-03-01", 30, .42);
        survey("2025-09-01", 30, .56);
        survey("2026-03-02", 30, .66);
        links.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
        assertThat(only(WorkKind.REPLACE_JAR, Subject.Kind.JAR, 7).urgency()).isEqualTo(Urgency.ACT);
        links.replaceJar(Entries.jar(string, 7, "NEW-" + count, day("2026-03-09")));
        assertThat(only(WorkKind.REPLACE_JAR, Subject.Kind.JAR, 7).state()).isEqualTo(WorkState.DONE);
        clock.tick(Duration.ofDays(60));
        survey("2026-04-10", 30, .41);
        assertThat(only(WorkKind.REPLACE_JAR, Subject.Kind.JAR, 7).state()).isEqualTo(WorkState.PROVEN);
    }

    @Test
    void anOverruleDismissesAndWhenItEndsTheItemIsRaisedAnew() {
        aHotLink();
        OverruleView made = overruling.overrule(
                string.id(),
                new NewOverrule(
                        OverruleView.Subject.LINK, HOT, Urgency.CLEAR, "Read over the bolt.", day("2026-03-20")));
        assertThat(remake().state()).isEqualTo(WorkState.DISMISSED);
        assertThat(remake().closedReason()).contains("Read over the bolt.");
        clock.tick(Duration.ofDays(11));
        nightly.reckonEstate();
        assertThat(made.lastDay()).isEqualTo("2026-03-20");
        assertThat(work.openOf(string.id()))
                .filteredOn(item -> item.kind() == WorkKind.REMAKE_LINK)
                .hasSize(1);
    }

    @Test
    void aDismissalHoldsUntilItsDayAndOneWithoutADayUntilALaterSurveyAsks() {
        aHotLink();
        work.dismiss(remake().id(), "Taken out of service in May.", day("2026-03-20"));
        assessments.assess(string.id());
        nightly.reckonEstate();
        assertThat(work.openOf(string.id())).isEmpty();
        clock.tick(Duration.ofDays(11));
        nightly.reckonEstate();
        WorkItemView anew = work.openOf(string.id()).get(0);
        work.dismiss(anew.id(), "Read over the bolt.", null);
        nightly.reckonEstate();
        assertThat(work.openOf(string.id())).isEmpty();
        survey("2026-03-20", 49);
        assertThat(work.openOf(string.id()))
                .singleElement()
                .satisfies(item -> assertThat(item.kind()).isEqualTo(WorkKind.REMAKE_LINK));
    }

    @Test
    void theLastStepIsTakenBackAndWhatCannotBeSaysWhy() {
        aHotLink();
        long id = remake().id();
        assertThatThrownBy(() -> work.undo(id, "")).isInstanceOf(Conflict.class);
        work.plan(id, new WorkPlan(day("2026-03-12"), null, "", ""));
        work.dismiss(id, "Mistaken.", null);
        assertThat(work.undo(id, "it is wanted after all").state()).isEqualTo(WorkState.PLANNED);
        assertThat(work.undo(id, "").state()).isEqualTo(WorkState.RAISED);
        assertThatThrownBy(() -> work.done(id, WorkReport.of(day("2026-03-11"), "A. Crew", "")))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> work.done(id, WorkReport.of(day("2026-03-01"), "A. Crew", "")))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("2026-03-02");
    }

    @Test
    void twoWhoRaiseTheSameMakeOneItem() {
        aHotLink();
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        NewWork wanted =
                new NewWork(string.id(), WorkKind.INVESTIGATE, Subject.Kind.JAR, 5, Urgency.PLAN, null, "It smells.");
        Runnable raise = () -> {
            SecurityContextHolder.getContext().setAuthentication(engineer);
            try {
                work.raise(wanted);
            } catch (Conflict second) {
                assertThat(second).hasMessageContaining("on the list already");
            } finally {
                SecurityContextHolder.clearContext();
            }
        };
        CompletableFuture.allOf(CompletableFuture.runAsync(raise), CompletableFuture.runAsync(raise))
                .join();
        only(WorkKind.INVESTIGATE, Subject.Kind.JAR, 5);
    }

    @Test
    void twoWalksAtOnceMakeOneItem() {
        aHotLink();
        jdbc.sql(
                        "update work_item set state = 'DISMISSED', closed_reason = 'test', closed_by_service = true where id = ?")
                .param(remake().id())
                .update();
        Runnable walk = () -> nightly.reckonEstate();
        CompletableFuture.allOf(CompletableFuture.runAsync(walk), CompletableFuture.runAsync(walk))
                .join();
        assertThat(work.openOf(string.id())).hasSize(1);
    }

    @Test
    void aReadingThatAPersonDemandsGovernsTheNextDateAndIsNamed() {
        survey("2026-03-02", 30);
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo("2027-03-02");
        WorkItemView wanted = work.raise(new NewWork(
                string.id(),
                WorkKind.MEASURE_AGAIN,
                Subject.Kind.JAR,
                5,
                Urgency.RECHECK,
                day("2026-05-01"),
                "The crew doubts jar 5."));
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo("2026-05-01");
        assertThat(programme.nextDate(string.id()).governs()).isEqualTo(Governs.WORK);
        assertThat(programme.nextDate(string.id()).reason()).contains("The crew doubts jar 5");
        clock.tick(Duration.ofDays(30));
        long read = survey("2026-04-08", 30);
        assertThat(work.item(wanted.id()).item().proof()).isEqualTo(Evidence.survey(read));
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo("2027-04-08");
    }

    @Test
    void anOverdueDutyIsClosedByItsEvidence() {
        keeping.assign(string.id(), null, day("2025-01-10"));
        WorkItemView grounds = work.of(string.id()).stream()
                .filter(item -> "grounds".equals(item.requirement()))
                .findFirst()
                .orElseThrow();
        assertThat(grounds.kind()).isEqualTo(WorkKind.OVERDUE_DUTY);
        assertThat(grounds.overdue()).isTrue();
        long before = storedEvents();
        clock.tick(Duration.ofDays(1));
        nightly.reckonEstate();
        keeping.shorten(string.id(), "rack", 12, day("2026-03-01"));
        assertThat(work.item(grounds.id()).events()).hasSize(1);
        assertThat(storedEvents()).isGreaterThanOrEqualTo(before);
        long visit = visits.record(new NewVisit(
                string.id(),
                day("2026-03-09"),
                "A. Crew",
                "",
                List.of(NewVisit.Item.sound(EvidenceKind.CHECK_GROUNDS))));
        assertThat(work.item(grounds.id()).item().state()).isEqualTo(WorkState.PROVEN);
        assertThat(work.item(grounds.id()).item().proof()).isEqualTo(new Evidence(Evidence.Kind.VISIT, visit));
    }

    @Test
    void whatWasOpenAtTheEndOfAQuarterIsToldAsItStoodThen() {
        aHotLink();
        long id = remake().id();
        work.plan(id, new WorkPlan(day("2026-04-20"), null, "Crew North", "no outage before"));
        clock.tick(Duration.ofDays(42));
        work.done(id, new WorkReport(day("2026-04-20"), "A. Crew", "", null, null));
        survey("2026-04-21", 30);
        assertThat(remake().state()).isEqualTo(WorkState.PROVEN);
        assertThat(work.unresolved(day("2026-03-31"), string.siteCode()))
                .singleElement()
                .satisfies(open -> {
                    assertThat(open.state()).isEqualTo(WorkState.PLANNED);
                    assertThat(open.assignee()).isEqualTo("Crew North");
                    assertThat(open.effort())
                            .extracting(WorkEventView::kind)
                            .containsExactly(WorkEvent.Kind.RAISED, WorkEvent.Kind.PLANNED);
                });
        assertThat(work.unresolved(day("2026-04-21"), string.siteCode())).isEmpty();
        assertThat(work.unresolved(day("2026-03-09"), string.siteCode())).isEmpty();
    }

    @Test
    void aCrewPlansAndReportsInItsReachButDismissesNothing() {
        aHotLink();
        long id = remake().id();
        signIn(Role.CREW, new Reach(false, Set.of(string.areaId())));
        work.plan(id, new WorkPlan(null, null, "Crew North", ""));
        work.done(id, new WorkReport(day("2026-03-09"), "A. Crew", "", 61.0, 24.5));
        assertThat(register.blueprint(string.id()).remakes()).hasSize(1);
        assertThatThrownBy(() -> work.dismiss(id, "x", null)).isInstanceOf(AccessDeniedException.class);
        signIn(Role.CREW, new Reach(false, Set.of(-1L)));
        assertThatThrownBy(() -> work.item(id)).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> work.assign(List.of(id), "me")).isInstanceOf(NotFound.class);
        assertThat(work.items(WorkFilter.EVERYTHING, 0, 50).items()).isEmpty();
        signIn(Role.MANAGER, Reach.EVERYWHERE);
        assertThat(work.item(id).item().state()).isEqualTo(WorkState.DONE);
        assertThatThrownBy(() -> work.assign(List.of(id), "me")).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void aBulkActHappensToAllOrToNone() {
        aHotLink();
        WorkItemView other = work.raise(new NewWork(
                string.id(),
                WorkKind.EQUALISE,
                Subject.Kind.STRING,
                null,
                Urgency.PLAN,
                null,
                "After the long outage."));
        work.dismiss(other.id(), "Done last week.", null);
        assertThatThrownBy(() -> work.assign(List.of(remake().id(), other.id()), "Crew North"))
                .isInstanceOf(Conflict.class);
        assertThat(remake().assignee()).isEmpty();
        work.undo(other.id(), "");
        work.assign(List.of(remake().id(), other.id()), "Crew North");
        assertThat(work.items(WorkFilter.OPEN.at(string.id()), 0, 50).items())
                .extracting(WorkItemView::assignee)
                .containsExactly("Crew North", "Crew North");
    }

    @Test
    void itemsAreFilteredCountedAndPaged() {
        aHotLink();
        WorkFilter here = WorkFilter.EVERYTHING.at(string.id());
        assertThat(work.counts(here)).containsEntry(WorkState.RAISED, 1L).containsEntry(WorkState.PLANNED, 0L);
        assertThat(work.items(here.in(Set.of(WorkState.RAISED)), 0, 1).total()).isEqualTo(1);
        assertThat(work.items(WorkFilter.OPEN.ofSite(string.siteCode()), 0, 10).items())
                .hasSize(1);
        assertThat(work.items(WorkFilter.OPEN.ofArea("NOWHERE"), 0, 10).items()).isEmpty();
        WorkFilter overdue = new WorkFilter(Set.of(), null, null, string.id(), Set.of(), Set.of(), true, null);
        assertThat(work.items(overdue, 0, 10).items()).isEmpty();
        clock.tick(Duration.ofDays(60));
        assertThat(work.items(overdue, 0, 10).items()).hasSize(1);
    }

    private long capacityTest(String on, TestKind kind) {
        NewCapacityTest test = new NewCapacityTest(
                string.id(),
                day(on),
                "A. Crew",
                kind,
                Method.RATE_ADJUSTED,
                new Ratings(37.5, 480, 25, 1.75),
                25,
                null,
                "");
        return tests.record(test, new Drawn(37.5, 470, false, 21.0, new double[0], new double[0]));
    }

    @Test
    void aCapacityTestProvesItsItemUntilItIsVoidedAndAServiceTestDoesNot() {
        survey("2026-03-02", 30);
        WorkItemView wanted = work.raise(new NewWork(
                string.id(), WorkKind.TEST_CAPACITY, Subject.Kind.STRING, null, Urgency.PLAN, null, "Ten years old."));
        assertThatThrownBy(() -> work.done(wanted.id(), WorkReport.of(day("2026-03-10"), "A. Crew", "")))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("capacity test");
        clock.tick(Duration.ofDays(5));
        capacityTest("2026-03-12", TestKind.SERVICE);
        assertThat(work.item(wanted.id()).item().state()).isEqualTo(WorkState.RAISED);
        long id = capacityTest("2026-03-13", TestKind.PERFORMANCE);
        assertThat(work.item(wanted.id()).item().proof()).isEqualTo(new Evidence(Evidence.Kind.CAPACITY_TEST, id));
        tests.voidTest(id, "wrong string");
        assertThat(work.item(wanted.id()).item().state()).isEqualTo(WorkState.RAISED);
        assertThat(events(work.item(wanted.id()).item()))
                .containsExactly(
                        WorkEvent.Kind.RAISED,
                        WorkEvent.Kind.DONE,
                        WorkEvent.Kind.PROVEN,
                        WorkEvent.Kind.PROOF_WITHDRAWN);
    }

    @Test
    void eventsAreNeverChanged() {
        aHotLink();
        assertThatThrownBy(() -> jdbc.sql("delete from work_event").update()).hasMessageContaining("append-only");
    }

    @Test
    void aRetiredStringLeavesNothingToDo() {
        aHotLink();
        register.retireString(string.id(), day("2026-03-10"));
        assertThat(work.openOf(string.id())).isEmpty();
        assertThat(remake().closedReason()).contains("retired");
    }
}
