package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.IntakeEstate;
import org.ohmstead.intake.PatternedWalk;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Each fault is let into a clean walk, held, repaired, and what is stored is what the clean walk would have been. */
@ServiceTest
@Import(IntakeEstate.class)
class RepairTest {

    private static final String WALK = "2026-03-01T10:00";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Access access;

    private StringView string;
    private StringView other;
    private UUID id;

    @BeforeEach
    void twoStringsThatAreKnown() {
        List<StringView> two = estate.twoWithHistory();
        string = two.get(0);
        other = two.get(1);
        id = UUID.randomUUID();
    }

    @Test
    void aReversedWalkIsTurnedRoundWithOneClickAndStored() throws Exception {
        held(walk().fromTheOtherEnd().sheet(), "ORDER_REVERSED");
        bench().andExpect(jsonPath("$.offers[0].kind").value("REVERSE"))
                .andExpect(jsonPath("$.offers[0].after.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.offers[0].gone[*].code").value(hasItem("ORDER_REVERSED")))
                .andExpect(jsonPath("$.offers[0].moved.length()").value(31))
                .andExpect(jsonPath("$.lines[1].ohmicExpected").isNumber());

        repair(Role.CREW, "{\"kind\": \"REVERSE\"}")
                .andExpect(jsonPath("$.remarks[*].code").value(not(hasItem("ORDER_REVERSED"))));

        assertStoredAsClean(store());
    }

    @Test
    void whereAJarWasLeftOutTheRowsMoveUpAndItsReadingIsFilledInWithAReason() throws Exception {
        held(walk().skipping(12).sheet(), "ORDER_SKIPPED");
        bench().andExpect(jsonPath("$.offers[*].kind").value(hasItem("INSERT_GAP")));

        repair(Role.CREW, "{\"kind\": \"INSERT_GAP\", \"position\": 12}")
                .andExpect(jsonPath("$.remarks[*].code").value(hasItem("POSITION_MISSING")))
                .andExpect(jsonPath("$.remarks[*].code").value(not(hasItem("ORDER_SKIPPED"))));
        store(Role.CREW).andExpect(status().isUnprocessableContent());
        Readings clean = clean(string);
        repair(
                Role.ENGINEER,
                "{\"kind\": \"FIX_READING\", \"what\": \"JAR_OHMIC\", \"position\": 12, \"strap\": 0, \"to\": "
                        + clean.ohmic()[11] + ", \"reason\": \"read again on site\"}");

        Readings stored = stored(store());
        for (int k = 0; k < 30; k++) {
            assertThat(stored.ohmic()[k]).as("jar " + (k + 1)).isEqualTo(clean.ohmic()[k]);
            assertThat(stored.linkMicroohms()[k + 1])
                    .as("link " + (k + 1))
                    .isEqualTo(k == 11 ? new double[] {Double.NaN} : clean.linkMicroohms()[k + 1]);
        }
        assertThat(stored.volts()[11]).isNaN();
    }

    @Test
    void whereAJarWasReadTwiceTheRowsMoveBackAndTheLastJarIsLeftMissing() throws Exception {
        held(walk().readingTwice(12).sheet(), "ORDER_READ_TWICE");
        bench().andExpect(jsonPath("$.offers[*].kind").value(hasItem("LEAVE_OUT")));

        repair(Role.CREW, "{\"kind\": \"LEAVE_OUT\", \"position\": 13}")
                .andExpect(jsonPath("$.remarks[*].code").value(hasItem("LAST_JAR_MISSING")));
        act(post("/api/uploads/" + id + "/accept"), Role.ENGINEER, "{\"reason\": \"jar 30 is read next time\"}")
                .andExpect(jsonPath("$.state").value("ACCEPTED"));

        Readings stored = stored(surveyId());
        Readings clean = clean(string);
        for (int k = 0; k < 29; k++) {
            assertThat(stored.ohmic()[k]).as("jar " + (k + 1)).isEqualTo(clean.ohmic()[k]);
        }
        assertThat(stored.ohmic()[29]).isNaN();
    }

    @Test
    void twoJarsThatStandAtEachOthersPlacesChangeThem() throws Exception {
        held(far(walk()).sheet(), "ORDER_SWAPPED");
        bench().andExpect(jsonPath("$.offers[0].kind").value("SWAP_JARS"))
                .andExpect(jsonPath("$.offers[0].moved.length()").value(2));

        Object offered = JsonPath.read(body(bench()), "$.offers[0].step");
        String step = JsonPath.parse(offered).jsonString();
        repair(Role.CREW, step.replace("{", "{\"kind\": \"SWAP_JARS\", "));

        assertStoredAsClean(store());
    }

    @Test
    void aWalkOfTheOtherStringIsGivenToIt() throws Exception {
        String sheet = PatternedWalk.of(other, WALK).sheetNaming(string.siteCode(), string.name());
        held(sheet, "ORDER_OTHER_STRING");
        bench().andExpect(jsonPath("$.offers[0].kind").value("ASSIGN_TO"))
                .andExpect(jsonPath("$.offers[0].step.string").value(other.name()));

        repair(
                        Role.CREW,
                        "{\"kind\": \"ASSIGN_TO\", \"site\": \"" + other.siteCode() + "\", \"string\": \""
                                + other.name() + "\"}")
                .andExpect(jsonPath("$.string").value(other.title()));

        assertThat(stored(store())).isEqualTo(clean(other));
    }

    @Test
    void aStringThatNobodyKnowsIsNamed() throws Exception {
        held(walk().sheetNaming("NOWHERE", "Z"), "STRING_UNKNOWN");

        repair(
                Role.CREW,
                "{\"kind\": \"ASSIGN_TO\", \"site\": \"" + string.siteCode() + "\", \"string\": \"" + string.name()
                        + "\"}");

        assertStoredAsClean(store());
    }

    @Test
    void columnsInAnotherUnitAreReadInIt() throws Exception {
        held(walk().titled("position,jar Ω,jar V,link mΩ").sheet(), "UNIT_SLIP");
        bench().andExpect(jsonPath("$.offers[*].kind").value(contains("SCALE_COLUMN", "SCALE_COLUMN")))
                .andExpect(jsonPath("$.offers[*].step.column").value(contains("JAR_OHMIC", "LINK")))
                .andExpect(jsonPath("$.offers[*].step.powerOfTen").value(contains(-3, -3)));

        repair(Role.CREW, "{\"kind\": \"SCALE_COLUMN\", \"column\": \"JAR_OHMIC\", \"powerOfTen\": -3}");
        repair(Role.CREW, "{\"kind\": \"SCALE_COLUMN\", \"column\": \"LINK\", \"powerOfTen\": -3}");

        assertStoredAsClean(store());
    }

    @Test
    void aRowThatStandsTwiceIsLeftOut() throws Exception {
        held(walk().sheet() + "7,0.9999,2.250,24\n", "POSITION_DOUBLED");
        bench().andExpect(jsonPath("$.offers[0].step.line").value(40));

        repair(Role.CREW, "{\"kind\": \"IGNORE_ROW\", \"line\": 40}");

        assertStoredAsClean(store());
    }

    @Test
    void aSingleValueIsAnEngineersWordAndNeedsAReason() throws Exception {
        String right = walk().sheet();
        String cell = right.lines()
                .filter(line -> line.startsWith("5,"))
                .findFirst()
                .orElseThrow()
                .split(",")[1];
        held(right.replace("\n5," + cell, "\n5,-" + cell), "OHMIC_IMPOSSIBLE");
        String fix =
                "{\"kind\": \"FIX_READING\", \"what\": \"JAR_OHMIC\", \"position\": 5, \"strap\": 0, \"to\": " + cell;

        repair(Role.CREW, fix + ", \"reason\": \"typed wrong\"}").andExpect(status().isForbidden());
        repair(Role.ENGINEER, fix + "}").andExpect(status().isUnprocessableContent());
        repair(Role.ENGINEER, fix + ", \"reason\": \"the minus is a smudge\"}")
                .andExpect(jsonPath("$.repairs[0].reason").value("the minus is a smudge"))
                .andExpect(jsonPath("$.repairs[0].words")
                        .value(containsString("instead of -"
                                + new BigDecimal(cell).stripTrailingZeros().toPlainString())));

        assertStoredAsClean(store());
    }

    @Test
    void aCellThatCouldNotBeReadIsPutRightOrDoneWithout() throws Exception {
        String right = walk().sheet();
        String row =
                right.lines().filter(line -> line.startsWith("5,")).findFirst().orElseThrow();
        held(right.replace(row, row.replaceFirst(",0", ",O")), "VALUE_LOST");

        act(
                        post("/api/uploads/" + id + "/repairs/preview"),
                        Role.CREW,
                        "{\"kind\": \"DISREGARD\", \"line\": 14, \"column\": 2}")
                .andExpect(jsonPath("$.gone[*].code").value(contains("VALUE_LOST")))
                .andExpect(jsonPath("$.after.state").value("HELD"));
        repair(
                Role.ENGINEER,
                "{\"kind\": \"FIX_READING\", \"what\": \"JAR_OHMIC\", \"position\": 5, \"strap\": 0, \"to\": "
                        + row.split(",")[1] + ", \"reason\": \"a letter for a nought\"}");

        assertStoredAsClean(store());
    }

    @Test
    void aSurveyFromTheFutureGetsItsTime() throws Exception {
        held(PatternedWalk.of(string, "2062-03-01T10:00").sheet(), "TIME_FUTURE");

        repair(
                Role.ENGINEER,
                "{\"kind\": \"FIX_TIME\", \"takenAt\": \"2026-03-01T10:00\", \"reason\": \"digits turned\"}");

        int survey = store();
        act(get("/api/surveys/" + survey), Role.CREW, "")
                .andExpect(jsonPath("$.facts.takenOn").value("2026-03-01"));
    }

    @Test
    void aRepairIsTakenBackAndBothStayOnRecord() throws Exception {
        held(walk().fromTheOtherEnd().sheet(), "ORDER_REVERSED");
        repair(Role.CREW, "{\"kind\": \"REVERSE\"}");

        act(delete("/api/uploads/" + id + "/repairs/last"), Role.CREW, "")
                .andExpect(jsonPath("$.remarks[*].code").value(hasItem("ORDER_REVERSED")))
                .andExpect(jsonPath("$.repairs[0].takenBack").value(true));
        act(delete("/api/uploads/" + id + "/repairs/last"), Role.CREW, "").andExpect(status().isConflict());

        repair(Role.CREW, "{\"kind\": \"REVERSE\"}")
                .andExpect(jsonPath("$.repairs.length()").value(2));
        assertStoredAsClean(store());
    }

    @Test
    void theFileIsUntouchedAndItsBytesAreTheSameSurveyFromNowOn() throws Exception {
        String sheet = walk().fromTheOtherEnd().sheet();
        held(sheet, "ORDER_REVERSED");
        repair(Role.CREW, "{\"kind\": \"REVERSE\"}");
        int survey = store();

        assertThat(body(act(get("/api/uploads/" + id + "/raw"), Role.CREW, ""))).isEqualTo(sheet);
        id = UUID.randomUUID();
        handIn(sheet)
                .andExpect(jsonPath("$.surveyId").value(survey))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("SAME_FILE")));
    }

    @Test
    void nobodyRepairsWhatIsOutOfReachOrNotHeldOrHasNoSuchPlace() throws Exception {
        held(walk().fromTheOtherEnd().sheet(), "ORDER_REVERSED");

        repair(Role.CREW, "{\"kind\": \"INSERT_GAP\", \"position\": 31}").andExpect(status().isUnprocessableContent());
        repair(Role.CREW, "{\"kind\": \"MAGIC\"}").andExpect(status().isUnprocessableContent());
        repair(Role.CREW, "{\"kind\": \"INSERT_GAP\"}").andExpect(status().isUnprocessableContent());
        repair(Role.MANAGER, "{\"kind\": \"REVERSE\"}").andExpect(status().isForbidden());
        StringView elsewhere = estate.stringOfSix();
        mvc.perform(post("/api/uploads/" + id + "/repairs")
                        .with(as(Role.CREW, elsewhere))
                        .with(csrf().asHeader())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"kind\": \"REVERSE\"}"))
                .andExpect(status().isNotFound());
        repair(Role.CREW, "{\"kind\": \"REVERSE\"}");
        store();
        repair(Role.CREW, "{\"kind\": \"REVERSE\"}").andExpect(status().isConflict());
        bench().andExpect(status().isConflict());
    }

    @Test
    void aStepThatHasNoPlaceInTheStringAnyMoreHoldsTheSurveyUntilItIsTakenBack() throws Exception {
        StringView six = estate.stringOfSix();
        held(walk().skipping(12).sheet(), "ORDER_SKIPPED");
        repair(Role.CREW, "{\"kind\": \"INSERT_GAP\", \"position\": 12}")
                .andExpect(jsonPath("$.remarks[*].code").value(not(hasItem("REPAIR_MISFITS"))));

        String toTheShortOne =
                "{\"kind\": \"ASSIGN_TO\", \"site\": \"" + six.siteCode() + "\", \"string\": \"" + six.name() + "\"}";
        mvc.perform(post("/api/uploads/" + id + "/repairs")
                        .with(everywhere())
                        .with(csrf().asHeader())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(toTheShortOne))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.remarks[*].code").value(hasItem("REPAIR_MISFITS")));
        mvc.perform(delete("/api/uploads/" + id + "/repairs/last")
                        .with(everywhere())
                        .with(csrf().asHeader()))
                .andExpect(jsonPath("$.string").value(string.title()))
                .andExpect(jsonPath("$.remarks[*].code").value(not(hasItem("REPAIR_MISFITS"))));
    }

    @Test
    void theSurveysPageSaysHowItWasRepaired() throws Exception {
        held(walk().fromTheOtherEnd().sheet(), "ORDER_REVERSED");
        assertThat(page("/intake/" + id)).contains("/intake/" + id + "/repair");
        assertThat(page("/intake/" + id + "/repair"))
                .contains("Turn the walk round: it began at the other end", "value=\"REVERSE\"", "Do this");
        form("/intake/" + id + "/repair", "kind", "REVERSE");
        assertThat(page("/intake/" + id + "/repair")).contains("Nothing holds", "Store the survey");
        form("/intake/" + id + "/take-back");
        assertThat(page("/intake/" + id + "/repair")).contains("taken back", "is held by one thing");
        form("/intake/" + id + "/repair", "kind", "REVERSE");
        form("/intake/" + id + "/store");

        assertThat(page("/surveys/" + surveyId())).contains("As repaired", "Turn the walk round", "crew.repair");
    }

    private PatternedWalk walk() {
        return PatternedWalk.of(string, WALK);
    }

    /** The two jars of the string that differ most, so that it shows. */
    private PatternedWalk far(PatternedWalk walk) {
        Readings known = access.asSystem(
                "test", () -> ledger.surveysOf(string.id()).get(0).readings());
        int least = 0;
        int most = 0;
        for (int k = 1; k < known.positions(); k++) {
            least = known.ohmic()[k] < known.ohmic()[least] ? k : least;
            most = known.ohmic()[k] > known.ohmic()[most] ? k : most;
        }
        return walk.swapping(least + 1, most + 1);
    }

    private void held(String sheet, String code) throws Exception {
        handIn(sheet)
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.remarks[*].code").value(hasItem(code)));
    }

    private ResultActions handIn(String sheet) throws Exception {
        return mvc.perform(put("/api/uploads/" + id + "?file=walk.csv")
                .with(as(Role.CREW, string))
                .with(csrf().asHeader())
                .content(sheet.getBytes(StandardCharsets.UTF_8)));
    }

    private ResultActions bench() throws Exception {
        return act(get("/api/uploads/" + id + "/repairs"), Role.CREW, "");
    }

    private ResultActions repair(Role role, String step) throws Exception {
        return act(post("/api/uploads/" + id + "/repairs"), role, step);
    }

    private ResultActions store(Role role) throws Exception {
        return act(post("/api/uploads/" + id + "/store"), role, "");
    }

    private int store() throws Exception {
        return JsonPath.read(
                body(store(Role.CREW)
                        .andExpect(status().isOk())
                        .andExpect(jsonPath("$.state").value("ACCEPTED"))),
                "$.surveyId");
    }

    private int surveyId() throws Exception {
        return JsonPath.read(body(act(get("/api/uploads/" + id), Role.CREW, "")), "$.surveyId");
    }

    private ResultActions act(MockHttpServletRequestBuilder request, Role role, String json) throws Exception {
        return mvc.perform(request.with(as(role, string))
                .with(csrf().asHeader())
                .contentType(MediaType.APPLICATION_JSON)
                .content(json));
    }

    private void form(String path, String... fields) throws Exception {
        MockHttpServletRequestBuilder request =
                post(path).with(as(Role.CREW, string)).with(csrf());
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i], fields[i + 1]);
        }
        mvc.perform(request).andExpect(status().is3xxRedirection());
    }

    private String page(String path) throws Exception {
        return body(mvc.perform(get(path).with(as(Role.CREW, string))).andExpect(status().isOk()));
    }

    private void assertStoredAsClean(int survey) {
        assertThat(stored(survey)).isEqualTo(clean(string));
    }

    private Readings stored(int survey) {
        return access.asSystem("test", () -> ledger.survey(survey).readings());
    }

    /** The numbers of the clean sheet, cell by cell. */
    private Readings clean(StringView of) {
        List<String[]> rows = PatternedWalk.of(of, WALK)
                .sheet()
                .lines()
                .filter(line -> line.matches("\\d+,.*"))
                .map(line -> line.split(","))
                .toList();
        double[] ohmic = column(rows, 1);
        double[] volts = column(rows, 2);
        double[][] links = rows.stream()
                .map(row -> new double[] {Double.parseDouble(row[3])})
                .toArray(double[][]::new);
        return new Readings(ohmic, volts, new double[] {}, new double[] {}, links);
    }

    private static double[] column(List<String[]> rows, int cell) {
        return rows.stream()
                .skip(1)
                .mapToDouble(row -> Double.parseDouble(row[cell]))
                .toArray();
    }

    private static String body(ResultActions answer) throws Exception {
        return answer.andReturn().getResponse().getContentAsString(StandardCharsets.UTF_8);
    }

    private static RequestPostProcessor everywhere() {
        return SecurityMockMvcRequestPostProcessors.authentication(new PersonAuthentication(
                new Person(7, "engineer.everywhere", "Test", Role.ENGINEER, Reach.EVERYWHERE)));
    }

    private static RequestPostProcessor as(Role role, StringView string) {
        String username = role.name().toLowerCase(Locale.ROOT) + ".repair";
        return SecurityMockMvcRequestPostProcessors.authentication(
                new PersonAuthentication(new Person(7, username, "Test", role, IntakeEstate.only(string))));
    }
}
