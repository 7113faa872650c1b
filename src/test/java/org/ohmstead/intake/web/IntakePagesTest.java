package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

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
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The pages as they work without a script. */
@ServiceTest
@Import(IntakeEstate.class)
class IntakePagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    private StringView string;

    @BeforeEach
    void aString() {
        string = estate.stringOfSix();
    }

    @Test
    void anEmptyIntakeSaysSo() throws Exception {
        assertThat(page("/intake", Role.CREW)).contains("Nothing waits for a decision", "No survey has come in yet.");
    }

    @Test
    void aManagerSeesTheListButNoFormToHandIn() throws Exception {
        assertThat(page("/intake", Role.MANAGER)).contains("What came in").doesNotContain("type=\"file\"");
    }

    @Test
    void aHandedInSheetLeadsToItsReceiptAndItsSurvey() throws Exception {
        String receipt = handIn(IntakeEstate.sheetOf(string, "2025-03-01T10:00"));

        assertThat(page(receipt, Role.CREW))
                .contains("has its survey", "<span>7</span> link readings")
                .contains("Every check was content.");
        assertThat(page("/intake", Role.CREW)).contains(string.title(), "Accepted");
    }

    @Test
    void aHeldSheetShowsItsRemarkBesideTheLineAndWaitsForAnEngineer() throws Exception {
        String receipt = handIn(IntakeEstate.sheetOf(string, "2025-03-01T10:00").replace("2,0.412", "2,O.412"));

        assertThat(page(receipt, Role.CREW))
                .contains("waits for a person", "href=\"#line-12\"", "id=\"line-12\"")
                .doesNotContain("Accept as measured</button>");
        assertThat(page(receipt, Role.ENGINEER)).contains("Accept as measured</button>");
        assertThat(page("/intake?state=HELD", Role.CREW)).contains("<strong>One survey waits</strong>");
    }

    @Test
    void anEngineerAcceptsVoidsAndRestoresByForm() throws Exception {
        String receipt = handIn(IntakeEstate.sheetOf(string, "2025-03-01T10:00", 5));
        submit(receipt + "/accept", "jar 6 is out for repair");
        String accepted = page(receipt, Role.ENGINEER);
        String survey = accepted.replaceAll("(?s).*href=\"(/surveys/\\d+)\".*", "$1");

        assertThat(accepted).contains("jar 6 is out for repair");
        submit(survey + "/void", "wrong string after all");
        assertThat(page(survey, Role.ENGINEER)).contains("Voided: it no longer counts", "Restore this survey");
        submit(survey + "/restore", "it was right");
        assertThat(page(survey, Role.ENGINEER)).contains("Void this survey").doesNotContain("no longer counts</h2>");
    }

    @Test
    void aCorrectedSurveyTakesThePlaceOfAWrongOneAndNothingIsLost() throws Exception {
        String wrong = survey(handIn(IntakeEstate.sheetOf(string, "2024-03-01T10:00")));
        String right = survey(handIn(IntakeEstate.sheetOf(string, "2024-03-02T10:00")));
        String number = right.substring(right.lastIndexOf('/') + 1);

        assertThat(page(wrong, Role.ENGINEER)).contains("<option value=\"" + number + "\"");
        mvc.perform(post("/api" + wrong + "/supersede")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"reason\": \"read again the day after\", \"by\": " + number + "}")
                        .with(as(Role.ENGINEER))
                        .with(csrf()))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.withdrawal.supersededBy").value(Integer.valueOf(number)))
                .andExpect(jsonPath("$.ohmic[0]").isNumber())
                .andExpect(jsonPath("$.gravity[0]").isEmpty());
        assertThat(page(wrong, Role.CREW)).contains("Superseded: another survey took its place", "href=\"" + right);
        mvc.perform(post("/api" + wrong + "/supersede")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"reason\": \"again\", \"by\": " + number + "}")
                        .with(as(Role.ENGINEER))
                        .with(csrf()))
                .andExpect(status().isConflict());
    }

    private String survey(String receipt) throws Exception {
        return page(receipt, Role.ENGINEER).replaceAll("(?s).*href=\"(/surveys/\\d+)\".*", "$1");
    }

    @Test
    void aSurveyStandsBesideTheOneBefore() throws Exception {
        handIn(IntakeEstate.sheetOf(string, "2024-03-01T10:00"));
        String receipt = handIn(IntakeEstate.sheetOf(string, "2025-03-01T10:00").replace("4,0.414", "4,0.621"));
        String survey = page(receipt, Role.CREW).replaceAll("(?s).*href=\"(/surveys/\\d+)\".*", "$1");

        assertThat(page(survey, Role.CREW))
                .contains("the survey of 2024-03-01", "0.621", "+50 %")
                .doesNotContain("<textarea");
    }

    @Test
    void aFormSentTwiceMakesOneUpload() throws Exception {
        UUID ticket = UUID.randomUUID();
        String sheet = IntakeEstate.sheetOf(string, "2025-03-01T10:00");

        assertThat(handIn(ticket, sheet)).isEqualTo(handIn(ticket, sheet));
    }

    @Test
    void severalFilesAreTakenInTogether() throws Exception {
        mvc.perform(multipart("/intake")
                        .file(file(IntakeEstate.sheetOf(string, "2024-03-01T10:00")))
                        .file(file(IntakeEstate.sheetOf(string, "2025-03-01T10:00")))
                        .param("ticket", UUID.randomUUID().toString())
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(redirectedUrl("/intake"));

        assertThat(page("/intake?state=ACCEPTED", Role.CREW).split("walk.csv")).hasSize(3);
    }

    @Test
    void whatAFileSaysIsNeverMarkup() throws Exception {
        String receipt = handIn(IntakeEstate.sheetOf(string, "2025-03-01T10:00")
                .replace("Crew 3", "<script>alert(1)</script>")
                .replace("ohmic frequency Hz", "<img src=x>"));

        assertThat(page(receipt, Role.CREW)).doesNotContain("<script>alert", "<img src=x>");
    }

    private String handIn(String sheet) throws Exception {
        return handIn(UUID.randomUUID(), sheet);
    }

    private String handIn(UUID ticket, String sheet) throws Exception {
        return mvc.perform(multipart("/intake")
                        .file(file(sheet))
                        .param("ticket", ticket.toString())
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
    }

    private static MockMultipartFile file(String sheet) {
        return new MockMultipartFile("file", "walk.csv", "text/csv", sheet.getBytes(StandardCharsets.UTF_8));
    }

    private void submit(String path, String reason) throws Exception {
        mvc.perform(post(path).param("reason", reason).with(as(Role.ENGINEER)).with(csrf()))
                .andExpect(status().is3xxRedirection());
    }

    private String page(String path, Role role) throws Exception {
        return mvc.perform(get(path).with(as(role)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
    }

    private RequestPostProcessor as(Role role) {
        String username = role.name().toLowerCase(Locale.ROOT) + ".pages.test";
        return SecurityMockMvcRequestPostProcessors.authentication(
                new PersonAuthentication(new Person(7, username, "Test", role, IntakeEstate.only(string))));
    }
}
