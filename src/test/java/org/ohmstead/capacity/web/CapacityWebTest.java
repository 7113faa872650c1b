package org.ohmstead.capacity.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.overview.SurveyedString;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A string of 24 vented jars of 300 Ah at 8 h; today is 10 March 2026. */
@ServiceTest
class CapacityWebTest {

    private static final String TESTED = """
            {"testedOn":"2026-02-03","testedBy":"A. Crew","kind":"PERFORMANCE","method":"RATE_ADJUSTED",
             "ratings":{"amps":37.5,"minutes":480,"celsius":25,"endVoltsPerCell":1.75},"celsius":25%s}""";
    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private SurveyedString surveyed;

    private String code;
    private StringView string;

    @BeforeEach
    void aSurveyedString() {
        code = "CAW-" + ++count;
        string = surveyed.build(code);
    }

    private static RequestPostProcessor as(Role role) {
        return authentication(new PersonAuthentication(new Person(9, "capacity.web", "Test", role, Reach.EVERYWHERE)));
    }

    private ResultActions send(byte[] file, String... fields) throws Exception {
        var request = multipart("/strings/" + string.id() + "/capacity-tests");
        request.file(new MockMultipartFile("file", "recorder.csv", "text/csv", file));
        String[] always = {
            "testedOn", "2026-02-03", "testedBy", "A. Crew <b>", "kind", "PERFORMANCE", "method", "RATE_ADJUSTED",
            "ratedAmps", "37,5", "ratedMinutes", "480", "referenceCelsius", "25", "endVoltsPerCell", "1.75",
            "celsius", "25"
        };
        for (int i = 0; i < always.length; i += 2) {
            request.param(always[i], always[i + 1]);
        }
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i], fields[i + 1]);
        }
        return mvc.perform(request.with(as(Role.CREW)).with(csrf()));
    }

    private String follow(ResultActions sent) throws Exception {
        String address = sent.andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return mvc.perform(get(address).with(as(Role.ENGINEER)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void aTypedTestIsShownWithItsMethodAndItsJars() throws Exception {
        String page = follow(send(
                new byte[0],
                "amps",
                "37.5",
                "minutes",
                "456",
                "jarEndVolts",
                "1,80 ".repeat(16) + "1.52 - " + "1.80 ".repeat(6)));
        assertThat(page)
                .contains("95.0 %")
                .contains("456.0 / 480 = 95.0 %")
                .contains("Ended at 1.520 V, 0.230 V under its 1.75 V.")
                .contains("A. Crew &lt;b&gt;")
                .contains("<svg")
                .contains("Void this test");
        mvc.perform(get("/strings/" + string.id() + "/capacity-tests").with(as(Role.CREW)))
                .andExpect(content().string(containsString("of its rated capacity when last tested")))
                .andExpect(content().string(containsString("Test again by")));
        mvc.perform(get("/strings/" + string.id() + "/capacity").with(as(Role.CREW)))
                .andExpect(content().string(containsString("1 weak or reversed")));
        mvc.perform(get("/capacity?type=" + code).with(as(Role.MANAGER)))
                .andExpect(content().string(containsString("Ohmic values are no proof of capacity.")))
                .andExpect(content().string(containsString("in 1 test")));
    }

    @Test
    void aRecordThatCannotBeReadComesBackWithThePlaceAndWhatWasTyped() throws Exception {
        send(
                        "minutes,amps,string_volts\n0,37.5,49\n10,x,48\n".getBytes(StandardCharsets.UTF_8),
                        "note",
                        "kept as typed")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("recorder.csv cannot be read")))
                .andExpect(content().string(containsString("line 3, column 2")))
                .andExpect(content().string(containsString("kept as typed")));
        send(new byte[0], "amps", "lots", "minutes", "456")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("it stands for the current that was drawn")));
    }

    @Test
    void aRecordIsHandedBackAsItCame() throws Exception {
        byte[] record = "minutes,amps,string_volts\n0,37.5,49\n456,37.5,42\n".getBytes(StandardCharsets.UTF_8);
        String page = follow(send(record));
        assertThat(page).contains("recorder.csv, " + record.length + " bytes");
        String address = page.replaceAll("(?s).*(/capacity-tests/\\d+/record).*", "$1");
        mvc.perform(get(address).with(as(Role.CREW)))
                .andExpect(content().bytes(record))
                .andExpect(header().string("Content-Disposition", containsString("attachment")));
    }

    @Test
    void programsRecordReadAndVoid() throws Exception {
        String body = TESTED.formatted(",\"discharge\":{\"amps\":37.5,\"minutes\":456,\"stoppedEarly\":false}");
        String location = mvc.perform(post("/api/strings/" + string.id() + "/capacity-tests")
                        .with(as(Role.CREW))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.capacity.percent").value(95.0))
                .andReturn()
                .getResponse()
                .getHeader("Location");
        mvc.perform(post("/api/strings/" + string.id() + "/capacity-tests")
                        .with(as(Role.CREW))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body))
                .andExpect(status().isConflict());
        mvc.perform(post(location + "/void")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"reason\":\"misread\"}"))
                .andExpect(jsonPath("$.voidedBecause").value("misread"));
        byte[] record = "minutes;amps;string_volts\n0;37,5;49\n480;37,5;42\n".getBytes(StandardCharsets.UTF_8);
        mvc.perform(multipart("/api/strings/" + string.id() + "/capacity-tests")
                        .file(new MockMultipartFile("file", "r.csv", "text/csv", record))
                        .file(new MockMultipartFile(
                                "test",
                                "",
                                "application/json",
                                TESTED.formatted("").getBytes(StandardCharsets.UTF_8)))
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.capacity.percent").value(100.0));
    }

    @Test
    void outOfReachThereIsNoTest() throws Exception {
        String page = follow(send(new byte[0], "amps", "37.5", "minutes", "456"));
        String id = page.replaceAll("(?s).*/capacity-tests/(\\d+)/void.*", "$1");
        Person outside = new Person(9, "outside", "Test", Role.CREW, new Reach(false, Set.of()));
        for (String address : new String[] {"/capacity-tests/" + id, "/api/capacity-tests/" + id}) {
            mvc.perform(get(address).with(authentication(new PersonAuthentication(outside))))
                    .andExpect(status().isNotFound());
        }
        mvc.perform(get("/capacity").with(authentication(new PersonAuthentication(outside))))
                .andExpect(content().string(not(containsString(code))));
    }
}
