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
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
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
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.Doubt.Kind;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/** Eight strings, read every half year with one test set and in the last round with another. */
@ServiceTest
class InstrumentsTest {

    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static final int STRINGS = 8;
    private static final int ROUNDS = 7;
    private static int count;

    @Autowired
    private Instruments instruments;

    @Autowired
    private Assessments assessments;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jars;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Access access;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc mvc;

    private final List<StringView> strings = new ArrayList<>();
    private String before;
    private String after;
    private LocalDate today;
    private Random random;

    @BeforeEach
    void anEstate() {
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        String code = "INS-" + ++count;
        before = code + "/OLD";
        after = code + "/NEW";
        random = new Random(count);
        today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            for (int s = 0; s < STRINGS; s++) {
                StringView string = register.createString(Entries.string(code, "S" + s, code, 6, 6));
                jars.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
                strings.add(string);
            }
        });
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    private static PersonAuthentication signIn(Role role, Reach reach) {
        PersonAuthentication known = new PersonAuthentication(new Person(9, "ins", "Test", role, reach));
        SecurityContextHolder.getContext().setAuthentication(known);
        return known;
    }

    private void surveyed(double newReads) {
        for (int s = 0; s < STRINGS; s++) {
            for (int round = 0; round < ROUNDS; round++) {
                boolean last = round == ROUNDS - 1;
                LocalDate day = today.minusMonths(6L * (ROUNDS - 1 - round)).minusDays(80 - 9L * s);
                ledger.accept(survey(strings.get(s), day, last ? after : before, last ? newReads : 1));
            }
        }
        instruments.lookAgain();
    }

    private NewSurvey survey(StringView string, LocalDate day, String instrument, double reads) {
        double[] ohmic = new double[12];
        double ofSurvey = Math.exp(.006 * random.nextGaussian());
        Arrays.setAll(ohmic, i -> reads * ofSurvey * .41 * Math.exp(.01 * random.nextGaussian()));
        SurveyFacts plain =
                SurveyFacts.of(string.id(), day.atTime(10, 0).atZone(OSLO).toInstant(), day, OhmicKind.IMPEDANCE);
        SurveyFacts facts = new SurveyFacts(
                plain.stringId(),
                plain.takenAt(),
                day,
                "Crew",
                instrument,
                LocalDate.of(2026, 1, 31),
                OhmicKind.IMPEDANCE,
                60,
                20,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                true,
                "");
        return NewSurvey.of(facts, Readings.ofOhmic(ohmic));
    }

    private List<String> doubts(StringView string) {
        return assessments.latest(string.id()).judgement().doubts().stream()
                .filter(doubt -> doubt.kind() == Kind.INSTRUMENT_OFF)
                .map(Doubt::words)
                .toList();
    }

    @Test
    void fourPercentAreFoundWithTheirEvidenceAndOfferedAsADoubt() {
        surveyed(1.04);
        InstrumentView found = instruments.instrument(after);
        assertThat(found.off()).isTrue();
        assertThat(found.surveys()).isEqualTo(STRINGS);
        assertThat(found.strings()).isEqualTo(STRINGS);
        assertThat(found.finding().low()).isLessThan(.04);
        assertThat(found.finding().high()).isGreaterThan(.04);
        assertThat(found.finding().surveys()).isEqualTo(STRINGS);
        assertThat(found.calibrationDue()).isEqualTo(LocalDate.of(2026, 1, 31));
        assertThat(found.isPastCalibration(today)).isTrue();
        assertThat(instruments.surveys(after)).hasSize(STRINGS).allMatch(InstrumentSurvey::evidence);
        assertThat(instruments.surveys(before)).hasSize(STRINGS * (ROUNDS - 1)).noneMatch(InstrumentSurvey::evidence);
        assertThat(doubts(strings.get(3)))
                .singleElement()
                .asString()
                .contains(after)
                .contains("high")
                .contains("Nothing is corrected");
        assertThat(instruments.instrument(before).off()).isFalse();
    }

    /** The stored judgement, its fingerprint and its urgency stay as they were. */
    @Test
    void theDoubtChangesNothingElse() {
        surveyed(1.04);
        AssessmentView said = assessments.latest(strings.get(0).id());
        instruments.lookAgain();
        assertThat(assessments.assess(strings.get(0).id()).id()).isEqualTo(said.id());
        assertThat(said.judgement().jars()).allMatch(jar -> jar.ohmic() > .41);
    }

    @Test
    void anInstrumentThatReadsTrueIsNotAccused() {
        surveyed(1);
        assertThat(instruments.instrument(after).off()).isFalse();
        assertThat(doubts(strings.get(3))).isEmpty();
    }

    @Test
    void whoeverSeesNoneOfItsAreasDoesNotSeeIt() {
        surveyed(1);
        signIn(Role.ENGINEER, new Reach(false, Set.of(-1L)));
        assertThat(instruments.all()).isEmpty();
        assertThat(instruments.surveys(after)).isEmpty();
        assertThatThrownBy(() -> instruments.instrument(after)).isInstanceOf(NotFound.class);
        signIn(Role.CREW, Reach.EVERYWHERE);
        assertThatThrownBy(() -> instruments.lookAgain()).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void pagesAndPrograms() throws Exception {
        surveyed(1.05);
        PersonAuthentication engineer = signIn(Role.ENGINEER, Reach.EVERYWHERE);
        mvc.perform(get("/instruments").with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.containsString(after)))
                .andExpect(content().string(Matchers.containsString("run out")))
                .andExpect(content().string(Matchers.not(Matchers.containsString("NaN"))));
        mvc.perform(get("/instruments/evidence").param("serial", after).with(authentication(engineer)))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.containsString("seems to read")))
                .andExpect(content().string(Matchers.containsString("INS-")))
                .andExpect(content().string(Matchers.not(Matchers.containsString("NaN"))));
        mvc.perform(get("/strings/" + strings.get(0).id()).with(authentication(engineer)))
                .andExpect(content().string(Matchers.containsString("Nothing is corrected for that")));
        mvc.perform(get("/api/instruments").with(authentication(engineer)))
                .andExpect(jsonPath("$[?(@.serial == '" + after + "')].off").value(true));
        mvc.perform(get("/api/instruments/surveys").param("serial", after).with(authentication(engineer)))
                .andExpect(jsonPath("$.length()").value(STRINGS));
        mvc.perform(post("/instruments").with(csrf()).with(authentication(engineer)))
                .andExpect(redirectedUrl("/instruments"));
        mvc.perform(get("/instruments/evidence").param("serial", "NOWHERE").with(authentication(engineer)))
                .andExpect(status().isNotFound())
                .andExpect(status().reason(Matchers.containsString("not on the list")));
    }
}
