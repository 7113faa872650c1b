package org.ohmstead.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.programme.NewVisit.Item;
import org.ohmstead.programme.NewVisit.Outcome;
import org.ohmstead.programme.rules.Branch;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.programme.rules.NextDate.Governs;
import org.ohmstead.programme.rules.Requirement;
import org.ohmstead.programme.rules.RulePack;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;

/** A string of twelve vented jars in two tiers, in service since April 2018; today is 10 March 2026. */
@ServiceTest
class ProgrammeTest {

    private static final LocalDate FROM = LocalDate.parse("2025-01-10");
    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Programme programme;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private VisitBook visits;

    @Autowired
    private RulePacks packs;

    @Autowired
    private NextDateKeeping dates;

    @Autowired
    private Access access;

    @Autowired
    private SettableClock clock;

    @Autowired
    private JdbcClient jdbc;

    private StringView string;

    @BeforeEach
    void aVentedStringUnderTheUsualPack() {
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        String code = "PRG-" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
        });
        string = register.createString(Entries.string(code, "A", code, 6, 6));
        keeping.assign(string.id(), null, FROM);
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
        clock.set(SettableClock.START);
    }

    private static void signIn(Role role, Reach reach) {
        Person person = new Person(9, "programme.test", "Test", role, reach);
        SecurityContextHolder.getContext().setAuthentication(new PersonAuthentication(person));
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    private Duty duty(String requirement, @Nullable String asOf) {
        StringDuties all = programme.duties(string.id(), asOf == null ? null : day(asOf));
        return all.duties().stream()
                .filter(duty -> duty.requirement().code().equals(requirement))
                .findFirst()
                .orElseThrow();
    }

    private long survey(String on, int jarsRead, int linksRead) {
        double[] ohmic = new double[12];
        Arrays.setAll(ohmic, i -> i < jarsRead ? 0.41 : Double.NaN);
        double[][] links = new double[13][2];
        for (int k = 0; k < links.length; k++) {
            // a link is read when both its straps are
            links[k] = new double[] {k < linksRead ? 30 : Double.NaN, k < linksRead ? 31 : Double.NaN};
        }
        Instant at = day(on).atTime(10, 0).atZone(ZoneId.of("Europe/Oslo")).toInstant();
        SurveyFacts facts = SurveyFacts.of(string.id(), at, day(on), OhmicKind.IMPEDANCE);
        double[] none = {};
        return ledger.accept(NewSurvey.of(facts, new Readings(ohmic, none, none, none, links)));
    }

    private long visit(String on, EvidenceKind... sound) {
        return visits.record(new NewVisit(
                string.id(),
                day(on),
                "A. Crew",
                "",
                Arrays.stream(sound).map(Item::sound).toList()));
    }

    @Test
    void theUsualPackOfTheTechnologyIsTaken() {
        StringDuties duties = programme.duties(string.id(), null);
        assertThat(duties.pack()).extracting(RulePack::code).isEqualTo("protection-vented");
        assertThat(duties.asOf()).isEqualTo(day("2026-03-10"));
        assertThat(duties.duties())
                .hasSize(10)
                .allSatisfy(duty -> assertThat(duty.lastDone()).isNull());
        assertThat(duty("grounds", "2025-02-01").dueOn()).isEqualTo(day("2025-05-31"));
    }

    @Test
    void aWholeSurveyIsEvidenceAndOneWithASkippedJarIsNot() {
        long whole = survey("2025-03-04", 12, 13);
        survey("2026-01-14", 11, 13);
        Duty performs = duty("performs-as-manufactured", null);
        assertThat(performs.lastDone()).isNotNull();
        assertThat(performs.lastDone().recordId()).isEqualTo(whole);
        assertThat(performs.dueOn()).isEqualTo(day("2026-09-30"));
        assertThat(performs.reason()).contains("11 out of 12 units");
        assertThat(duty("terminal-resistance", null).lastDone().doneOn()).isEqualTo(day("2026-01-14"));
    }

    @Test
    void connectionsCountWhenEveryOneWasRead() {
        survey("2025-03-04", 12, 12);
        Duty intercell = duty("intercell-resistance", null);
        Duty terminals = duty("terminal-resistance", null);
        assertThat(intercell.lastDone()).isNotNull();
        assertThat(terminals.lastDone()).isNull();
        assertThat(terminals.reason()).contains("1 out of 2 units");
    }

    @Test
    void aVisitIsEvidenceUntilItIsVoided() {
        long id = visit("2026-03-09", EvidenceKind.CHECK_GROUNDS, EvidenceKind.CHECK_RACK);
        assertThat(duty("grounds", null).dueOn()).isEqualTo(day("2026-07-31"));
        assertThat(duty("rack", null).dueOn()).isEqualTo(day("2027-09-30"));
        visits.voidVisit(id, "wrong string");
        assertThat(duty("grounds", null).state()).isEqualTo(DutyState.MISSED);
        assertThatThrownBy(() -> visits.voidVisit(id, "again")).isInstanceOf(Conflict.class);
    }

    @Test
    void whatWasFoundIsDoneAllTheSameAndMustBeSaid() {
        NewVisit found = new NewVisit(
                string.id(),
                day("2026-03-09"),
                "A. Crew",
                "",
                List.of(new Item(
                        EvidenceKind.CHECK_GROUNDS, Outcome.FOUND, null, "18 V to earth on the negative side")));
        visits.record(found);
        assertThat(duty("grounds", null).state()).isEqualTo(DutyState.DUE);
        assertThat(visits.visitsOf(string.id()).get(0).findings()).hasSize(1);
        assertThatThrownBy(() -> new Item(EvidenceKind.CHECK_GROUNDS, Outcome.FOUND, null, " "))
                .isInstanceOf(Refused.class);
    }

    @Test
    void aVisitAheadOrBeforeTheStringOrWithoutAnythingIsRefused() {
        assertThatThrownBy(() -> visit("2026-03-11", EvidenceKind.CHECK_RACK)).hasMessageContaining("lies ahead");
        assertThatThrownBy(() -> visit("2018-03-31", EvidenceKind.CHECK_RACK))
                .hasMessageContaining("came into service");
        assertThatThrownBy(() -> visit("2026-03-09")).hasMessageContaining("Nothing was looked at");
    }

    @Test
    void theNextDateIsTheEarliestAndSaysWhichDutyGoverns() {
        survey("2026-02-20", 12, 13);
        visit("2026-02-20", EvidenceKind.CHECK_GROUNDS, EvidenceKind.CHECK_ELECTROLYTE_LEVEL);
        visit("2026-03-02", EvidenceKind.CHECK_DC_SUPPLY_VOLTAGE);
        NextDateView next = programme.nextDate(string.id());
        assertThat(next.dueOn()).isEqualTo(day("2026-06-30"));
        assertThat(next.governs()).isEqualTo(Governs.DUTY);
        assertThat(next.reason()).startsWith("Inspect the electrolyte level: due by 2026-06-30");
        assertThat(next.intervalDueOn()).isEqualTo(day("2027-02-20"));
    }

    @Test
    void aPastDayIsAnsweredAsItWasThen() {
        visit("2025-04-20", EvidenceKind.CHECK_GROUNDS);
        Duty before = duty("grounds", "2025-06-30");
        visit("2025-10-02", EvidenceKind.CHECK_GROUNDS);
        keeping.shorten(string.id(), "grounds", 2, day("2025-09-01"));
        assertThat(duty("grounds", "2025-06-30")).isEqualTo(before);
        assertThat(duty("grounds", null).spans())
                .extracting(span -> span.state())
                .containsExactly(DutyState.ON_TIME, DutyState.LATE, DutyState.MISSED);
        assertThat(programme.duties(string.id(), day("2024-12-31")).pack()).isNull();
    }

    @Test
    void aReportOfAQuarterNamesEveryRequirementWithItsEvidence() {
        long first = visit("2025-04-20", EvidenceKind.CHECK_GROUNDS);
        long second = visit("2025-09-02", EvidenceKind.CHECK_GROUNDS);
        List<DutyLine> lines =
                programme.lines(List.of(string.id()), day("2025-07-01"), day("2025-09-30"), day("2025-09-30"));
        assertThat(lines).extracting(line -> line.requirement().code()).contains("grounds", "rack", "cell-condition");
        assertThat(lines)
                .filteredOn(line -> line.requirement().code().equals("grounds"))
                .extracting(DutyLine::state, DutyLine::dueOn, DutyLine::doneOn, ProgrammeTest::record)
                .containsExactly(
                        tuple(DutyState.LATE, day("2025-08-31"), day("2025-09-02"), second),
                        tuple(DutyState.DUE, day("2026-01-31"), null, null));
        assertThat(first).isLessThan(second);
        signIn(Role.ENGINEER, new Reach(false, Set.of()));
        assertThat(programme.lines(List.of(string.id()), day("2025-07-01"), day("2025-09-30"), null))
                .isEmpty();
    }

    private static @Nullable Long record(DutyLine line) {
        return line.evidence() == null ? null : line.evidence().recordId();
    }

    @Test
    void theOwnersIntervalMayOnlyBeShorter() {
        assertThatThrownBy(() -> keeping.shorten(string.id(), "grounds", 5, FROM))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("shorter than 4 calendar months");
        visit("2026-02-20", EvidenceKind.CHECK_GROUNDS);
        keeping.shorten(string.id(), "grounds", 1, FROM);
        Duty duty = duty("grounds", null);
        assertThat(duty.dueOn()).isEqualTo(day("2026-03-31"));
        assertThat(duty.standardDueOn()).isEqualTo(day("2026-06-30"));
        keeping.shorten(string.id(), "grounds", null, day("2026-03-01"));
        assertThat(duty("grounds", null).dueOn()).isEqualTo(day("2026-06-30"));
    }

    @Test
    void anotherBranchIsElected() {
        keeping.elect(string.id(), "performs-as-manufactured", "capacity-test", FROM);
        assertThat(duty("performs-as-manufactured", null).dueOn()).isEqualTo(day("2031-12-31"));
        assertThatThrownBy(() -> keeping.elect(string.id(), "performs-as-manufactured", "guess", FROM))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("[ohmic, capacity-test]");
    }

    @Test
    void anotherPackThatAsksTheSameStartsNothingAnew() {
        RulePack copy = copy("own-" + count, "grounds", null);
        packs.save(copy);
        keeping.assign(string.id(), copy.code(), day("2026-02-01"));
        assertThat(duty("grounds", null).state()).isEqualTo(DutyState.MISSED);
        assertThat(duty("grounds", null).standardDueOn()).isEqualTo(day("2025-05-31"));
    }

    @Test
    void anOwnPackKeepsTheMaximumBesideItsShorterInterval() {
        RulePack copy = copy("short-" + count, "grounds", 3);
        packs.save(copy);
        keeping.assign(string.id(), copy.code(), FROM);
        visit("2026-02-20", EvidenceKind.CHECK_GROUNDS);
        assertThat(duty("grounds", null).dueOn()).isEqualTo(day("2026-05-31"));
        assertThat(duty("grounds", null).standardDueOn()).isEqualTo(day("2026-06-30"));
        RulePack second = new RulePack(
                copy.code(),
                0,
                "Shorter still",
                day("2026-03-01"),
                copy.technologies(),
                copy.source(),
                copy.note(),
                copy("x", "grounds", 1).requirements());
        assertThat(packs.save(second).version()).isEqualTo(2);
        assertThat(duty("grounds", null).dueOn()).isEqualTo(day("2026-03-31"));
        assertThat(duty("grounds", "2026-02-28").dueOn()).isEqualTo(day("2026-05-31"));
        assertThat(packs.versionsOf(copy.code())).hasSize(2);
    }

    private static RulePack copy(String code, String requirement, @Nullable Integer months) {
        RulePack pack = BuiltInPacksTest.pack("protection-vented");
        List<Requirement> requirements = pack.requirements().stream()
                .map(asked -> asked.code().equals(requirement) ? shortened(asked, months) : asked)
                .toList();
        return new RulePack(
                code, 0, "Ours", day("2025-01-01"), pack.technologies(), pack.source(), pack.note(), requirements);
    }

    private static Requirement shortened(Requirement asked, @Nullable Integer months) {
        List<Branch> branches = asked.branches().stream()
                .map(branch -> branch.isPeriodic() ? branch.withOwnMonths(months) : branch)
                .toList();
        return new Requirement(asked.code(), asked.activity(), asked.clause(), asked.provenance(), branches);
    }

    @Test
    void aBuiltInPackIsCopiedNotChanged() {
        assertThatThrownBy(() -> packs.save(BuiltInPacksTest.pack("protection-vented")))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("give your copy another code");
        assertThatThrownBy(() -> packs.save(copy("Not A Code", "grounds", null)))
                .isInstanceOf(Refused.class);
    }

    @Test
    void aPackForAnotherTechnologyIsRefused() {
        assertThatThrownBy(() -> keeping.assign(string.id(), "protection-nickel-cadmium", FROM))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("not meant for vented lead-acid");
        assertThatThrownBy(() -> keeping.assign(string.id(), "none-such", FROM)).isInstanceOf(NotFound.class);
    }

    @Test
    void aWaiverExcusesWithItsReasonAndOnlyTheRightPeopleGrantIt() {
        keeping.waive(string.id(), "grounds", day("2026-03-10"), day("2026-04-30"), "pass closed by snow");
        assertThat(duty("grounds", null).state()).isEqualTo(DutyState.WAIVED);
        assertThat(duty("grounds", "2026-05-01").state()).isEqualTo(DutyState.MISSED);
        assertThat(programme.nextDate(string.id()).reason()).contains("Waived for now: Inspect for unintentional");
        signIn(Role.MANAGER, Reach.EVERYWHERE);
        assertThatThrownBy(() -> keeping.waive(string.id(), "grounds", day("2026-03-10"), day("2026-04-30"), "for me"))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void theNightlyJobTellsAMissAsAMiss() {
        survey("2026-02-20", 12, 13);
        jdbc.sql("update next_date set reason = 'of yesterday' where string_id = ?")
                .param(string.id())
                .update();
        clock.set(Instant.parse("2026-07-02T10:00:00Z"));
        dates.recomputeEstate();
        assertThat(programme.nextDate(string.id()).reason()).contains("was due by");
    }

    @Test
    void everyDecisionIsAudited() {
        keeping.elect(string.id(), "performs-as-manufactured", "capacity-test", FROM);
        keeping.shorten(string.id(), "grounds", 2, FROM);
        keeping.waive(string.id(), "rack", day("2026-03-10"), day("2026-04-30"), "snow");
        assertThat(jdbc.sql(
                                "select action from audit_entry where subject_kind = 'string' and subject_id = ? order by id")
                        .param(String.valueOf(string.id()))
                        .query(String.class)
                        .list())
                .contains("pack assigned", "branch elected", "own interval set", "duty waived");
    }

    @Test
    void dutiesOutOfReachDoNotExist() {
        long id = visit("2026-02-20", EvidenceKind.CHECK_GROUNDS);
        assertThat(programme.dutiesOfEstate(null))
                .anySatisfy(duties -> assertThat(duties.stringId()).isEqualTo(string.id()));
        signIn(Role.ENGINEER, new Reach(false, Set.of(-1L)));
        assertThat(programme.dutiesOfEstate(null)).isEmpty();
        assertThatThrownBy(() -> programme.duties(string.id(), null)).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> keeping.assign(string.id(), null, FROM)).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> visit("2026-02-21", EvidenceKind.CHECK_RACK)).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> visits.visit(id)).isInstanceOf(NotFound.class);
    }
}
