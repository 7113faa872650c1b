package org.ohmstead.overview.web;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

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
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@ServiceTest
@Import(SurveyedString.class)
class OverviewServiceTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private SurveyedString surveyed;

    private StringView string;

    @BeforeEach
    void aStringIsSurveyed() {
        string = surveyed.build("OVW-" + ++count);
    }

    private ResultActions open(String address) throws Exception {
        return open(address, new Reach(false, Set.of(string.areaId())));
    }

    private ResultActions open(String address, Reach reach) throws Exception {
        Person person = new Person(9, "overview.test", "Test", Role.ENGINEER, reach);
        return mvc.perform(get(address).with(authentication(new PersonAuthentication(person))));
    }

    @Test
    void theEstateSaysWhoIsFirstInLine() throws Exception {
        open("/")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("/strings/" + string.id() + "\"")))
                .andExpect(content().string(containsString("First in line")));
        open("/?show=act").andExpect(status().isOk());
        open("/line").andExpect(status().isOk());
    }

    @Test
    void theFindBoxFindsSitesAndStringsInReach() throws Exception {
        open("/find?q=" + string.siteCode().toLowerCase(java.util.Locale.ROOT) + " a")
                .andExpect(content().string(containsString("/strings/" + string.id() + "\"")));
        open("/find?q=substation").andExpect(content().string(containsString("/sites/" + string.siteCode() + "\"")));
        open("/find?q=substation", new Reach(false, Set.of(-1L)))
                .andExpect(content().string(containsString("Nothing found")));
    }

    @Test
    void anUnknownFilterIsNotFound() throws Exception {
        open("/api/estate?show=purple").andExpect(status().isNotFound());
    }

    @Test
    void theStringIsDrawnWithItsHotspotAndItsMissingJar() throws Exception {
        open("/strings/" + string.id())
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("jar 17"),
                                containsString("link 9|10"),
                                containsString("60 µΩ"),
                                containsString("unmeasured"),
                                containsString("local codes"),
                                not(containsString("NaN")),
                                not(containsString("style=\"")))));
    }

    @Test
    void everyJarAndLinkHasItsPage() throws Exception {
        open("/strings/" + string.id() + "/jars/17")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("+61\u00a0%")));
        open("/strings/" + string.id() + "/links/9").andExpect(status().isOk());
        open("/strings/" + string.id() + "/links/0").andExpect(status().isOk());
        open("/strings/" + string.id() + "/jars/25").andExpect(status().isNotFound());
        open("/strings/" + string.id() + "/links/25").andExpect(status().isNotFound());
    }

    @Test
    void theSiteTellsItsStringsAndVisits() throws Exception {
        open("/sites/" + string.siteCode())
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("String A")))
                .andExpect(content().string(containsString("5\u00a0Oct\u00a02025")));
    }

    @Test
    void programsGetTheSame() throws Exception {
        open("/api/estate")
                .andExpect(jsonPath("$.counts.strings").value(1))
                .andExpect(jsonPath("$.counts.jars").value(24));
        open("/api/sites/" + string.siteCode() + "/overview").andExpect(jsonPath("$.strings", hasSize(1)));
        open("/api/strings/" + string.id() + "/overview")
                .andExpect(jsonPath("$.jars", hasSize(24)))
                .andExpect(jsonPath("$.jars[5].readOn").value("2024-10-05"))
                .andExpect(jsonPath("$.links[9].combined").value(60.0))
                .andExpect(jsonPath("$.surveys", hasSize(6)));
    }

    @Test
    void whatIsOutOfReachIsNotThere() throws Exception {
        Reach elsewhere = new Reach(false, Set.of(-1L));
        open("/strings/" + string.id(), elsewhere).andExpect(status().isNotFound());
        open("/strings/" + string.id() + "/jars/1", elsewhere).andExpect(status().isNotFound());
        open("/sites/" + string.siteCode(), elsewhere).andExpect(status().isNotFound());
        open("/api/estate", elsewhere).andExpect(jsonPath("$.counts.strings").value(0));
    }
}
