package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.hasItem;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.IntakeEstate;
import org.ohmstead.intake.PatternedWalk;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A file of several surveys: one upload, and for each survey a part with an outcome of its own. */
@ServiceTest
@Import(IntakeEstate.class)
class PartsTest {

    private static final String WALK = "2026-03-01T10:00";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Access access;

    private StringView one;
    private StringView two;
    private UUID id;

    @BeforeEach
    void twoStringsOfOneSite() {
        List<StringView> both = estate.twoWithHistory();
        one = both.get(0);
        two = both.get(1);
        id = UUID.randomUUID();
    }

    @Test
    void eachSurveyOfTheFileIsStoredAndHasItsOwnReceipt() throws Exception {
        String receipt = body(handIn(id, clean(one) + clean(two))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("IN_PARTS"))
                .andExpect(jsonPath("$.parts[*].state").value(contains("ACCEPTED", "ACCEPTED")))
                .andExpect(jsonPath("$.parts[*].string").value(contains(one.title(), two.title())))
                .andExpect(jsonPath("$.parts[*].part").value(contains(1, 2))));

        String part = JsonPath.read(receipt, "$.parts[1].id");
        mvc.perform(get("/api/uploads/" + part).with(as(Role.CREW)))
                .andExpect(jsonPath("$.partOf").value(id.toString()))
                .andExpect(jsonPath("$.jars").value(30));
        assertThat(surveysOf(one)).isEqualTo(5);
        assertThat(surveysOf(two)).isEqualTo(5);
        assertThat(page("/intake/" + id)).contains("holds <span>2</span> surveys", "/intake/" + part);
        assertThat(page("/intake/" + part)).contains("the whole file");
    }

    @Test
    void oneIsHeldAndRepairedWhileTheOtherIsStored() throws Exception {
        String reversed = PatternedWalk.of(two, WALK).fromTheOtherEnd().sheet();
        String receipt = body(handIn(id, clean(one) + reversed)
                .andExpect(jsonPath("$.parts[*].state").value(contains("ACCEPTED", "HELD")))
                .andExpect(jsonPath("$.parts[1].remarks[*].code").value(hasItem("ORDER_REVERSED"))));
        String part = JsonPath.read(receipt, "$.parts[1].id");

        act("/api/uploads/" + part + "/repairs", "{\"kind\": \"REVERSE\"}");
        act("/api/uploads/" + part + "/store", "").andExpect(jsonPath("$.state").value("ACCEPTED"));

        assertThat(surveysOf(two)).isEqualTo(5);
        assertThat(access.asSystem(
                        "test",
                        () -> ledger.surveysOf(two.id()).get(4).readings().ohmic()[0]))
                .isEqualTo(firstOhmic(clean(two)));
    }

    @Test
    void theSameFileAgainIsTheSameSurveysUnderEitherName() throws Exception {
        String file = clean(one) + clean(two);
        Object surveys = JsonPath.read(body(handIn(id, file)), "$.parts[*].surveyId");
        handIn(id, file)
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.parts[*].surveyId").value(surveys));
        handIn(UUID.randomUUID(), file)
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.parts[*].surveyId").value(surveys))
                .andExpect(jsonPath("$.parts[0].remarks[*].code").value(contains("SAME_FILE")));
        handIn(id, file + clean(one)).andExpect(status().isConflict());

        assertThat(surveysOf(one)).isEqualTo(5);
    }

    @Test
    void severalWalksOfOneStringAreCheckedOneAgainstTheOther() throws Exception {
        handIn(id, clean(one) + PatternedWalk.of(one, "2026-03-01T15:00").sheet())
                .andExpect(jsonPath("$.parts[*].state").value(contains("ACCEPTED", "HELD")))
                .andExpect(jsonPath("$.parts[1].remarks[*].code").value(hasItem("TIME_SAME_DAY")));
    }

    @Test
    void moreSurveysThanOneUploadTakesAreRefusedAndTheBytesAreKept() throws Exception {
        String file = clean(one).repeat(61);
        handIn(id, file)
                .andExpect(jsonPath("$.state").value("REFUSED"))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("SEVERAL_SHEETS")))
                .andExpect(jsonPath("$.remarks[0].seen").value("61 surveys"));

        assertThat(page("/api/uploads/" + id + "/raw")).isEqualTo(file);
        assertThat(surveysOf(one)).isEqualTo(4);
    }

    @Test
    void anUnreadablePartSpoilsNoOther() throws Exception {
        handIn(id, clean(one) + clean(two).replace("ohmic kind,impedance", "ohmic kind,luck"))
                .andExpect(jsonPath("$.parts[*].state").value(contains("ACCEPTED", "REFUSED")));
    }

    @Test
    void aTableOfTwoStringsBecomesTwoSurveysByItsMap() throws Exception {
        String titles = "Room " + one.siteCode() + ",Row,Day,Jar,Z,V,Joint";
        String map = "{\"columns\": [" + rule(titles.split(",")[0], "site", "") + rule("Row", "string", "")
                + rule("Day", "taken at", "") + rule("Jar", "position", "") + rule("Z", "jar ohmic", "mΩ")
                + rule("V", "jar volts", "V") + rule("Joint", "link", "µΩ").replace("},", "}")
                + "], \"facts\": [{\"fact\": \"ohmic kind\", \"label\": \"\", \"value\": \"impedance\", \"unit\": \"\"}]}";
        mvc.perform(put("/api/column-maps/both of " + one.siteCode())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(map)
                        .with(everywhere())
                        .with(csrf()))
                .andExpect(status().isOk());

        handIn(id, titles + "\n" + rows(one) + rows(two))
                .andExpect(jsonPath("$.state").value("IN_PARTS"))
                .andExpect(jsonPath("$.parts[*].string").value(contains(one.title(), two.title())))
                .andExpect(jsonPath("$.parts[*].state").value(contains("ACCEPTED", "ACCEPTED")))
                .andExpect(jsonPath("$.parts[1].remarks[*].code").value(hasItem("READ_BY_MAP")));
    }

    @Test
    void theFileComesBackWithAColumnThatSaysWhy() throws Exception {
        String receipt = body(handIn(id, clean(one) + clean(two).replace("\n5,0", "\n5,O")));
        String part = JsonPath.read(receipt, "$.parts[1].id");

        String back = body(mvc.perform(get("/api/uploads/" + part + "/remarked").with(as(Role.CREW)))
                .andExpect(status().isOk()));
        assertThat(back).startsWith("\uFEFFohmstead survey sheet,1,");
        assertThat(back.lines().filter(line -> line.contains("VALUE_LOST")))
                .singleElement()
                .asString()
                .startsWith("5,O");
    }

    private static String rule(String title, String holds, String unit) {
        return "{\"title\": \"" + title + "\", \"holds\": \"" + holds + "\", \"unit\": \"" + unit
                + "\", \"linkUnit\": \"\"},";
    }

    private static String rows(StringView string) {
        StringBuilder rows = new StringBuilder();
        clean(string)
                .lines()
                .filter(line -> line.matches("\\d+,.*"))
                .forEach(line -> rows.append(string.siteCode())
                        .append(',')
                        .append(string.name())
                        .append(",2026-03-01,")
                        .append(line)
                        .append('\n'));
        return rows.toString();
    }

    private static double firstOhmic(String sheet) {
        String row =
                sheet.lines().filter(line -> line.startsWith("1,")).findFirst().orElseThrow();
        return Double.parseDouble(row.split(",")[1]);
    }

    private static String clean(StringView string) {
        return PatternedWalk.of(string, WALK).sheet();
    }

    private int surveysOf(StringView string) {
        return access.asSystem("test", () -> ledger.surveysOf(string.id()).size());
    }

    private ResultActions handIn(UUID name, String file) throws Exception {
        return mvc.perform(put("/api/uploads/" + name + "?file=walk.csv")
                .with(as(Role.CREW))
                .with(csrf().asHeader())
                .content(file.getBytes(StandardCharsets.UTF_8)));
    }

    private ResultActions act(String path, String json) throws Exception {
        return mvc.perform(post(path)
                        .with(as(Role.CREW))
                        .with(csrf().asHeader())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(json))
                .andExpect(status().isOk());
    }

    private String page(String path) throws Exception {
        return body(mvc.perform(get(path).with(as(Role.CREW))).andExpect(status().isOk()));
    }

    private static String body(ResultActions answer) throws Exception {
        return answer.andReturn().getResponse().getContentAsString(StandardCharsets.UTF_8);
    }

    private RequestPostProcessor everywhere() {
        return SecurityMockMvcRequestPostProcessors.authentication(new PersonAuthentication(
                new Person(8, "maps.parts", "Test", Role.ENGINEER, org.ohmstead.access.Reach.EVERYWHERE)));
    }

    private RequestPostProcessor as(Role role) {
        String username = role.name().toLowerCase(Locale.ROOT) + ".parts";
        return SecurityMockMvcRequestPostProcessors.authentication(
                new PersonAuthentication(new Person(7, username, "Test", role, IntakeEstate.only(one))));
    }
}
