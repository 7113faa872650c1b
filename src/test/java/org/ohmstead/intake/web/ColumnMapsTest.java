package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
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
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A table that no map fits leads to the builder; once its map is saved, such tables are surveys. */
@ServiceTest
@Import(IntakeEstate.class)
class ColumnMapsTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    private StringView string;
    private String name;

    @BeforeEach
    void aString() {
        string = estate.stringOfSix();
        name = "log of " + string.siteCode();
    }

    @Test
    void aTableThatNoMapFitsIsKeptAndLeadsToTheBuilder() throws Exception {
        UUID id = UUID.randomUUID();
        handIn(id, table("2025-03-01")).andExpect(jsonPath("$.state").value("REFUSED"));

        assertThat(page("/intake/" + id, Role.CREW)).contains("/intake/maps/new?upload=" + id);
        assertThat(page("/intake/maps/new?upload=" + id, Role.CREW))
                .contains("value=\"Jar of " + string.siteCode() + "\"", "As it will be read", "id=\"rows-as-read\"");
    }

    @Test
    void aSavedMapMakesSurveysOfSuchTables() throws Exception {
        save().andExpect(status().isOk()).andExpect(jsonPath("$.version").value(1));

        UUID id = UUID.randomUUID();
        handIn(id, table("2025-03-02"))
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.string").value(string.title()))
                .andExpect(jsonPath("$.jars").value(6))
                .andExpect(jsonPath("$.links").value(7))
                .andExpect(jsonPath("$.remarks[0].code").value("READ_BY_MAP"))
                .andExpect(jsonPath("$.remarks[0].seen").value(name + ", version 1"));
    }

    @Test
    void savingAgainMakesTheNextVersionAndARetiredMapIsNotTried() throws Exception {
        save();
        save().andExpect(jsonPath("$.version").value(2));
        mvc.perform(delete("/api/column-maps/" + name).with(as(Role.ENGINEER)).with(csrf()))
                .andExpect(jsonPath("$.retired").value(true));

        handIn(UUID.randomUUID(), table("2025-03-03"))
                .andExpect(jsonPath("$.state").value("REFUSED"));
    }

    @Test
    void aMapOfAnotherAreaIsNotReplacedUnderItsName() throws Exception {
        saveFor(string).andExpect(status().isOk());
        StringView elsewhere = estate.stringOfSix();
        string = elsewhere;

        saveFor(elsewhere)
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.detail")
                        .value("A map of an area out of your reach has that name; choose another."));
        save().andExpect(status().isUnprocessableContent());
    }

    @Test
    void aPreviewSaysWhatHandingInWouldComeToAndKeepsNothing() throws Exception {
        UUID id = UUID.randomUUID();
        handIn(id, table("2025-03-04"));

        mvc.perform(post("/api/column-maps/preview?upload=" + id)
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(map())
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.fits").value(true))
                .andExpect(jsonPath("$.state").value("ACCEPTED"))
                .andExpect(jsonPath("$.sheets[0].rows.length()").value(7));
        mvc.perform(get("/api/uploads/" + id).with(as(Role.CREW)))
                .andExpect(jsonPath("$.surveyId").isEmpty());
    }

    @Test
    void aMapThatCouldNeverReadAnythingIsRefusedAndCrewsSaveNone() throws Exception {
        mvc.perform(put("/api/column-maps/none")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"columns\": [{\"title\": \"A\", \"holds\": \"luck\"}]}")
                        .with(as(Role.ENGINEER))
                        .with(csrf()))
                .andExpect(status().isUnprocessableContent());
        mvc.perform(put("/api/column-maps/" + name)
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(map())
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().isForbidden());
    }

    @Test
    void aMapSavedByTheFormReadsItsSampleAtOnce() throws Exception {
        UUID id = UUID.randomUUID();
        handIn(id, table("2025-03-05"), Role.ENGINEER);
        String receipt = mvc.perform(post("/intake/maps/save?upload=" + id)
                        .param("name", name)
                        .param("delimiter", ";")
                        .param("quote", "\"")
                        .param("decimalMark", ",")
                        .param("timePattern", "dd.MM.yyyy HH:mm")
                        .param("columnTitle", "Jar of " + string.siteCode(), "Z", "U", "Joint", "")
                        .param("columnHolds", "position", "jar ohmic", "jar volts", "link", "")
                        .param("columnUnit", "", "mΩ", "V", "µΩ", "")
                        .param("columnLinkUnit", "", "", "", "", "")
                        .param("factKey", "site", "string", "taken at", "ohmic kind", "ohmic frequency", "ambient", "")
                        .param("factLabel", "Room", "Row", "Date", "", "", "Air", "")
                        .param("factValue", "", "", "", "impedance", "60", "", "")
                        .param("factUnit", "", "", "", "", "Hz", "", "")
                        .with(as(Role.ENGINEER))
                        .with(csrf()))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();

        assertThat(page(receipt, Role.ENGINEER)).contains("has its survey", "Accepted");
        assertThat(page("/intake/maps", Role.CREW)).contains(name).doesNotContain("Retire<");
    }

    private ResultActions handIn(UUID id, String table) throws Exception {
        return handIn(id, table, Role.CREW);
    }

    private ResultActions handIn(UUID id, String table, Role role) throws Exception {
        MockMultipartFile file =
                new MockMultipartFile("file", "log.csv", "text/csv", table.getBytes(StandardCharsets.UTF_8));
        return mvc.perform(multipart("/api/uploads")
                .file(file)
                .param("id", id.toString())
                .with(as(role))
                .with(csrf()));
    }

    private ResultActions save() throws Exception {
        return saveAt("/api/column-maps/" + name);
    }

    private ResultActions saveFor(StringView place) throws Exception {
        return saveAt("/api/column-maps/" + name + "?area=" + place.areaId());
    }

    private ResultActions saveAt(String address) throws Exception {
        return mvc.perform(put(address)
                .contentType(MediaType.APPLICATION_JSON)
                .content(map())
                .with(as(Role.ENGINEER))
                .with(csrf()));
    }

    /** Each test's table has a title of its own, so that no other test's map fits it. */
    private String table(String date) {
        String[] day = date.split("-");
        StringBuilder table = new StringBuilder(
                "Room;" + string.siteCode() + "\nRow;" + string.name() + "\nDate;" + day[2] + "." + day[1] + "."
                        + day[0] + " 10:00\nAir;21 °C\n\nJar of " + string.siteCode() + ";Z;U;Joint\n0;;;12,1\n");
        for (int k = 1; k <= 6; k++) {
            table.append(String.format(Locale.ROOT, "%d;0,%d;2,23;%s%n", k, 410 + k, k == 6 ? "12,3" : "24,0"));
        }
        return table.toString();
    }

    private String map() {
        return """
                {"delimiter": ";", "decimalMark": ",", "timePattern": "dd.MM.yyyy HH:mm",
                 "facts": [{"fact": "site", "label": "Room"}, {"fact": "string", "label": "Row"},
                           {"fact": "taken at", "label": "Date"}, {"fact": "ambient", "label": "Air"},
                           {"fact": "ohmic kind", "value": "impedance"},
                           {"fact": "ohmic frequency", "value": "60", "unit": "Hz"}],
                 "columns": [{"title": "Jar of %s", "holds": "position"}, {"title": "Z", "holds": "jar ohmic", "unit": "mΩ"},
                             {"title": "U", "holds": "jar volts"}, {"title": "Joint", "holds": "link", "unit": "µΩ"}]}
                """.formatted(string.siteCode());
    }

    private String page(String path, Role role) throws Exception {
        return mvc.perform(get(path).with(as(role)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
    }

    private RequestPostProcessor as(Role role) {
        String username = role.name().toLowerCase(Locale.ROOT) + ".of-maps";
        return SecurityMockMvcRequestPostProcessors.authentication(
                new PersonAuthentication(new Person(7, username, "Test", role, IntakeEstate.only(string))));
    }
}
