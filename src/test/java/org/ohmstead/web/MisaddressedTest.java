package org.ohmstead.web;

import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** People get the error page with a sentence, programs a problem of the catalogue. */
@ServiceTest
class MisaddressedTest {

    private static final RequestPostProcessor ENGINEER = authentication(
            new PersonAuthentication(new Person(9, "web.test", "Test", Role.ENGINEER, Reach.EVERYWHERE)));

    @Autowired
    private MockMvc web;

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "/nothing-of-the-kind, 404, There is nothing at this address.",
                "/strings/abc, 400, “abc” cannot stand for “stringId” in this address.",
                "/forecast?quarters=many, 400, “many” cannot stand for “quarters” in this address.",
                "/intake/maps/new, 400, \"This address needs “upload”, which was left out.\""
            })
    void aPageSaysWhatIsWrongWithItsAddress(String address, int status, String sentence) throws Exception {
        web.perform(get(address).accept(MediaType.TEXT_HTML).with(ENGINEER))
                .andExpect(status().is(status))
                .andExpect(status().reason(sentence));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "/api/nothing-of-the-kind, 404, not-found, There is nothing at this address.",
                "/api/strings/abc/assessment, 400, malformed, “abc” cannot stand for “stringId” in this address."
            })
    void theApiAnswersWithAProblem(String address, int status, String type, String sentence) throws Exception {
        web.perform(get(address).with(ENGINEER))
                .andExpect(status().is(status))
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.type").value("urn:ohmstead:problem:" + type))
                .andExpect(jsonPath("$.detail").value(sentence));
    }

    @Test
    void anotherMethodIsToldWhichOneIsAccepted() throws Exception {
        web.perform(delete("/api/assessments").with(ENGINEER).with(csrf()))
                .andExpect(status().isMethodNotAllowed())
                .andExpect(header().string("Allow", containsString("GET")))
                .andExpect(jsonPath("$.type").value("urn:ohmstead:problem:not-accepted"))
                .andExpect(jsonPath("$.detail").value(containsString("DELETE is not accepted here.")));
    }
}
