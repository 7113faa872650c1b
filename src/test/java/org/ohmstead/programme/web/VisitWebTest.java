package org.ohmstead.programme.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
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
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.VisitView;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A site with two vented strings; today is 10 March 2026. */
@ServiceTest
class VisitWebTest {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 0};
    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FleetRegister register;

    @Autowired
    private VisitBook visits;

    @Autowired
    private Access access;

    private String site;
    private StringView a;
    private StringView b;

    @BeforeEach
    void aSiteWithTwoStrings() {
        site = "VIS-" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(site));
            register.createSite(Entries.site(site, site));
            register.createJarType(Entries.jarType(site));
            a = register.createString(Entries.string(site, "A", site, 6, 6));
            b = register.createString(Entries.string(site, "B", site, 6, 6));
        });
    }

    private static RequestPostProcessor as(Role role, Reach reach) {
        return authentication(new PersonAuthentication(new Person(9, "visit.test", "Test", role, reach)));
    }

    private static RequestPostProcessor crew() {
        return as(Role.CREW, Reach.EVERYWHERE);
    }

    private ResultActions send(MockMultipartFile photograph, String... fields) throws Exception {
        var request = multipart("/sites/" + site + "/visit");
        request.file(photograph).param("visitedOn", "2026-03-09").param("visitedBy", "A. Crew");
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i], fields[i + 1]);
        }
        return mvc.perform(request.with(crew()).with(csrf()));
    }

    private MockMultipartFile photograph(byte[] bytes) {
        return new MockMultipartFile("photos-" + a.id(), "<b>rack</b>.html", "text/html", bytes);
    }

    private String key(StringView string, EvidenceKind point, String field) {
        return string.id() + "-" + point + "-" + field;
    }

    private List<VisitView> visitsOf(StringView string) {
        return access.asSystem("test", () -> visits.visitsOf(string.id()));
    }

    @Test
    void theListHasWhatMakesSenseForTheTechnology() throws Exception {
        mvc.perform(get("/sites/" + site + "/visit").with(crew()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("electrolyte level")))
                .andExpect(content().string(containsString("value=\"2026-03-10\"")));
        mvc.perform(get("/sites/" + site + "/visit").with(as(Role.MANAGER, Reach.EVERYWHERE)))
                .andExpect(status().isForbidden());
    }

    @Test
    void oneFormRecordsAVisitToEachStringLookedAt() throws Exception {
        send(
                        photograph(PNG),
                        key(a, EvidenceKind.CHECK_GROUNDS, "outcome"),
                        "SOUND",
                        key(a, EvidenceKind.CHECK_DC_SUPPLY_VOLTAGE, "outcome"),
                        "FOUND",
                        key(a, EvidenceKind.CHECK_DC_SUPPLY_VOLTAGE, "value"),
                        "121,4",
                        key(a, EvidenceKind.CHECK_DC_SUPPLY_VOLTAGE, "note"),
                        "four volts low",
                        key(b, EvidenceKind.CHECK_RACK, "outcome"),
                        "SOUND")
                .andExpect(status().is3xxRedirection())
                .andExpect(flash().attribute("notice", "2 visits are recorded."));
        assertThat(visitsOf(a)).singleElement().satisfies(visit -> {
            assertThat(visit.items()).hasSize(2);
            assertThat(visit.findings())
                    .singleElement()
                    .satisfies(item -> assertThat(item.value()).isEqualTo(121.4));
        });
        assertThat(visitsOf(b)).hasSize(1);
        mvc.perform(get("/visits/" + visitsOf(a).get(0).id()).with(crew()))
                .andExpect(content().string(containsString("four volts low")))
                .andExpect(content().string(containsString("&lt;b&gt;rack&lt;/b&gt;")));
    }

    @Test
    void aFormSentTwiceRecordsOneVisitAndIsNoFormForAnother() throws Exception {
        String form = UUID.randomUUID().toString();
        for (int time = 0; time < 2; time++) {
            send(photograph(PNG), "form", form, key(a, EvidenceKind.CHECK_RACK, "outcome"), "SOUND")
                    .andExpect(status().is3xxRedirection());
        }
        assertThat(visitsOf(a)).hasSize(1);
        send(photograph(PNG), "form", form, key(a, EvidenceKind.CHECK_GROUNDS, "outcome"), "SOUND")
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("handed in before and said something else")));
        send(photograph(PNG), key(a, EvidenceKind.CHECK_RACK, "outcome"), "SOUND");
        assertThat(visitsOf(a)).as("another form may say the same").hasSize(2);
    }

    @Test
    void aFormSentFromSeveralPlacesAtOnceRecordsOneVisit() throws Exception {
        String form = UUID.randomUUID().toString();
        ExecutorService senders = Executors.newFixedThreadPool(4);
        List<Callable<Integer>> sending = Collections.nCopies(
                8,
                () -> send(photograph(PNG), "form", form, key(a, EvidenceKind.CHECK_RACK, "outcome"), "SOUND")
                        .andReturn()
                        .getResponse()
                        .getStatus());
        for (Future<Integer> answer : senders.invokeAll(sending)) {
            assertThat(answer.get()).isEqualTo(302);
        }
        senders.shutdown();
        assertThat(visitsOf(a)).hasSize(1);
    }

    @Test
    void aPhotographIsServedAsWhatItIsAndNeverAsWhatItClaims() throws Exception {
        send(photograph(PNG), key(a, EvidenceKind.CHECK_RACK, "outcome"), "SOUND");
        long visit = visitsOf(a).get(0).id();
        String id = mvc.perform(get("/api/visits/" + visit + "/photos").with(crew()))
                .andExpect(jsonPath("$[0].mediaType").value("image/png"))
                .andReturn()
                .getResponse()
                .getContentAsString()
                .replaceAll(".*?\"id\":(\\d+).*", "$1");
        mvc.perform(get("/visits/" + visit + "/photos/" + id).with(crew()))
                .andExpect(content().contentType("image/png"))
                .andExpect(content().bytes(PNG))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Content-Security-Policy", "default-src 'none'; sandbox"))
                .andExpect(header().string(
                                "Content-Disposition", containsString("visit-" + visit + "-photo-" + id + ".png")));
        mvc.perform(get("/visits/" + visit + "/photos/" + id).with(as(Role.CREW, new Reach(false, Set.of()))))
                .andExpect(status().isNotFound());
    }

    @Test
    void whatIsNoPictureIsRefusedAndNothingIsRecorded() throws Exception {
        send(
                        photograph("<script>alert(1)</script>".getBytes(java.nio.charset.StandardCharsets.UTF_8)),
                        key(a, EvidenceKind.CHECK_RACK, "outcome"),
                        "SOUND",
                        key(a, EvidenceKind.CHECK_RACK, "note"),
                        "typed before")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("is no JPEG, PNG or WebP picture")))
                .andExpect(content().string(containsString("typed before")));
        assertThat(visitsOf(a)).isEmpty();
        byte[] large = Arrays.copyOf(PNG, 10 * 1024 * 1024 + 1);
        send(photograph(large), key(a, EvidenceKind.CHECK_RACK, "outcome"), "SOUND")
                .andExpect(content().string(containsString("larger than 10 MB")));
        assertThat(visitsOf(a)).isEmpty();
    }

    @Test
    void anEmptyListAndAFindingWithoutWordsAreRefused() throws Exception {
        send(photograph(new byte[0])).andExpect(content().string(containsString("Nothing was looked at")));
        send(photograph(new byte[0]), key(a, EvidenceKind.CHECK_RACK, "outcome"), "FOUND")
                .andExpect(content().string(containsString("Say what was found: rack")));
    }

    @Test
    void visitsAreRecordedAndVoidedByRest() throws Exception {
        mvc.perform(post("/api/strings/" + a.id() + "/visits")
                        .with(crew())
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"visitedOn\":\"2026-03-09\",\"visitedBy\":\"A. Crew\","
                                + "\"items\":[{\"item\":\"CHECK_GROUNDS\",\"outcome\":\"SOUND\",\"note\":\"\"}]}"))
                .andExpect(status().isCreated())
                .andExpect(header().exists("Location"));
        long id = visitsOf(a).get(0).id();
        mvc.perform(post("/api/visits/" + id + "/void")
                        .with(as(Role.ENGINEER, Reach.EVERYWHERE))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"reason\":\"wrong string\"}"))
                .andExpect(jsonPath("$.voidedBecause").value("wrong string"));
        mvc.perform(multipart("/api/visits/" + id + "/photos")
                        .file(new MockMultipartFile("file", "a.png", "image/png", PNG))
                        .with(crew())
                        .with(csrf()))
                .andExpect(status().isConflict());
    }
}
