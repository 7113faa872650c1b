package org.ohmstead.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.assessment.OverruleView.Subject;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.overview.EstateOverview;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

@ServiceTest
class OverrulingTest {

    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Assessments assessments;

    @Autowired
    private Overruling overruling;

    @Autowired
    private StringReplay replay;

    @Autowired
    private ForecastStates states;

    @Autowired
    private Access access;

    @Autowired
    private EstateOverview wall;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc mvc;

    private StringView string;
    private LocalDate today;

    @BeforeEach
    void aStringWhoseJarSevenAsksToAct() {
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        String code = "OVR-" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
        });
        string = register.createString(Entries.string(code, "A", code, 6, 6));
        today = LocalDate.ofInstant(clock.instant(), OSLO);
        List.of(.41, .42, .45, .52, .66).forEach(new java.util.function.Consumer<>() {
            private int n;

            @Override
            public void accept(Double jarSeven) {
                ledger.accept(survey(today.minusMonths(30L - 6 * n++), jarSeven));
            }
        });
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    private static PersonAuthentication signIn(Role role, Reach reach) {
        PersonAuthentication known = new PersonAuthentication(new Person(9, "overrule.test", "Test", role, reach));
        SecurityContextHolder.getContext().setAuthentication(known);
        return known;
    }

    private NewSurvey survey(LocalDate day, double jarSeven) {
        double[] ohmic = new double[12];
        Arrays.setAll(ohmic, i -> .41 * (1 + .002 * ((i * 7 + day.getMonthValue()) % 5 - 2)));
        ohmic[6] = jarSeven;
        SurveyFacts facts =
                SurveyFacts.of(string.id(), day.atTime(10, 0).atZone(OSLO).toInstant(), day, OhmicKind.IMPEDANCE);
        return NewSurvey.of(facts, Readings.ofOhmic(ohmic));
    }

    private NewOverrule jarSeven(Urgency urgency, LocalDate lastDay) {
        return new NewOverrule(Subject.JAR, 7, urgency, "Tested alone at 96 % on Tuesday.", lastDay);
    }

    private Asked asked() {
        return overruling.asked(assessments.latest(string.id()).judgement());
    }

    private StringStanding standing() {
        return assessments.standings().stream()
                .filter(one -> one.stringId() == string.id())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anOverruledJarIsHeardEverywhereAndTheEnginesOwnWordStaysBesideIt() throws Exception {
        assertThat(standing().urgency()).isEqualTo(Urgency.ACT);
        overruling.overrule(string.id(), jarSeven(Urgency.CLEAR, today.plusDays(60)));
        assertThat(asked().urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(asked().judgement().urgency()).isEqualTo(Urgency.ACT);
        assertThat(standing().urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(standing().headline()).contains("Overruled in part: jar 7");
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        mvc.perform(get("/strings/{id}/jars/7", string.id()).with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.containsString("Tested alone at 96 % on Tuesday.")))
                .andExpect(content().string(Matchers.containsString("The engine said Act then and says Act now")));
        assertThat(jdbc.sql("select count(*) from audit_entry where action = 'judgement overruled' and subject_id = ?")
                        .param(String.valueOf(string.id()))
                        .query(Integer.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void itEndsByItselfAfterItsLastDayAtTheSite() {
        NewOverrule brief = jarSeven(Urgency.RECHECK, today.plusDays(1));
        OverruleView made = overruling.overrule(string.id(), brief);
        assertThat(made.holdsOn(today.plusDays(1))).isTrue();
        assertThat(made.holdsOn(today.plusDays(2))).isFalse();
        Asked later =
                Asked.of(assessments.latest(string.id()).judgement(), overruling.of(string.id()), today.plusDays(2));
        assertThat(later.urgency()).isEqualTo(Urgency.ACT);
    }

    @Test
    void itEndsWithTheJarItWasMeantFor() {
        overruling.overrule(string.id(), jarSeven(Urgency.CLEAR, today.plusDays(60)));
        jdbc.sql("update overrule set unit_since = unit_since - 1 where string_id = ?")
                .param(string.id())
                .update();
        assertThat(asked().inForce()).isEmpty();
    }

    @Test
    void aNewOneTakesTheFormersPlaceAndAnyCanBeEndedEarly() {
        OverruleView first = overruling.overrule(string.id(), jarSeven(Urgency.CLEAR, today.plusDays(60)));
        OverruleView second = overruling.overrule(string.id(), jarSeven(Urgency.PLAN, today.plusDays(90)));
        assertThat(overruling.of(string.id())).extracting(OverruleView::id).containsExactly(second.id(), first.id());
        assertThat(overruling.of(string.id()).get(1).endedBy()).isEqualTo("overrule.test");
        assertThat(asked().urgency()).isEqualTo(Urgency.PLAN);
        overruling.end(second.id());
        assertThat(asked().urgency()).isEqualTo(Urgency.ACT);
    }

    @Test
    void aWholeStringCanBeOverruledToo() {
        overruling.overrule(
                string.id(),
                new NewOverrule(Subject.STRING, null, Urgency.PLAN, "Renewed in May.", today.plusDays(60)));
        assertThat(standing().urgency()).isEqualTo(Urgency.PLAN);
        assertThat(standing().headline()).contains("the engine says Act", "Renewed in May.");
        assertThat(wall.line().stream().filter(tile -> tile.stringId() == string.id()))
                .singleElement()
                .satisfies(tile -> {
                    assertThat(tile.urgency()).isEqualTo(Urgency.PLAN);
                    assertThat(tile.headline()).contains("the engine says Act", "Renewed in May.");
                });
    }

    @Test
    void withoutReasonOrWithAFarOrPastDayOrWithNothingToOverruleItIsRefused() {
        List.of(
                        new NewOverrule(Subject.JAR, 7, Urgency.CLEAR, " ", today.plusDays(5)),
                        new NewOverrule(Subject.JAR, 7, Urgency.CLEAR, "x", today.minusDays(1)),
                        new NewOverrule(Subject.JAR, 7, Urgency.CLEAR, "x", today.plusYears(3)),
                        new NewOverrule(Subject.STRING, 7, Urgency.CLEAR, "x", today.plusDays(5)),
                        new NewOverrule(Subject.JAR, 7, Urgency.ACT, "x", today.plusDays(5)))
                .forEach(wrong -> assertThatThrownBy(() -> overruling.overrule(string.id(), wrong))
                        .isInstanceOf(Refused.class));
        assertThatThrownBy(() -> overruling.overrule(
                        string.id(), new NewOverrule(Subject.JAR, 13, Urgency.CLEAR, "x", today.plusDays(5))))
                .isInstanceOf(NotFound.class);
    }

    @Test
    void onlyWhoMayOverruleDoesAndOnlyInReach() {
        signIn(Role.CREW, Reach.EVERYWHERE);
        assertThatThrownBy(() -> overruling.overrule(string.id(), jarSeven(Urgency.CLEAR, today.plusDays(5))))
                .isInstanceOf(AccessDeniedException.class);
        signIn(Role.ENGINEER, new Reach(false, Set.of(987654L)));
        assertThatThrownBy(() -> overruling.overrule(string.id(), jarSeven(Urgency.CLEAR, today.plusDays(5))))
                .isInstanceOf(NotFound.class);
    }

    @Test
    void formAndRestDoTheSame() throws Exception {
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        mvc.perform(post("/strings/{id}/overrule", string.id())
                        .with(authentication(engineer))
                        .with(csrf())
                        .param("subject", "JAR")
                        .param("unit", "7")
                        .param("urgency", "PLAN")
                        .param("reason", "Ordered.")
                        .param("lastDay", today.plusDays(40).toString()))
                .andExpect(redirectedUrl("/strings/" + string.id() + "/jars/7"));
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        long id = overruling.of(string.id()).get(0).id();
        mvc.perform(post("/overrules/{id}/end", id)
                        .with(authentication(engineer))
                        .with(csrf()))
                .andExpect(redirectedUrl("/strings/" + string.id() + "/jars/7"));
        String body = "{\"subject\":\"JAR\",\"unit\":7,\"urgency\":\"CLEAR\",\"reason\":\"Tested.\",\"lastDay\":\""
                + today.plusDays(9) + "\"}";
        mvc.perform(post("/api/strings/{id}/overrules", string.id())
                        .with(authentication(engineer))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.insteadOf").value("ACT"));
    }

    @Test
    void pagesOfStringJarLinkAndReplayShowTheForecast() throws Exception {
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        mvc.perform(get("/strings/{id}", string.id()).with(authentication(engineer)))
                .andExpect(content().string(Matchers.containsString("Fails within a year: ")))
                .andExpect(content().string(Matchers.containsString("Before you believe this:")));
        mvc.perform(get("/strings/{id}/jars/7", string.id()).with(authentication(engineer)))
                .andExpect(content().string(Matchers.containsString("When it may pass its limit")))
                .andExpect(content().string(Matchers.containsString("Nine in ten by")));
        mvc.perform(get("/strings/{id}/links/3", string.id()).with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.not(Matchers.containsString("Nine in ten by"))));
        mvc.perform(get("/strings/{id}/replay", string.id()).with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.containsString("what would we have said then?")));
    }

    /** No look-ahead: the replay of a day is what was stored on that day. */
    @Test
    void theReplayOfTheLastSurveyIsTheAssessmentInForceAndEarlierOnesKnowNothingLater() {
        List<ReplayedDay> days = replay.of(string.id());
        assertThat(days).hasSize(5);
        assertThat(days.get(0).headline())
                .isEqualTo(assessments.latest(string.id()).judgement().headline());
        long last = days.get(0).surveyId();
        ledger.withdraw(last, "test");
        assertThat(replay.of(string.id())).isEqualTo(days.subList(1, 5));
    }

    @Test
    void theStoredStateAfterAWithdrawalIsTheOneOfTheSurveysLeft() {
        byte[] all = states.of(List.of(string.id())).get(string.id()).state();
        long third = ledger.surveysOf(string.id()).get(2).id();
        ledger.withdraw(third, "test");
        Followed left = states.of(List.of(string.id())).get(string.id());
        assertThat(left.surveys()).isEqualTo(4);
        assertThat(left.state()).isNotEqualTo(all);
        jdbc.sql("delete from forecast_state where string_id = ?")
                .param(string.id())
                .update();
        jdbc.sql("delete from current_assessment where string_id = ?")
                .param(string.id())
                .update();
        assessments.assess(string.id());
        assertThat(states.of(List.of(string.id())).get(string.id()))
                .usingRecursiveComparison()
                .isEqualTo(left);
    }
}
