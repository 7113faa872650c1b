package org.ohmstead.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.assessment.model.estate.TestedJar;
import org.ohmstead.capacity.CapacityTests;
import org.ohmstead.capacity.Drawn;
import org.ohmstead.capacity.NewCapacityTest;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/** Three strings of one type whose jars had read alike when settled, and capacity tests of fifty such jars. */
@ServiceTest
@Import(JarTypeLessonsTest.Tests.class)
class JarTypeLessonsTest {

    private static final List<TestedJar> TESTED = new ArrayList<>();
    private static int count;

    @TestConfiguration
    static class Tests {

        @Bean
        TestedJars testedJars() {
            return () -> Map.of("LES-" + count, TESTED);
        }
    }

    @Autowired
    private JarTypeLessons lessons;

    @Autowired
    private Assessments assessments;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jars;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private CapacityTests tests;

    @Autowired
    private TestedByCapacity byCapacity;

    @Autowired
    private AuditTrail audit;

    @Autowired
    private Access access;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc mvc;

    private final List<StringView> strings = new ArrayList<>();
    private String code;

    @BeforeEach
    void anEstate() {
        signIn(Role.ENGINEER);
        code = "LES-" + ++count;
        Random random = new Random(count);
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            for (int s = 0; s < 3; s++) {
                StringView string = register.createString(Entries.string(code, "S" + s, code, 6, 6));
                jars.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
                strings.add(string);
                for (int round = 0; round < 5; round++) {
                    ledger.accept(survey(string, today.minusMonths(80 - 18L * round), .02 * round, random));
                }
            }
        });
    }

    @AfterEach
    void noTestsAndNobody() {
        TESTED.clear();
        SecurityContextHolder.clearContext();
    }

    private static PersonAuthentication signIn(Role role) {
        PersonAuthentication known = new PersonAuthentication(new Person(9, "les", "Test", role, Reach.EVERYWHERE));
        SecurityContextHolder.getContext().setAuthentication(known);
        return known;
    }

    private static NewSurvey survey(StringView string, LocalDate day, double rise, Random random) {
        double[] ohmic = new double[12];
        Arrays.setAll(ohmic, i -> .52 * (1 + rise + (i == 6 ? 3 * rise : 0)) * Math.exp(.01 * random.nextGaussian()));
        SurveyFacts facts =
                SurveyFacts.of(string.id(), day.atTime(10, 0).toInstant(ZoneOffset.UTC), day, OhmicKind.IMPEDANCE);
        return NewSurvey.of(facts, Readings.ofOhmic(ohmic));
    }

    private static void jarsFailAtTwentyPercent() {
        for (int i = 0; i < 50; i++) {
            double rise = i * .01;
            TESTED.add(new TestedJar(rise, rise > .18));
        }
    }

    private double riskOfJarSeven() {
        return assessments
                .latest(strings.get(0).id())
                .judgement()
                .jars()
                .get(6)
                .forecast()
                .risk();
    }

    @Test
    void theEstateTeachesTheReferenceAndTheLimit() {
        jarsFailAtTwentyPercent();
        Lesson lesson = lessons.of(code);
        assertThat(lesson.reference().value()).isBetween(.515, .535);
        assertThat(lesson.reference().jars()).isEqualTo(36);
        assertThat(lesson.usesReference()).isFalse();
        assertThat(lesson.limit().logLimit()).isBetween(.14, .24);
        assertThat(lesson.inForce()).isNull();
    }

    @Test
    void aLowerLimitHoldsOnceItIsAppliedAndNoLongerOnceItIsTakenBack() {
        double before = riskOfJarSeven();
        jarsFailAtTwentyPercent();
        assertThat(assessments
                        .assess(strings.get(0).id())
                        .judgement()
                        .jars()
                        .get(6)
                        .forecast()
                        .risk())
                .isEqualTo(before);
        Lesson applied = lessons.apply(code, lessons.of(code).key());
        assertThat(applied.inForce().version()).isEqualTo(1);
        assertThat(lessons.limitRise(strings.get(0).id())).isBetween(.15, .27);
        assessments.assess(strings.get(0).id());
        assertThat(riskOfJarSeven()).isGreaterThan(before + .1);
        lessons.takeBack(code);
        lessons.takeBack(code);
        assessments.assess(strings.get(0).id());
        assertThat(riskOfJarSeven()).isEqualTo(before);
        assertThat(lessons.of(code).inForce()).isNull();
        assertThat(lessons.limitRise(strings.get(0).id())).isCloseTo(.33, within(1e-9));
        assertThat(lessons.apply(code, lessons.of(code).key()).inForce().version())
                .isEqualTo(3);
        assertThat(audit.before(Long.MAX_VALUE, 5))
                .extracting(AuditTrail.Entry::action)
                .contains("lesson of jar type applied", "lesson of jar type taken back");
    }

    @Test
    void nobodyAppliesWhatHeWasNotShown() {
        String shown = lessons.of(code).key();
        jarsFailAtTwentyPercent();
        assertThatThrownBy(() -> lessons.apply(code, shown)).isInstanceOf(Conflict.class);
        String unused = "NO-" + code;
        access.asSystem("test", () -> register.createJarType(Entries.jarType(unused)));
        assertThatThrownBy(() -> lessons.apply(unused, lessons.of(unused).key()))
                .isInstanceOf(Refused.class);
        signIn(Role.CREW);
        assertThatThrownBy(() -> lessons.apply(code, shown)).isInstanceOf(AccessDeniedException.class);
    }

    /** The string's jar seven had risen most; the test found it weak and all others sound. */
    @Test
    void capacityTestsOnRecordAreSetBesideTheReadingsBefore() {
        double[] volts = new double[12];
        Arrays.fill(volts, 1.8);
        volts[6] = 1.5;
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        tests.record(
                new NewCapacityTest(
                        strings.get(1).id(),
                        today.minusDays(3),
                        "A. Crew",
                        TestKind.PERFORMANCE,
                        Method.RATE_ADJUSTED,
                        new Ratings(37.5, 480, 25, 1.75),
                        25,
                        null,
                        ""),
                new Drawn(37.5, 450, false, 21.3, volts, new double[0]));
        Lesson lesson = lessons.of(code);
        assertThat(lesson.tested()).isEqualTo(12);
        assertThat(lesson.failed()).isEqualTo(1);
        assertThat(lesson.limit()).isNull();
        assertThat(byCapacity.byJarType().get(code))
                .filteredOn(TestedJar::failed)
                .singleElement()
                .satisfies(jar -> assertThat(jar.logRise()).isBetween(.1, .4));
    }

    @Test
    void pagesAndPrograms() throws Exception {
        jarsFailAtTwentyPercent();
        PersonAuthentication engineer = signIn(Role.ENGINEER);
        String key = lessons.of(code).key();
        mvc.perform(get("/library/lessons").with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.containsString("36 settled jars of 3 strings")))
                .andExpect(content().string(Matchers.containsString("50 jars tested")))
                .andExpect(content().string(Matchers.not(Matchers.containsString("NaN"))));
        mvc.perform(post("/library/lessons/" + code)
                        .param("key", "another")
                        .with(csrf())
                        .with(authentication(engineer)))
                .andExpect(redirectedUrl("/library/lessons"))
                .andExpect(flash().attribute("problem", Matchers.containsString("something else")));
        mvc.perform(post("/library/lessons/" + code)
                        .param("key", key)
                        .with(csrf())
                        .with(authentication(engineer)))
                .andExpect(flash().attributeExists("notice"));
        mvc.perform(get("/api/lessons/" + code).with(authentication(engineer)))
                .andExpect(jsonPath("$.inForce.version").value(1))
                .andExpect(jsonPath("$.key").isString());
        mvc.perform(post("/library/lessons/" + code + "/take-back").with(csrf()).with(authentication(engineer)))
                .andExpect(flash().attributeExists("notice"));
        mvc.perform(get("/api/lessons").with(authentication(engineer))).andExpect(status().isOk());
    }
}
