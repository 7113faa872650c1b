package org.ohmstead.programme.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
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
import org.ohmstead.intake.file.FileReading;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.RoundPlan;
import org.ohmstead.programme.RoundTask;
import org.ohmstead.programme.Rounds;
import org.ohmstead.programme.SuggestedRound;
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A vented string of twelve jars under the usual pack, surveyed and visited in January; today is 10 March 2026. */
@ServiceTest
class RoundWebTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FleetRegister register;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private VisitBook visits;

    @Autowired
    private Access access;

    @Autowired
    private Rounds rounds;

    @Autowired
    private SettableClock clock;

    private String code;
    private StringView string;

    @BeforeEach
    void aStringThatWasVisitedInJanuary() {
        code = "RND-" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            string = register.createString(Entries.string(code, "A", code, 6, 6));
            keeping.assign(string.id(), null, LocalDate.parse("2025-01-10"));
            survey();
            visit("2026-01-12");
        });
    }

    private void survey() {
        double[] ohmic = new double[12];
        Arrays.setAll(ohmic, i -> 0.4 + i / 1000.0);
        double[][] links = new double[13][];
        Arrays.setAll(links, i -> new double[] {30, 30});
        double[] none = {};
        SurveyFacts facts = SurveyFacts.of(
                string.id(), Instant.parse("2026-01-12T09:00:00Z"), LocalDate.parse("2026-01-12"), OhmicKind.IMPEDANCE);
        ledger.accept(NewSurvey.of(facts, new Readings(ohmic, none, none, none, links)));
    }

    private void visit(String on) {
        visits.record(new NewVisit(
                string.id(),
                LocalDate.parse(on),
                "A. Crew",
                "",
                Arrays.stream(EvidenceKind.values())
                        .filter(EvidenceKind::isCheck)
                        .map(NewVisit.Item::sound)
                        .toList()));
    }

    @AfterEach
    void theClockStandsAgain() {
        clock.set(SettableClock.START);
    }

    private static RequestPostProcessor as(Role role) {
        return as(role, Reach.EVERYWHERE);
    }

    private static RequestPostProcessor as(Role role, Reach reach) {
        return authentication(new PersonAuthentication(new Person(9, "round.test", "Test", role, reach)));
    }

    private long planned() throws Exception {
        String answer = mvc.perform(post("/api/rounds/plan")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"first\":\"2026-03-10\",\"last\":\"2026-06-09\",\"visitsADay\":2,\"area\":\"" + code
                                + "\",\"take\":[\"" + code + "/2026-05-29\"]}"))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$[0].crew").value("Crew Area " + code))
                .andReturn()
                .getResponse()
                .getContentAsString();
        return Long.parseLong(answer.replaceAll("(?s)^\\[\\{\"id\":(\\d+).*", "$1"));
    }

    @Test
    void theQuarterIsPlannedOnTheLastWorkdayInTime() throws Exception {
        mvc.perform(get("/rounds/plan").param("area", code).with(as(Role.ENGINEER)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("1 visits")))
                .andExpect(content().string(containsString("Fri 29 May 2026")))
                .andExpect(content().string(containsString(", 0 missed")));
        mvc.perform(post("/rounds/plan")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .param("first", "2026-03-10")
                        .param("last", "2026-06-09")
                        .param("visits", "2")
                        .param("area", code)
                        .param("take", code + "/2026-05-29"))
                .andExpect(flash().attribute("notice", "1 round is planned."));
        mvc.perform(get("/rounds").param("month", "2026-05").param("area", code).with(as(Role.CREW)))
                .andExpect(content().string(containsString("1 round")))
                .andExpect(content().string(containsString("Substation " + code)));
        mvc.perform(post("/rounds/plan")
                        .with(as(Role.CREW))
                        .with(csrf())
                        .param("first", "2026-03-10")
                        .param("last", "2026-06-09")
                        .param("visits", "2")
                        .param("take", code + "/2026-05-29"))
                .andExpect(status().isForbidden());
    }

    @Test
    void thePackHasCautionsLastValuesAndWhereToReadAgain() throws Exception {
        long id = planned();
        mvc.perform(get("/rounds/" + id).with(as(Role.CREW)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Before you touch anything")))
                .andExpect(content().string(containsString("0.320 to 0.480")))
                .andExpect(content().string(containsString("/strings/" + string.id() + "/qr.svg")));
        mvc.perform(get("/rounds/" + id).with(as(Role.CREW, new Reach(false, Set.of()))))
                .andExpect(status().isNotFound());
    }

    @Test
    void theSheetFilledInIsReadBackByTheIntake() throws Exception {
        String blank = new String(
                mvc.perform(get("/rounds/" + planned() + "/sheets/" + string.id())
                                .with(as(Role.CREW)))
                        .andExpect(status().isOk())
                        .andExpect(header().string("Content-Disposition", containsString("attachment")))
                        .andReturn()
                        .getResponse()
                        .getContentAsByteArray(),
                StandardCharsets.UTF_8);
        assertThat(blank).contains("# jar 7 last 0.406 mΩ, read again beyond 0.325 to 0.487");
        String filled = blank.replace("taken at,", "taken at,2026-05-29T10:15")
                .replaceAll("(?m)^(\\d+),,,,,", "$1,0.405,2.251,21,15,16");
        List<SurveySheet> sheets = new ArrayList<>();
        FileReading read =
                SheetReader.read(() -> new ByteArrayInputStream(filled.getBytes(StandardCharsets.UTF_8)), sheets::add);
        assertThat(read.findings()).isEmpty();
        assertThat(sheets).singleElement().satisfies(sheet -> {
            assertThat(sheet.isReadable()).isTrue();
            assertThat(sheet.rows()).hasSize(13);
            assertThat(sheet.findings()).isEmpty();
        });
    }

    @Test
    void whatIsDoneSinceIsDoneAndTheRestStaysOpen() throws Exception {
        long id = planned();
        mvc.perform(get("/api/rounds/" + id).with(as(Role.CREW)))
                .andExpect(
                        jsonPath("$.tasks[?(@.requirement == 'grounds')].done").value(false));
        access.asSystem("test", () -> visit("2026-03-10"));
        mvc.perform(get("/api/rounds/" + id).with(as(Role.CREW)))
                .andExpect(
                        jsonPath("$.tasks[?(@.requirement == 'grounds')].done").value(true))
                .andExpect(jsonPath("$.done").value(true));
    }

    @Test
    void aRoundIsMovedAndCancelled() throws Exception {
        long id = planned();
        for (String expected : List.of("notice", "problem")) {
            mvc.perform(post("/rounds/" + id)
                            .with(as(Role.ENGINEER))
                            .with(csrf())
                            .param("sequence", "0")
                            .param("on", "2026-05-20")
                            .param("crew", "Night crew"))
                    .andExpect(flash().attributeExists(expected));
        }
        mvc.perform(post("/rounds/" + id + "/cancel")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .param("reason", "storm"))
                .andExpect(flash().attributeExists("notice"));
        mvc.perform(get("/rounds/" + id).with(as(Role.CREW)))
                .andExpect(content().string(containsString("storm")))
                .andExpect(content().string(containsString("Night crew")))
                .andExpect(content().string(not(containsString("Cancel this round"))));
    }

    /** A year holds three spells of four calendar months: every duty comes back within the plan. */
    @Test
    void aPlanTakenOverWholeIsNotProposedAgain() {
        LocalDate first = LocalDate.parse("2026-03-10");
        LocalDate last = LocalDate.parse("2027-03-09");
        access.asSystem("test", () -> {
            RoundPlan plan = rounds.suggest(first, last, 2, code);
            assertThat(plan.rounds()).hasSizeGreaterThan(2);
            Map<String, Long> times = plan.rounds().stream()
                    .flatMap(round -> round.tasks().stream())
                    .collect(Collectors.groupingBy(RoundTask::key, Collectors.counting()));
            assertThat(times.values()).as("some duty repeats").anyMatch(count -> count > 1);
            rounds.adopt(
                    first,
                    last,
                    2,
                    code,
                    plan.rounds().stream().map(SuggestedRound::key).toList());
            assertThat(rounds.suggest(first, last, 2, code).rounds()).isEmpty();
            return null;
        });
    }

    /** Half past six in the evening of 9 March in New York is 10 March in Auckland, and in Oslo still the 9th. */
    @Test
    void todayIsTheSitesOwn() {
        access.asSystem("test", () -> {
            for (String zone : List.of("America/New_York", "Pacific/Auckland")) {
                String area = code + (zone.startsWith("A") ? "-W" : "-E");
                register.createArea(Entries.area(area));
                register.createSite(Entries.site(area, area, zone));
            }
            clock.set(Instant.parse("2026-03-09T22:30:00Z"));
            assertThat(rounds.today(code + "-W")).isEqualTo("2026-03-09");
            assertThat(rounds.today(code + "-E")).isEqualTo("2026-03-10");
            assertThat(rounds.todayAt(code + "-W")).isEqualTo("2026-03-09");
            assertThat(rounds.todayAt(code)).isEqualTo("2026-03-09");
            return null;
        });
    }
}
