package org.ohmstead.web;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.hamcrest.Matchers;
import org.junit.jupiter.api.Test;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

class UnexpectedTest {

    private final MockMvc web = MockMvcBuilders.standaloneSetup(new Broken())
            .setControllerAdvice(new Unexpected())
            .build();

    @RestController
    static class Broken {

        @GetMapping({"/api/broken", "/broken"})
        String broken() {
            throw new IllegalStateException("secret of the house");
        }
    }

    @Test
    void theApiAnswersWithAProblemThatTellsNothingOfTheInside() throws Exception {
        web.perform(get("/api/broken"))
                .andExpect(status().isInternalServerError())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.type").value("urn:ohmstead:problem:internal"))
                .andExpect(content().string(Matchers.not(Matchers.containsString("secret"))));
    }

    @Test
    void aPageLeavesItToTheErrorPage() {
        assertThatThrownBy(() -> web.perform(get("/broken"))).hasMessageContaining("secret of the house");
    }
}
