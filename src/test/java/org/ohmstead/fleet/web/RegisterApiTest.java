package org.ohmstead.fleet.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@ServiceTest
class RegisterApiTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FleetRegister register;

    @Autowired
    private Access access;

    private String tag = "";
    private StringView string;
    private Role role = Role.ADMINISTRATOR;

    @BeforeEach
    void aStringOfFourJars() {
        tag = "RA" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(tag));
            register.createSite(Entries.site(tag + "-S", tag));
            register.createJarType(Entries.jarType(tag + "-J"));
            string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 2, 2));
        });
    }

    @Test
    void aSiteIsCreatedReadChangedAndRetired() throws Exception {
        String site = """
                {"code": "%s-T", "name": "Tarn", "area": "%s", "timeZone": "Asia/Kathmandu"}""".formatted(tag, tag);
        ask(post("/api/sites"), site)
                .andExpect(status().isCreated())
                .andExpect(header().string("Location", "/api/sites/" + tag + "-T"))
                .andExpect(jsonPath("$.version").value(0))
                .andExpect(jsonPath("$.timeZone").value("Asia/Kathmandu"));
        ask(put("/api/sites/" + tag + "-T?version=0"), site.replace("Tarn", "High tarn"))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.name").value("High tarn"));
        ask(put("/api/sites/" + tag + "-T?version=0"), site).andExpect(status().isConflict());
        ask(post("/api/sites/" + tag + "-T/retirement"), "{\"on\": \"2026-01-31\"}")
                .andExpect(jsonPath("$.retiredOn").value("2026-01-31"));
        ask(get("/api/sites/" + tag + "-T"), "")
                .andExpect(jsonPath("$.retiredOn").value("2026-01-31"));
    }

    @Test
    void aRefusalNamesEveryColumn() throws Exception {
        ask(post("/api/strings"), """
                        {"site": "%s-S", "name": "a/b", "strapsPerLink": 1, "parallelStrings": 1,
                         "surveyIntervalMonths": 12}""".formatted(tag))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.type").value("urn:ohmstead:problem:refused"))
                .andExpect(jsonPath("$.flaws[?(@.value == 'a/b')].remedy", hasSize(1)))
                .andExpect(jsonPath("$.flaws[?(@.message == 'tiers is missing.')]", hasSize(1)))
                .andExpect(jsonPath("$.flaws[?(@.message == 'in_service_on is missing.')]", hasSize(1)));
    }

    @Test
    void whatIsNotThereIsNotFound() throws Exception {
        ask(get("/api/sites/NOWHERE"), "")
                .andExpect(status().isNotFound())
                .andExpect(jsonPath("$.detail").value("There is no site NOWHERE."));
        ask(get("/api/strings/0"), "").andExpect(status().isNotFound());
        ask(get("/api/register/jars.csv"), "")
                .andExpect(status().isNotFound())
                .andExpect(jsonPath("$.detail", containsString("occupancies")));
    }

    @Test
    void anUnreadableBodySaysWhichField() throws Exception {
        ask(post("/api/sites"), "{\"timeZone\": \"Mars/Olympus\"}")
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.detail", startsWith("The field timeZone")));
        ask(post("/api/strings"), "{\"site\": \"X\"}")
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.detail").value("The field strapsPerLink is missing; it needs a number."));
        ask(post("/api/sites"), "{").andExpect(status().isBadRequest());
        ask(post("/api/sites"), "").andExpect(status().isBadRequest());
        ask(post("/api/sites/" + tag + "-S/retirement"), "{}").andExpect(status().isUnprocessableContent());
    }

    @Test
    void aJarIsPlacedReplacedAndTakenBack() throws Exception {
        String jars = "/api/strings/" + string.id() + "/occupancies";
        ask(post(jars), "{\"position\": 3, \"serial\": \"%s-1\", \"from\": \"2018-04-01\"}".formatted(tag))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.jarTypeCode").value(tag + "-J"));
        ask(post(jars), "{\"position\": 3, \"serial\": \"%s-2\", \"from\": \"2024-01-01\"}".formatted(tag))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.detail", containsString("holds jar " + tag + "-1")));
        String location = ask(
                        post(jars + "/replacement"),
                        "{\"position\": 3, \"serial\": \"%s-2\", \"from\": \"2024-01-01\", \"reason\": \"cracked lid\"}"
                                .formatted(tag))
                .andExpect(status().isCreated())
                .andReturn()
                .getResponse()
                .getHeader("Location");
        ask(get(jars), "")
                .andExpect(jsonPath("$", hasSize(2)))
                .andExpect(jsonPath("$[0].during.until").value("2024-01-01"))
                .andExpect(jsonPath("$[0].leftReason").value("cracked lid"));
        ask(delete(location), "").andExpect(status().isNoContent());
        ask(get(jars), "").andExpect(jsonPath("$", hasSize(1)));
    }

    @Test
    void aRemakeIsRecordedWithWhatWasFoundAndLeft() throws Exception {
        String remakes = "/api/strings/" + string.id() + "/remakes";
        ask(
                        post(remakes),
                        "{\"ordinal\": 2, \"remadeOn\": \"2025-03-01\", \"asFoundMicroohms\": 88.5, \"asLeftMicroohms\": 24}")
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.asFoundMicroohms").value(88.5));
        ask(post(remakes), "{\"ordinal\": 2, \"remadeOn\": \"2025-03-01\"}").andExpect(status().isConflict());
        ask(get("/api/strings/" + string.id() + "/links"), "")
                .andExpect(jsonPath("$[2].kind").value("TIER_CABLE"))
                .andExpect(jsonPath("$", hasSize(5)));
    }

    @Test
    void filesComeOutAndGoIn() throws Exception {
        String file = "code,name\n" + tag + "-S,Renamed\n";
        mvc.perform(signedIn(post("/api/register/sites.csv?preview=true"))
                        .content(file)
                        .contentType("text/csv"))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.written").value(false))
                .andExpect(jsonPath("$.changed").value(1))
                .andExpect(jsonPath("$.changes[0].cells.name[1]").value("Renamed"));
        mvc.perform(signedIn(post("/api/register/sites.csv")).content(file).contentType("text/csv"))
                .andExpect(jsonPath("$.written").value(true));
        mvc.perform(signedIn(get("/api/register/sites.csv")))
                .andExpect(header().string("Content-Disposition", containsString("sites.csv")))
                .andExpect(content().string(containsString(tag + "-S,Renamed,")));
        mvc.perform(signedIn(post("/api/register/sites.csv"))
                        .content("code,name\nx y,")
                        .contentType("text/csv"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.flaws[0].line").value(2));
        mvc.perform(signedIn(get("/api/register.zip"))).andExpect(status().isOk());
    }

    @Test
    void aCrewMayReadButNotChange() throws Exception {
        role = Role.CREW;
        ask(get("/api/strings/" + string.id() + "/blueprint"), "").andExpect(status().isOk());
        ask(post("/api/jar-types/" + tag + "-J/retirement"), "{\"on\": \"2026-01-31\"}")
                .andExpect(status().isForbidden());
        mvc.perform(signedIn(post("/api/register/sites.csv")).content("code\nX").contentType("text/csv"))
                .andExpect(status().isForbidden());
    }

    @Test
    void aStrangerSeesNothing() throws Exception {
        mvc.perform(get("/api/sites")).andExpect(status().isUnauthorized());
    }

    private ResultActions ask(MockHttpServletRequestBuilder request, String body) throws Exception {
        return mvc.perform(
                signedIn(request).contentType(MediaType.APPLICATION_JSON).content(body));
    }

    private MockHttpServletRequestBuilder signedIn(MockHttpServletRequestBuilder request) {
        Person person = new Person(1, "somebody", "Somebody", role, Reach.EVERYWHERE);
        return request.with(authentication(new PersonAuthentication(person))).with(csrf());
    }
}
