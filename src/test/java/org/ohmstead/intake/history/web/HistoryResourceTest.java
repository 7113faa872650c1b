package org.ohmstead.intake.history.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.IntakeEstate;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The contract of loading a history, as a client sees it. */
@ServiceTest
@Import(IntakeEstate.class)
class HistoryResourceTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    @Test
    void aHistoryIsTakenInOnceAndTellsOfItsFiles() throws Exception {
        StringView string = estate.stringOfSix();
        String two =
                IntakeEstate.sheetOf(string, "2025-03-10T09:30") + IntakeEstate.sheetOf(string, "2025-09-10T09:30");

        ResultActions first = send(two, as(Role.ENGINEER));
        first.andExpect(status().isCreated())
                .andExpect(jsonPath("$.counts.WAITING").value(2));
        String address = String.valueOf(first.andReturn().getResponse().getHeader("Location"));

        send(two, as(Role.ENGINEER)).andExpect(status().isOk()).andExpect(header().string("Location", address));
        mvc.perform(get(address).with(as(Role.ENGINEER)))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.fileName").value("years.csv"));
        mvc.perform(get(address + "/files").param("outcome", "WAITING").with(as(Role.ENGINEER)))
                .andExpect(jsonPath("$[1].takenAt").value("2025-09-10T09:30:00"));
        mvc.perform(get(address + "/files.csv").with(as(Role.ENGINEER)))
                .andExpect(content().string(containsString("1,years.csv from line 1,2025-03-10T09:30,Waiting,")));
        mvc.perform(get(address.replace("/api", "/intake")).with(as(Role.ENGINEER)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("It begins in a moment")));
    }

    @Test
    void onlyThoseWhoSettleSurveysLoadHistories() throws Exception {
        send("ohmstead survey sheet,1\n", as(Role.CREW)).andExpect(status().isForbidden());
    }

    @Test
    void anArchiveThatCannotBeOpenedIsAnsweredWithTheReason() throws Exception {
        String answer = send("PK\u0003\u0004 and nothing more", as(Role.ENGINEER))
                .andExpect(status().is(422))
                .andReturn()
                .getResponse()
                .getContentAsString();

        assertThat(answer).contains("no table of contents");
    }

    private static RequestPostProcessor as(Role role) {
        return authentication(
                new PersonAuthentication(new Person(7, "history." + role.name(), "Test", role, Reach.EVERYWHERE)));
    }

    private ResultActions send(String body, RequestPostProcessor who) throws Exception {
        return mvc.perform(post("/api/history?file=years.csv")
                .contentType("application/octet-stream")
                .content(body.getBytes(StandardCharsets.UTF_8))
                .with(csrf())
                .with(who));
    }
}
