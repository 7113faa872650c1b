package org.ohmstead.web;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

class MissingFieldsTest {

    private final MockMvc web = MockMvcBuilders.standaloneSetup(new Desk())
            .setControllerAdvice(new MissingFields(), new Problems())
            .build();

    record Point(String name, @Nullable String note) {}

    record Sheet(String reason, @Nullable Long other, Point first, List<Point> more) {}

    @RestController
    static class Desk {

        @PostMapping("/api/sheets")
        void take(@RequestBody Sheet sheet) {}
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '\'',
            value = {
                "'{}', reason",
                "'{\"reason\":\"r\",\"first\":{},\"more\":[]}', first.name",
                "'{\"reason\":\"r\",\"first\":{\"name\":\"n\"}}', more",
                "'{\"reason\":\"r\",\"first\":{\"name\":\"n\"},\"more\":[{\"name\":\"n\"},{\"note\":\"n\"}]}', more[1].name"
            })
    void theFirstFieldThatIsMissingIsNamed(String body, String field) throws Exception {
        web.perform(post("/api/sheets").contentType(MediaType.APPLICATION_JSON).content(body))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.type").value("urn:ohmstead:problem:refused"))
                .andExpect(jsonPath("$.detail").value("Give \"" + field + "\"."));
    }

    @Test
    void whatMayBeLeftOutIsNotAskedFor() throws Exception {
        String body = "{\"reason\":\"r\",\"first\":{\"name\":\"n\"},\"more\":[{\"name\":\"n\"}]}";
        web.perform(post("/api/sheets").contentType(MediaType.APPLICATION_JSON).content(body))
                .andExpect(status().isOk());
    }
}
