package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.IntakeEstate;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The contract of an upload, as a client sees it. */
@ServiceTest
@Import(IntakeEstate.class)
class UploadResourceTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    private StringView string;
    private UUID name;

    @BeforeEach
    void aStringAndANewName() {
        string = estate.stringOfSix();
        name = UUID.randomUUID();
    }

    @Test
    void aCleanSurveyIsAcceptedAndTheReceiptSaysWhatWasStored() throws Exception {
        handIn(name, sheet("2026-03-01T10:00"))
                .andExpect(status().isCreated())
                .andExpect(header().string("Location", "/api/uploads/" + name))
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.stage").value("CHECKED"))
                .andExpect(jsonPath("$.jars").value(6))
                .andExpect(jsonPath("$.links").value(7))
                .andExpect(jsonPath("$.stringId").value(string.id()))
                .andExpect(jsonPath("$.surveyId").isNumber())
                .andExpect(jsonPath("$.sha256").isString())
                .andExpect(jsonPath("$.remarks").isEmpty());
    }

    @Test
    void theSameBytesUnderTheSameNameGetTheFirstReceiptAgain() throws Exception {
        String first = body(handIn(name, sheet("2026-03-01T10:00")).andExpect(status().isCreated()));

        String again = body(handIn(name, sheet("2026-03-01T10:00")).andExpect(status().isOk()));

        assertThat(again).isEqualTo(first);
    }

    @Test
    void otherBytesUnderTheSameNameAreAConflictAndChangeNothing() throws Exception {
        String first = body(handIn(name, sheet("2026-03-01T10:00")));

        handIn(name, sheet("2026-03-02T10:00"))
                .andExpect(status().isConflict())
                .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_PROBLEM_JSON));

        assertThat(body(mvc.perform(get("/api/uploads/" + name).with(crew())))).isEqualTo(first);
    }

    @Test
    void theSameBytesUnderAnotherNameAreTheSameSurvey() throws Exception {
        String first = body(handIn(name, sheet("2026-03-01T10:00")));
        Integer survey = com.jayway.jsonpath.JsonPath.read(first, "$.surveyId");

        handIn(UUID.randomUUID(), sheet("2026-03-01T10:00"))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.surveyId").value(survey))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("SAME_FILE")));
    }

    @Test
    void aSurveyWithoutItsLastJarIsHeldForThatVeryReason() throws Exception {
        handIn(name, IntakeEstate.sheetOf(string, "2026-03-01T10:00", 5))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.surveyId").doesNotExist())
                .andExpect(jsonPath("$.remarks[*].code").value(contains("LAST_JAR_MISSING")))
                .andExpect(jsonPath("$.remarks[0].place").value("jar 6"));
    }

    @Test
    void theListOfHeldSurveysNamesTheMainReasonOfEach() throws Exception {
        handIn(name, IntakeEstate.sheetOf(string, "2026-03-01T10:00", 5).replace("ambient °C,21", "ambient °C,71"));

        mvc.perform(get("/api/uploads?state=HELD").with(crew()))
                .andExpect(
                        jsonPath("$[?(@.id == '" + name + "')].remarks[*].code").value(contains("LAST_JAR_MISSING")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bom", "crlf", "semicolons", "decimal commas", "utf-16", "windows-1252"})
    void otherWaysToWriteTheSameSheetAreAcceptedToo(String way) throws Exception {
        handIn(name, written(sheet("2026-03-01T10:00"), way))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.jars").value(6));
    }

    @Test
    void garbageIsKeptAndAnsweredWithAReceiptThatRefusesIt() throws Exception {
        byte[] garbage = new byte[5_000];
        new Random(7).nextBytes(garbage);

        handIn(name, garbage)
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("REFUSED"))
                .andExpect(jsonPath("$.stage").value("RECEIVED"))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("FILE_UNREADABLE")));
        mvc.perform(get("/api/uploads/" + name + "/raw").with(crew()))
                .andExpect(content().bytes(garbage))
                .andExpect(content().contentType(MediaType.APPLICATION_OCTET_STREAM))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Content-Disposition", containsString("attachment")));
    }

    @Test
    void anEmptyFileAndAFileInNoEncodingAreRefusedWithTheirReason() throws Exception {
        handIn(name, new byte[0])
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.remarks[0].message").value("The file is empty."));
        handIn(UUID.randomUUID(), ("ohmstead survey sheet,1\nnote,\u0081\u008d").getBytes(StandardCharsets.ISO_8859_1))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.remarks[0].message").value(containsString("neither UTF-8 nor Windows-1252")));
    }

    @Test
    void charactersThatNoDatabaseHoldsAreStillAnswered() throws Exception {
        byte[] sheet = ("\uFEFFohmstead survey sheet,1\nno\u0000te,\u0000\u0001").getBytes(StandardCharsets.UTF_16LE);

        handIn(name, sheet)
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("REFUSED"));
    }

    @Test
    void numbersBeyondAllMeasureAreHeldNotStored() throws Exception {
        handIn(name, sheet("2026-03-01T10:00").replace("0.411", "4.11e90"))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.remarks[*].code").value(hasItem("VALUE_LOST")));
    }

    @Test
    void aFormLikeContentTypeDoesNotEatTheFile() throws Exception {
        mvc.perform(put("/api/uploads/" + name)
                        .with(crew())
                        .with(csrf().asHeader())
                        .contentType(MediaType.APPLICATION_FORM_URLENCODED)
                        .content(sheet("2026-03-01T10:00").getBytes(StandardCharsets.UTF_8)))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("ACCEPTED"));
    }

    @Test
    void aMultipartFormHandsInAsWell() throws Exception {
        MockMultipartFile file = new MockMultipartFile(
                "file", "walk.csv", "text/csv", sheet("2026-03-01T10:00").getBytes(StandardCharsets.UTF_8));

        mvc.perform(multipart("/api/uploads").file(file).with(crew()).with(csrf()))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.fileName").value("walk.csv"))
                .andExpect(jsonPath("$.state").value("ACCEPTED"));
    }

    @Test
    void aFileAboveTheLimitIsAnsweredWith413() throws Exception {
        mvc.perform(put("/api/uploads/" + name)
                        .with(crew())
                        .with(csrf().asHeader())
                        .content(new byte[33 * 1024 * 1024]))
                .andExpect(status().isContentTooLarge())
                .andExpect(jsonPath("$.type").value("urn:ohmstead:problem:too-large"))
                .andExpect(jsonPath("$.detail").value(containsString("larger than this service accepts")))
                .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void aNameThatIsNoUuidIsNotUnderstood() throws Exception {
        mvc.perform(put("/api/uploads/walk-1")
                        .with(crew())
                        .with(csrf().asHeader())
                        .content("x"))
                .andExpect(status().isBadRequest());
    }

    @Test
    void aSheetWithoutNamesBelongsToTheStringItIsHandedInFor() throws Exception {
        String unnamed = sheet("2026-03-01T10:00").replaceAll("(site|string),.*\n", "");

        handIn(name, unnamed).andExpect(jsonPath("$.remarks[*].code").value(contains("STRING_NOT_NAMED")));
        mvc.perform(put("/api/uploads/" + UUID.randomUUID() + "?string=" + string.id())
                        .with(crew())
                        .with(csrf().asHeader())
                        .content(unnamed.getBytes(StandardCharsets.UTF_8)))
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.stringId").value(string.id()));
    }

    @Test
    void aSheetForAnotherStringThanClaimedIsHeld() throws Exception {
        StringView other = estate.stringOfSix();

        mvc.perform(put("/api/uploads/" + name + "?string=" + other.id())
                        .with(as(Role.CREW, Reach.EVERYWHERE))
                        .with(csrf().asHeader())
                        .content(sheet("2026-03-01T10:00").getBytes(StandardCharsets.UTF_8)))
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("STRING_NOT_AS_CLAIMED")));
    }

    @Test
    void aStringOutOfReachIsAsGoodAsUnknown() throws Exception {
        String sheet = IntakeEstate.sheetOf(estate.stringOfSix(), "2026-03-01T10:00");

        handIn(name, sheet)
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("STRING_UNKNOWN")));
    }

    @Test
    void anUploadOutOfReachIsNotFound() throws Exception {
        handIn(name, sheet("2026-03-01T10:00"));
        StringView other = estate.stringOfSix();

        for (String path : new String[] {"", "/raw"}) {
            mvc.perform(get("/api/uploads/" + name + path).with(as(Role.ENGINEER, IntakeEstate.only(other))))
                    .andExpect(status().isNotFound());
        }
    }

    @Test
    void anEngineerAcceptsAHeldSurveyAsMeasuredAndCrewMayNot() throws Exception {
        handIn(name, IntakeEstate.sheetOf(string, "2026-03-01T10:00", 5));

        settle("accept", crew(), "jar 6 is out for repair").andExpect(status().isForbidden());
        settle("accept", engineer(), " ").andExpect(status().isUnprocessableContent());
        settle("accept", engineer(), "jar 6 is out for repair")
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.jars").value(5))
                .andExpect(jsonPath("$.settledReason").value("jar 6 is out for repair"));
        settle("accept", engineer(), "twice").andExpect(status().isConflict());
    }

    @Test
    void aRefusedSurveyStaysOnRecordAndStoresNothing() throws Exception {
        handIn(name, IntakeEstate.sheetOf(string, "2026-03-01T10:00", 5));

        settle("refuse", engineer(), "measured again")
                .andExpect(jsonPath("$.state").value("REFUSED"))
                .andExpect(jsonPath("$.surveyId").doesNotExist());
        mvc.perform(get("/api/uploads/" + name + "/raw").with(crew())).andExpect(status().isOk());
    }

    @Test
    void aHeldFileHandedInTwiceAndAcceptedTwiceIsStoredOnce() throws Exception {
        String sheet = IntakeEstate.sheetOf(string, "2026-03-01T10:00", 5);
        handIn(name, sheet);
        String first = body(settle("accept", engineer(), "first"));
        name = UUID.randomUUID();
        handIn(name, sheet).andExpect(jsonPath("$.state").value("ACCEPTED"));

        assertThat((Integer) com.jayway.jsonpath.JsonPath.read(
                        body(mvc.perform(get("/api/uploads/" + name).with(crew()))), "$.surveyId"))
                .isEqualTo(com.jayway.jsonpath.JsonPath.<Integer>read(first, "$.surveyId"));
    }

    @Test
    void aManagerHandsNothingIn() throws Exception {
        mvc.perform(put("/api/uploads/" + name)
                        .with(as(Role.MANAGER, Reach.EVERYWHERE))
                        .with(csrf().asHeader())
                        .content("x"))
                .andExpect(status().isForbidden());
    }

    private String sheet(String takenAt) {
        return IntakeEstate.sheetOf(string, takenAt);
    }

    private static byte[] written(String sheet, String way) {
        return switch (way) {
            case "bom" -> ("\uFEFF" + sheet).getBytes(StandardCharsets.UTF_8);
            case "crlf" -> sheet.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
            case "semicolons" -> sheet.replace(',', ';').getBytes(StandardCharsets.UTF_8);
            case "decimal commas" -> sheet.replace(',', ';').replace('.', ',').getBytes(StandardCharsets.UTF_8);
            case "utf-16" -> ("\uFEFF" + sheet).getBytes(StandardCharsets.UTF_16LE);
            default -> sheet.replace("Ω", "ohm").getBytes(Charset.forName("windows-1252"));
        };
    }

    private ResultActions handIn(UUID id, String sheet) throws Exception {
        return handIn(id, sheet.getBytes(StandardCharsets.UTF_8));
    }

    private ResultActions handIn(UUID id, byte[] bytes) throws Exception {
        return mvc.perform(put("/api/uploads/" + id)
                .with(crew())
                .with(csrf().asHeader())
                .contentType(MediaType.APPLICATION_OCTET_STREAM)
                .content(bytes));
    }

    private ResultActions settle(String act, RequestPostProcessor who, String reason) throws Exception {
        return mvc.perform(post("/api/uploads/" + name + "/" + act)
                .with(who)
                .with(csrf().asHeader())
                .contentType(MediaType.APPLICATION_JSON)
                .content("{\"reason\":\"" + reason + "\"}"));
    }

    private static String body(ResultActions answer) throws Exception {
        return answer.andReturn().getResponse().getContentAsString(StandardCharsets.UTF_8);
    }

    private RequestPostProcessor crew() {
        return as(Role.CREW, IntakeEstate.only(string));
    }

    private RequestPostProcessor engineer() {
        return as(Role.ENGINEER, IntakeEstate.only(string));
    }

    private static RequestPostProcessor as(Role role, Reach reach) {
        String username = role.name().toLowerCase(Locale.ROOT) + ".test";
        return SecurityMockMvcRequestPostProcessors.authentication(
                new PersonAuthentication(new Person(7, username, "Test", role, reach)));
    }
}
