package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
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

/** A corrected file of the same walk takes the place of the stored survey, and a person can take it all back. */
@ServiceTest
@Import(IntakeEstate.class)
class CorrectedFileTest {

    private static final String WALK = "2026-03-01T10:00";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    private StringView string;
    private int wrong;

    @BeforeEach
    void aStringWithAWrongSurvey() throws Exception {
        string = estate.stringOfSix();
        wrong = JsonPath.read(body(handIn(Role.CREW, UUID.randomUUID(), sheet(), "")), "$.surveyId");
    }

    @Test
    void aCorrectedFileIsAcceptedAndTakesThePlaceOfTheSurveyItNames() throws Exception {
        int right = correct(Role.ENGINEER, UUID.randomUUID());

        survey(wrong)
                .andExpect(jsonPath("$.withdrawal.kind").value("SUPERSEDED"))
                .andExpect(jsonPath("$.withdrawal.supersededBy").value(right))
                .andExpect(jsonPath("$.withdrawal.reason").value("jar 3 misread"));
        survey(right)
                .andExpect(jsonPath("$.ohmic[2]").value(0.423))
                .andExpect(jsonPath("$.withdrawal").isEmpty());
    }

    @Test
    void withoutNamingItTheSameWalkIsHeld() throws Exception {
        handIn(Role.ENGINEER, UUID.randomUUID(), corrected(), "")
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("TIME_SAME_DAY")));
    }

    @Test
    void aCorrectionSentTwiceIsOneSurveyAndTheFirstReceiptComesAgain() throws Exception {
        UUID name = UUID.randomUUID();
        int right = correct(Role.ENGINEER, name);

        handIn(Role.ENGINEER, name, corrected(), naming(wrong))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.surveyId").value(right));
        handIn(Role.ENGINEER, UUID.randomUUID(), corrected(), naming(wrong))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.surveyId").value(right))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("SAME_FILE")));
        handIn(Role.ENGINEER, name, corrected(), naming(right)).andExpect(status().isConflict());
    }

    @Test
    void bytesThatAreASurveyAlreadyCorrectNothing() throws Exception {
        handIn(Role.ENGINEER, UUID.randomUUID(), sheet(), naming(wrong))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.detail").value(containsString("nothing in them is corrected")));
    }

    @Test
    void aCorrectionWithoutReasonOrOfAnotherStringIsTurnedAway() throws Exception {
        handIn(Role.ENGINEER, UUID.randomUUID(), corrected(), "&supersedes=" + wrong)
                .andExpect(status().isUnprocessableContent());
        handIn(Role.ENGINEER, UUID.randomUUID(), corrected(), "&supersedes=9999999&reason=x")
                .andExpect(status().isNotFound());
    }

    @Test
    void aCrewsCorrectionWaitsForAnEngineerWhoseAcceptanceSupersedesToo() throws Exception {
        UUID name = UUID.randomUUID();
        handIn(Role.CREW, name, corrected(), naming(wrong))
                .andExpect(jsonPath("$.state").value("HELD"))
                .andExpect(jsonPath("$.supersedes").value(wrong))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("CORRECTION_ASKED")));
        survey(wrong).andExpect(jsonPath("$.withdrawal").isEmpty());

        act("/api/uploads/" + name + "/accept", "{\"reason\": \"seen\"}")
                .andExpect(jsonPath("$.state").value("ACCEPTED"));
        survey(wrong).andExpect(jsonPath("$.withdrawal.reason").value("jar 3 misread"));
    }

    @Test
    void aHeldFileOfTheSameWalkCanBeAcceptedInPlaceOfTheStoredOne() throws Exception {
        UUID name = UUID.randomUUID();
        handIn(Role.CREW, name, corrected(), "").andExpect(jsonPath("$.state").value("HELD"));
        assertThat(page("/intake/" + name)).contains("It takes the place of", "value=\"" + wrong + "\"");

        act("/api/uploads/" + name + "/accept", "{\"reason\": \"jar 3 read again\", \"supersedes\": " + wrong + "}")
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.supersedes").value(wrong));
        survey(wrong).andExpect(jsonPath("$.withdrawal.reason").value("jar 3 read again"));
    }

    @Test
    void aCorrectionOfASurveyThatNoLongerCountsIsHeldAndStoredBesideWhatCounts() throws Exception {
        act("/api/surveys/" + wrong + "/void", "{\"reason\": \"not this string\"}");
        UUID name = UUID.randomUUID();
        handIn(Role.ENGINEER, name, corrected(), naming(wrong))
                .andExpect(jsonPath("$.remarks[*].code").value(contains("CORRECTS_WITHDRAWN")));

        act("/api/uploads/" + name + "/accept", "{\"reason\": \"it counts now\"}")
                .andExpect(jsonPath("$.state").value("ACCEPTED"));
        survey(wrong).andExpect(jsonPath("$.withdrawal.kind").value("VOIDED"));
    }

    @Test
    void aSurveyIsVoidedAndRestoredByRequest() throws Exception {
        act("/api/surveys/" + wrong + "/void", "{\"reason\": \" \"}").andExpect(status().isUnprocessableContent());
        act("/api/surveys/" + wrong + "/void", "{\"reason\": \"wrong string\"}")
                .andExpect(jsonPath("$.withdrawal.kind").value("VOIDED"));
        act("/api/surveys/" + wrong + "/void", "{\"reason\": \"again\"}").andExpect(status().isConflict());
        act("/api/surveys/" + wrong + "/restore", "{\"reason\": \"it was right\"}")
                .andExpect(jsonPath("$.withdrawal").isEmpty());
        act("/api/surveys/" + wrong + "/restore", "{\"reason\": \"again\"}").andExpect(status().isConflict());
    }

    @Test
    void restoringASupersededSurveyLeavesBothUnlessTheOtherIsVoidedWithIt() throws Exception {
        int right = correct(Role.ENGINEER, UUID.randomUUID());
        act("/api/surveys/" + wrong + "/restore", "{\"reason\": \"both stand\"}")
                .andExpect(jsonPath("$.withdrawal").isEmpty());
        survey(right).andExpect(jsonPath("$.withdrawal").isEmpty());

        act("/api/surveys/" + wrong + "/supersede", "{\"reason\": \"after all\", \"by\": " + right + "}");
        act("/api/surveys/" + wrong + "/restore", "{\"reason\": \"the first was right\", \"voidOther\": true}")
                .andExpect(jsonPath("$.withdrawal").isEmpty());
        survey(right).andExpect(jsonPath("$.withdrawal.kind").value("VOIDED"));
    }

    @Test
    void theSurveysPageLeadsToAFormThatCorrectsIt() throws Exception {
        assertThat(page("/surveys/" + wrong)).contains("/intake?supersedes=" + wrong);
        assertThat(page("/intake?supersedes=" + wrong))
                .contains("To take the place of", "name=\"supersedes\" value=\"" + wrong + "\"", "name=\"reason\"");

        byForm("jar 3 misread");
        String superseded = page("/surveys/" + wrong);
        assertThat(superseded).contains("Superseded: another survey took its place", "name=\"voidOther\"");
        mvc.perform(post("/surveys/" + wrong + "/restore")
                .param("reason", "the first was right")
                .param("voidOther", "true")
                .with(as(Role.ENGINEER))
                .with(csrf()));
        survey(wrong).andExpect(jsonPath("$.withdrawal").isEmpty());
    }

    private void byForm(String reason) throws Exception {
        byte[] bytes = corrected().getBytes(StandardCharsets.UTF_8);
        mvc.perform(multipart("/intake")
                        .file(new MockMultipartFile("file", "again.csv", "text/csv", bytes))
                        .param("ticket", UUID.randomUUID().toString())
                        .param("supersedes", "" + wrong)
                        .param("reason", reason)
                        .with(as(Role.ENGINEER))
                        .with(csrf()))
                .andExpect(status().is3xxRedirection());
    }

    private int correct(Role role, UUID name) throws Exception {
        return JsonPath.read(
                body(handIn(role, name, corrected(), naming(wrong))
                        .andExpect(status().isCreated())
                        .andExpect(jsonPath("$.state").value("ACCEPTED"))),
                "$.surveyId");
    }

    private static String naming(int survey) {
        return "&supersedes=" + survey + "&reason=jar 3 misread";
    }

    private String sheet() {
        return IntakeEstate.sheetOf(string, WALK);
    }

    private String corrected() {
        return sheet().replace("3,0.413", "3,0.423");
    }

    private ResultActions handIn(Role role, UUID name, String sheet, String query) throws Exception {
        return mvc.perform(put("/api/uploads/" + name + "?file=walk.csv" + query)
                .with(as(role))
                .with(csrf().asHeader())
                .content(sheet.getBytes(StandardCharsets.UTF_8)));
    }

    private ResultActions act(String path, String json) throws Exception {
        return mvc.perform(post(path)
                .with(as(Role.ENGINEER))
                .with(csrf().asHeader())
                .contentType(MediaType.APPLICATION_JSON)
                .content(json));
    }

    private ResultActions survey(int id) throws Exception {
        return mvc.perform(get("/api/surveys/" + id).with(as(Role.CREW)));
    }

    private String page(String path) throws Exception {
        return body(mvc.perform(get(path).with(as(Role.ENGINEER))).andExpect(status().isOk()));
    }

    private static String body(ResultActions answer) throws Exception {
        return answer.andReturn().getResponse().getContentAsString(StandardCharsets.UTF_8);
    }

    private RequestPostProcessor as(Role role) {
        String username = role.name().toLowerCase(Locale.ROOT) + ".test";
        return SecurityMockMvcRequestPostProcessors.authentication(
                new PersonAuthentication(new Person(7, username, "Test", role, IntakeEstate.only(string))));
    }
}
