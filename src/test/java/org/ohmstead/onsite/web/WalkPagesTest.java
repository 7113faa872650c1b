package org.ohmstead.onsite.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.onsite.WalkedEstate;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The walk as JSON and as the long form that works without a script. */
@ServiceTest
@Import(WalkedEstate.class)
class WalkPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private WalkedEstate estate;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Access access;

    private StringView string;

    @BeforeEach
    void aString() {
        string = estate.stringOfSix();
    }

    @Test
    void theJsonHoldsTheWayWithLastValuesAndLimits() throws Exception {
        mvc.perform(get("/api/strings/{id}/walk", string.id()).with(as(Role.CREW, Reach.EVERYWHERE)))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.timeZone").value("Europe/Oslo"))
                .andExpect(jsonPath("$.ohmicKind").value("impedance"))
                .andExpect(jsonPath("$.ohmicUnit").value("mΩ"))
                .andExpect(jsonPath("$.positions").value(6))
                .andExpect(jsonPath("$.last.takenOn").value("2025-09-01"))
                .andExpect(jsonPath("$.instruments[0].serial").value("TS-7"))
                .andExpect(jsonPath("$.jars[2].ohmic").value(0.413))
                // the baseline of jar 3 is its first survey's 0.413 mΩ, the limit ±20 %
                .andExpect(jsonPath("$.jars[2].lowest").value(0.3304))
                .andExpect(jsonPath("$.jars[2].highest").value(0.4956))
                .andExpect(jsonPath("$.links.length()").value(7))
                .andExpect(jsonPath("$.links[3].name").value("link 3|4"))
                .andExpect(jsonPath("$.links[3].straps").value(1))
                // first read at 24 µΩ, the limit 20 % over that
                .andExpect(jsonPath("$.links[3].overBaselineMicroohms").value(28.8))
                .andExpect(jsonPath("$.limits.clampShare").value(0.05))
                .andExpect(jsonPath("$.cautions.length()").isNotEmpty());
    }

    @Test
    void aStringOutOfReachIsNotThere() throws Exception {
        Reach elsewhere = new Reach(false, java.util.Set.of());
        mvc.perform(get("/api/strings/{id}/walk", string.id()).with(as(Role.CREW, elsewhere)))
                .andExpect(status().isNotFound());
        mvc.perform(get("/strings/{id}/walk", string.id()).with(as(Role.CREW, elsewhere)))
                .andExpect(status().isNotFound());
    }

    @Test
    void thePageIsUsefulWithoutAScript() throws Exception {
        String page = mvc.perform(get("/strings/{id}/walk", string.id()).with(as(Role.CREW, Reach.EVERYWHERE)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page)
                .contains("Before you touch anything", "name=\"jar-6-ohmic\"", "name=\"link-0-1\"", "name=\"closing\"")
                .contains("expected 0.3304\u00a0mΩ to 0.4956\u00a0mΩ")
                .containsSubsequence("Jar 1<", "Link 1|2<", "Jar 2<", "Negative terminal link<", "Close the test<");
    }

    @Test
    void theLongFormSentTwiceIsOneSurveyWithItsClosingReadingNoted() throws Exception {
        UUID ticket = UUID.randomUUID();

        String receipt = handIn(WalkedEstate.typed(post("/strings/{id}/walk", string.id()), ticket));
        String again = handIn(WalkedEstate.typed(post("/strings/{id}/walk", string.id()), ticket));

        assertThat(again).isEqualTo(receipt).isEqualTo("/intake/" + ticket);
        SurveyRecord survey = estate.lastSurveyOf(string);
        assertThat(estate.surveysOf(string)).hasSize(3);
        assertThat(survey.readings().ohmic()[5]).isEqualTo(0.421, within(1e-9));
        assertThat(survey.readings().linkMicroohms()[6][0]).isEqualTo(12.4, within(1e-9));
        assertThat(survey.facts().note()).isEqualTo("Posts of jar 2 cleaned, vents clear");
        assertThat(page(receipt)).contains("has its survey", "CLOSING_READING");
    }

    @Test
    void aSkippedJarWaitsForAPersonWithTheReasonInTheNote() throws Exception {
        UUID ticket = UUID.randomUUID();

        String receipt = handIn(WalkedEstate.typed(post("/strings/{id}/walk", string.id()), ticket, "jar-4-ohmic")
                .param("skip-jar-4", "post covered"));

        assertThat(page(receipt)).contains("waits for a person", "POSITION_MISSING", "jar 4 (post covered)");
    }

    @Test
    void theCodeOfAStringOpensItsWalk() throws Exception {
        String svg = mvc.perform(get("/strings/{id}/qr.svg", string.id()).with(as(Role.CREW, Reach.EVERYWHERE)))
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Type", "image/svg+xml;charset=UTF-8"))
                .andReturn()
                .getResponse()
                .getContentAsString();

        assertThat(QrCodeTest.read(svg, 0)).isEqualTo("http://localhost/strings/" + string.id() + "/walk");
        assertThat(page("/strings/" + string.id())).contains("/strings/" + string.id() + "/qr.svg");
    }

    @Test
    void theCodeOfAStringOutOfReachIsNotThere() throws Exception {
        mvc.perform(get("/strings/{id}/qr.svg", string.id()).with(as(Role.CREW, new Reach(false, java.util.Set.of()))))
                .andExpect(status().isNotFound());
    }

    private String handIn(MockHttpServletRequestBuilder form) throws Exception {
        return mvc.perform(form.with(as(Role.CREW, Reach.EVERYWHERE)).with(csrf()))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
    }

    private String page(String address) throws Exception {
        return mvc.perform(get(address).with(as(Role.CREW, Reach.EVERYWHERE)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private static RequestPostProcessor as(Role role, Reach reach) {
        Person person = new Person(1, "crew", "Crew 3", role, reach);
        return SecurityMockMvcRequestPostProcessors.authentication(new PersonAuthentication(person));
    }
}
