package org.ohmstead.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
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
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.ledger.BulkLedger;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.rules.NextDate.Governs;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

@ServiceTest
class AssessmentsTest {

    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private BulkLedger bulk;

    @Autowired
    private Assessments assessments;

    @Autowired
    private Programme programme;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private MockMvc mvc;

    private StringView string;

    @BeforeEach
    void aStringOfTwelveJarsIsBuilt() {
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        String code = "ASM-" + ++count;
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
    }

    private static PersonAuthentication signIn(Role role, Reach reach) {
        PersonAuthentication known = new PersonAuthentication(new Person(9, "assess.test", "Test", role, reach));
        SecurityContextHolder.getContext().setAuthentication(known);
        return known;
    }

    private NewSurvey survey(String day, double jarSeven) {
        double[] ohmic = new double[12];
        Arrays.fill(ohmic, 0.41);
        ohmic[6] = jarSeven;
        Instant takenAt = LocalDate.parse(day)
                .atTime(10, 0)
                .atZone(ZoneId.of("Europe/Oslo"))
                .toInstant();
        SurveyFacts facts = SurveyFacts.of(string.id(), takenAt, LocalDate.parse(day), OhmicKind.IMPEDANCE);
        return NewSurvey.of(facts, Readings.ofOhmic(ohmic));
    }

    private long storedRows() {
        return jdbc.sql("select count(*) from string_assessment where string_id = ?")
                .param(string.id())
                .query(Long.class)
                .single();
    }

    @Test
    void aNewStringIsAssessedAsNotSurveyed() {
        AssessmentView view = assessments.latest(string.id());
        assertThat(view.judgement().urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(view.judgement().surveyId()).isNull();
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo(LocalDate.parse("2019-04-01"));
    }

    @Test
    void anAcceptedSurveyIsJudgedAndDatedAtOnce() {
        ledger.accept(survey("2024-05-31", 0.41));
        long id = ledger.accept(survey("2025-05-31", 0.80));
        AssessmentView view = assessments.latest(string.id());
        assertThat(view.judgement().surveyId()).isEqualTo(id);
        assertThat(view.judgement().urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(view.judgement().jars().get(6).changeOnBaseline()).isBetween(0.95, 0.952);
        assertThat(view.judgement().jars()).hasSize(12);
        assertThat(view.judgement().links()).hasSize(13);
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo(LocalDate.parse("2025-06-30"));
        assertThat(programme.nextDate(string.id()).governs()).isEqualTo(Governs.RECHECK);
    }

    @Test
    void judgingAgainChangesNothing() {
        ledger.accept(survey("2024-05-31", 0.41));
        AssessmentView first = assessments.latest(string.id());
        long rows = storedRows();
        assertThat(assessments.assess(string.id())).isEqualTo(first);
        assertThat(storedRows()).isEqualTo(rows);
    }

    @Test
    void aWithdrawnSurveyPutsTheEarlierAssessmentBackInForce() {
        ledger.accept(survey("2024-05-31", 0.41));
        AssessmentView before = assessments.latest(string.id());
        long wrong = ledger.accept(survey("2025-05-31", 0.80));
        ledger.withdraw(wrong, "wrong string");
        assertThat(assessments.latest(string.id())).isEqualTo(before);
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo(LocalDate.parse("2025-05-31"));
    }

    @Test
    void anotherIntervalMovesTheNextDateAndARetiredStringHasNone() {
        ledger.accept(survey("2024-05-31", 0.41));
        StringEntry e = string.entry();
        StringEntry quarterly = new StringEntry(
                e.site(),
                e.name(),
                e.jarType(),
                e.tiers(),
                e.strapsPerLink(),
                e.floatSetpointVoltsPerCell(),
                e.designLoadAmps(),
                e.designMinutes(),
                e.endVolts(),
                e.parallelStrings(),
                e.inServiceOn(),
                3,
                null);
        register.changeString(string.id(), register.string(string.id()).version(), quarterly);
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo(LocalDate.parse("2024-08-31"));
        register.retireString(string.id(), LocalDate.parse("2025-01-01"));
        assertThat(programme.findNextDate(string.id())).isEmpty();
    }

    @Test
    void aWalkJudgesWhatWasLoadedInBulkAndOnlyOnce() {
        bulk.copyIn(Stream.of(survey("2024-05-31", 0.41), survey("2025-05-31", 0.42)));
        RunView run = assessments.reassessEstate();
        assertThat(run.finishedAt()).isNotNull();
        assertThat(run.stringsJudged()).isPositive();
        assertThat(assessments.latest(string.id()).judgement().asOf()).isEqualTo(LocalDate.parse("2025-05-31"));
        assertThat(assessments.reassessEstate().stringsJudged()).isZero();
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo(LocalDate.parse("2026-05-31"));
    }

    @Test
    void twoWalksAtOnceStoreOneAssessment() {
        long before = storedRows();
        bulk.copyIn(Stream.of(survey("2024-05-31", 0.41), survey("2025-05-31", 0.42)));
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        Runnable walk = () -> {
            SecurityContextHolder.getContext().setAuthentication(engineer);
            assessments.reassessEstate();
            SecurityContextHolder.clearContext();
        };
        CompletableFuture.allOf(CompletableFuture.runAsync(walk), CompletableFuture.runAsync(walk))
                .join();
        assertThat(storedRows()).isEqualTo(before + 1);
        assertThat(assessments.latest(string.id()).judgement().asOf()).isEqualTo(LocalDate.parse("2025-05-31"));
    }

    @Test
    void whatLiesOutOfReachDoesNotExist() {
        ledger.accept(survey("2024-05-31", 0.41));
        signIn(Role.ENGINEER, new Reach(false, Set.of(-1L)));
        assertThatThrownBy(() -> assessments.latest(string.id())).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> programme.nextDate(string.id())).isInstanceOf(NotFound.class);
        assertThat(assessments.standings()).isEmpty();
        assertThat(programme.nextDates()).isEmpty();
    }

    @Test
    void aCrewMayNotSendTheWholeEstateThroughTheJudge() {
        signIn(Role.CREW, Reach.EVERYWHERE);
        assertThatThrownBy(() -> assessments.reassessEstate()).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void standingsNameTheMostUrgentFirst() {
        ledger.accept(survey("2024-05-31", 0.41));
        ledger.accept(survey("2025-05-31", 0.80));
        assertThat(assessments.standings())
                .isSortedAccordingTo((a, b) -> b.urgency().compareTo(a.urgency()))
                .anySatisfy(standing -> {
                    assertThat(standing.stringId()).isEqualTo(string.id());
                    assertThat(standing.headline()).contains("jar 7");
                });
    }

    @Test
    void theAssessmentIsServedAsJson() throws Exception {
        ledger.accept(survey("2024-05-31", 0.41));
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        mvc.perform(get("/api/strings/{id}/assessment", string.id()).with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.judgement.urgency").value("CLEAR"))
                .andExpect(jsonPath("$.judgement.jars[6].ohmic").value(0.41))
                .andExpect(jsonPath("$.inputFingerprint").isString());
        mvc.perform(get("/api/strings/{id}/assessment", -1).with(authentication(engineer)))
                .andExpect(status().isNotFound());
    }

    @Test
    void aWalkIsAskedForOnceAndItsProgressIsServed() throws Exception {
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        mvc.perform(post("/api/assessments").with(authentication(engineer)).with(csrf()))
                .andExpect(status().isAccepted())
                .andExpect(jsonPath("$.requestedBy").isString());
        mvc.perform(get("/api/assessments").with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.stringsSeen").isNumber());
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        assertThat(assessments.reassessEstate().finishedAt()).isNotNull();
    }
}
