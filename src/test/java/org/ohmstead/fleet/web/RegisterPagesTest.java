package org.ohmstead.fleet.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;

@ServiceTest
class RegisterPagesTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jarsAndLinks;

    @Autowired
    private Access access;

    @Autowired
    private SettableClock clock;

    private String tag = "";
    private StringView string;
    private String jars = "";
    private Role role = Role.ADMINISTRATOR;

    @BeforeEach
    void aStringWithJarsFarEast() {
        tag = "RP" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(tag));
            register.createSite(Entries.site(tag + "-S", tag, "Pacific/Kiritimati"));
            register.createJarType(Entries.jarType(tag + "-J"));
            string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 2, 2));
            jarsAndLinks.placeJar(Entries.jar(string, 1, tag + "-1", Entries.COMMISSIONED));
        });
        jars = "/register/strings/" + string.id() + "/jars";
    }

    @AfterEach
    void resetClock() {
        clock.set(SettableClock.START);
    }

    @Test
    void everyPageOfTheRegisterOpens() throws Exception {
        for (String address : new String[] {
            "/register",
            "/register?q=" + tag,
            "/register?q=nothing-like-this",
            "/register/areas/new",
            "/register/areas/" + tag,
            "/register/sites/new?area=" + tag,
            "/register/sites/" + tag + "-S",
            "/register/strings/new?site=" + tag + "-S",
            "/register/strings/" + string.id(),
            jars,
            jars + "?position=3",
            "/register/strings/" + string.id() + "/links/2",
            "/library",
            "/library/new",
            "/library/" + tag + "-J"
        }) {
            mvc.perform(signedIn(get(address))).andExpect(status().isOk());
        }
    }

    @Test
    void aFormComesBackWithItsMessageBesideTheField() throws Exception {
        mvc.perform(signedIn(post("/register/sites/new"))
                        .param("code", "not a code")
                        .param("name", "Tarn")
                        .param("area", tag)
                        .param("time_zone", "Mars/Olympus"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("value=\"not a code\"")))
                .andExpect(content().string(containsString("id=\"site-code-message\"")))
                .andExpect(content().string(containsString("Write the name of an IANA time zone")))
                .andExpect(content().string(not(containsString("site-name-message"))));
    }

    @Test
    void aStringIsAddedByItsForm() throws Exception {
        mvc.perform(signedIn(post("/register/strings/new"))
                        .param("site", tag + "-S")
                        .param("name", "B")
                        .param("jar_type", tag + "-J")
                        .param("tiers", "3+3")
                        .param("straps_per_link", "2")
                        .param("in_service_on", "2020-05-01"))
                .andExpect(status().is3xxRedirection());
        access.asSystem(
                "test",
                () -> assertThat(register.findString(tag + "-S", "B"))
                        .hasValueSatisfying(made -> assertThat(made.positions()).isEqualTo(6)));
    }

    @Test
    void aFormOpenedBeforeSomebodyElsesChangeIsNotSavedOverIt() throws Exception {
        access.asSystem(
                "test",
                () -> register.changeString(
                        string.id(), string.version(), Entries.string(tag + "-S", "A", tag + "-J", 2, 3)));
        mvc.perform(signedIn(post("/register/strings/" + string.id()))
                        .param("version", String.valueOf(string.version()))
                        .param("site", tag + "-S")
                        .param("name", "A")
                        .param("jar_type", tag + "-J")
                        .param("tiers", "2+2")
                        .param("in_service_on", "2018-04-01"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Somebody else changed this")));
    }

    @Test
    void aPlanIsToldInWordsWhileItIsTyped() throws Exception {
        mvc.perform(signedIn(get("/register/plan")).param("tiers", "30+30").param("straps_per_link", "2"))
                .andExpect(content()
                        .string(containsString("60 jars in 2 tiers; 61 links: 2 terminals, 58 links of 2 straps,"
                                + " tier cables between 30 and 31.")));
        mvc.perform(signedIn(get("/register/plan")).param("tiers", "30+"))
                .andExpect(content().string(containsString("Write the jars of each tier")));
    }

    @Test
    void aReplacedJarCanBeTakenBackFromThePage() throws Exception {
        mvc.perform(signedIn(post(jars))
                        .param("position", "1")
                        .param("serial", tag + "-9")
                        .param("from", "2025-02-01")
                        .param("jar_type", tag + "-J")
                        .param("reason", "leaking"))
                .andExpect(redirectedUrl(jars));
        OccupancyView newcomer = newest();
        assertThat(newcomer.serial()).isEqualTo(tag + "-9");
        mvc.perform(signedIn(post(jars + "/" + newcomer.id() + "/take-back"))).andExpect(redirectedUrl(jars));
        assertThat(newest().serial()).isEqualTo(tag + "-1");
        assertThat(newest().during().isOpenEnded()).isTrue();
    }

    @Test
    void theFormProposesTheSitesOwnDate() throws Exception {
        clock.set(Instant.parse("2026-03-10T12:00:00Z"));
        mvc.perform(signedIn(get(jars)))
                .andExpect(content().string(containsString("name=\"from\" value=\"2026-03-11\"")))
                .andExpect(content().string(containsString("name=\"remade_on\" value=\"2026-03-11\"")));
    }

    @Test
    void aRemakeOfAnUnknownDayComesBackWithAMessage() throws Exception {
        mvc.perform(signedIn(post(jars + "/remakes")).param("link", "2").param("remade_on", "yesterday"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("id=\"remake-remade-on-message\"")));
        mvc.perform(signedIn(post(jars + "/remakes")).param("link", "2").param("remade_on", "2025-06-01"))
                .andExpect(redirectedUrl(jars));
    }

    @Test
    void aFileIsPreviewedAndThenBroughtIn() throws Exception {
        String preview = mvc.perform(upload("code,name\n" + tag + "-S,Renamed"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("<ins>Renamed</ins>")))
                .andReturn()
                .getResponse()
                .getContentAsString();
        Matcher draft = Pattern.compile("name=\"draft\" value=\"([^\"]+)\"").matcher(preview);
        assertThat(draft.find()).isTrue();
        assertThat(name()).isEqualTo("Substation " + tag + "-S");
        mvc.perform(signedIn(post("/register/bring-in")).param("draft", draft.group(1)))
                .andExpect(redirectedUrl("/register"));
        assertThat(name()).isEqualTo("Renamed");
        mvc.perform(signedIn(post("/register/bring-in")).param("draft", draft.group(1)))
                .andExpect(status().isNotFound());
    }

    @Test
    void aFlawedFileIsNotOfferedForBringingIn() throws Exception {
        mvc.perform(upload("code,name\n" + tag + "-S,"))
                .andExpect(content().string(containsString("line 2, column 2")))
                .andExpect(content().string(not(containsString("name=\"draft\""))));
    }

    @Test
    void aManagerSeesTheRegisterWithoutItsActs() throws Exception {
        role = Role.MANAGER;
        mvc.perform(signedIn(get("/register")))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("/register/sites/new"))));
        mvc.perform(signedIn(get(jars))).andExpect(content().string(not(containsString("Take back"))));
        mvc.perform(signedIn(get("/register/sites/new"))).andExpect(status().isForbidden());
        mvc.perform(signedIn(post(jars + "/filling"))).andExpect(status().isForbidden());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/register/areas/new",
                "/register/sites/new",
                "/register/strings/new",
                "/library/new",
                "/register/strings/{id}?version=0",
                "/register/strings/{id}/jars",
                "/register/strings/{id}/jars/remakes"
            })
    void whoMayNotChangeTheRegisterIsRefusedBeforeTheFormIsLookedAt(String form) throws Exception {
        role = Role.CREW;
        mvc.perform(signedIn(post(form.replace("{id}", String.valueOf(string.id())))))
                .andExpect(status().isForbidden());
    }

    @Test
    void anotherStringsRecordIsNotFoundBelowThisOne() throws Exception {
        OccupancyView jar = newest();
        mvc.perform(signedIn(post("/register/strings/" + (string.id() + 100000) + "/jars/" + jar.id() + "/take-back")))
                .andExpect(status().isNotFound());
        assertThat(newest()).isEqualTo(jar);
    }

    private OccupancyView newest() {
        return access.asSystem("test", () -> {
            var all = register.blueprint(string.id()).occupancies();
            return all.get(all.size() - 1);
        });
    }

    private String name() {
        return access.asSystem("test", () -> register.site(tag + "-S").name());
    }

    private AbstractMockHttpServletRequestBuilder<?> upload(String file) {
        MockMultipartFile part =
                new MockMultipartFile("file", "sites.csv", "text/csv", file.getBytes(StandardCharsets.UTF_8));
        return signedIn(multipart("/register/preview").file(part).param("kind", "sites"));
    }

    private <B extends AbstractMockHttpServletRequestBuilder<B>> B signedIn(B request) {
        Person person = new Person(1, "somebody", "Somebody", role, Reach.EVERYWHERE);
        return request.with(authentication(new PersonAuthentication(person))).with(csrf());
    }
}
