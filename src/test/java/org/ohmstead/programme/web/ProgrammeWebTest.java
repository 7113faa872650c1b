package org.ohmstead.programme.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.Set;
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
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A vented string under the usual pack since January 2025; today is 10 March 2026. */
@ServiceTest
class ProgrammeWebTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FleetRegister register;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private Access access;

    private StringView string;

    @BeforeEach
    void aVentedString() {
        String code = "PRW-" + ++count;
        string = access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            StringView made = register.createString(Entries.string(code, "A", code, 6, 6));
            keeping.assign(made.id(), null, LocalDate.parse("2025-01-10"));
            return made;
        });
    }

    private static RequestPostProcessor as(Role role) {
        return authentication(new PersonAuthentication(new Person(9, "web.test", "Test", role, Reach.EVERYWHERE)));
    }

    private String address() {
        return "/strings/" + string.id() + "/programme";
    }

    private String api() {
        return "/api/strings/" + string.id();
    }

    @Test
    void thePageNamesEveryRequirementWithClauseAndProvenance() throws Exception {
        mvc.perform(get(address()).with(as(Role.ENGINEER)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Inspect the electrolyte level")))
                .andExpect(content().string(containsString("Table 1-4(a)")))
                .andExpect(content().string(containsString("recalled, verify against your edition")))
                .andExpect(content().string(containsString("4 calendar months")));
        mvc.perform(get("/strings/" + string.id() + "/duties").with(as(Role.CREW)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("missed, by 31 May 2025")));
    }

    @Test
    void aPastDayIsShownAsItWas() throws Exception {
        mvc.perform(get(address()).param("asOf", "2025-03-01").with(as(Role.MANAGER)))
                .andExpect(content().string(containsString("due")))
                .andExpect(content().string(not(containsString("missed"))))
                .andExpect(content().string(not(containsString("Decide"))));
        mvc.perform(get(api() + "/duties").param("asOf", "2024-03-01").with(as(Role.MANAGER)))
                .andExpect(jsonPath("$.pack").isEmpty());
    }

    @Test
    void decisionsAreMadeByFormAndByRestAndListed() throws Exception {
        form("/election", "choice", "cell-condition/ohmic", "from", "2026-01-01");
        form("/interval", "requirement", "grounds", "months", "2", "from", "2026-01-01");
        mvc.perform(post(api() + "/programme/own-intervals")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"requirement\":\"grounds\",\"months\":9,\"from\":\"2026-01-01\"}"))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.detail").value(containsString("shorter than 4 calendar months")));
        mvc.perform(get(api() + "/programme").with(as(Role.ENGINEER)))
                .andExpect(jsonPath("$[*].kind").value(hasItem("ELECTION")))
                .andExpect(jsonPath("$[*].detail").value(hasItem("2")));
    }

    private void form(String act, String... fields) throws Exception {
        var request = post(address() + act).with(as(Role.ENGINEER)).with(csrf());
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i], fields[i + 1]);
        }
        mvc.perform(request).andExpect(status().is3xxRedirection()).andExpect(flash().attributeExists("notice"));
    }

    @Test
    void aWaiverIsGrantedWithAReasonAndEndedEarly() throws Exception {
        form("/waiver", "requirement", "grounds", "until", "2026-05-31", "reason", "road closed");
        mvc.perform(get(api() + "/duties").with(as(Role.ENGINEER)))
                .andExpect(jsonPath("$.duties[?(@.requirement.code == 'grounds')].spans[0].state")
                        .value(hasItem("WAIVED")));
        long waiver = access.asSystem("test", () -> keeping.decisions(string.id())).stream()
                .filter(decision -> decision.waiverId() != null)
                .findFirst()
                .orElseThrow()
                .waiverId();
        form("/waivers/" + waiver + "/end");
        mvc.perform(get(api() + "/duties").with(as(Role.ENGINEER)))
                .andExpect(jsonPath("$.duties[?(@.requirement.code == 'grounds')].spans[0].state")
                        .value(hasItem("MISSED")));
        mvc.perform(post(address() + "/waivers/" + waiver + "/end")
                        .with(as(Role.ENGINEER))
                        .with(csrf()))
                .andExpect(flash().attributeExists("problem"));
    }

    @Test
    void onlyTheRightPeopleDecide() throws Exception {
        for (Role role : Set.of(Role.CREW, Role.MANAGER)) {
            mvc.perform(post(address() + "/pack")
                            .with(as(role))
                            .with(csrf())
                            .param("pack", "empty")
                            .param("from", "2026-01-01"))
                    .andExpect(status().isForbidden());
        }
    }

    @Test
    void aPackIsCopiedAndShortenedByForm() throws Exception {
        String code = "own-web-" + count;
        mvc.perform(post("/library/packs/protection-vented")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .param("newCode", code)
                        .param("title", "Ours")
                        .param("inForceFrom", "2025-01-01")
                        .param("own_grounds", "3"))
                .andExpect(flash().attributeExists("notice"));
        mvc.perform(get("/library/packs/" + code).with(as(Role.CREW)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("own 3 months")));
        mvc.perform(post("/library/packs/protection-vented")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .param("newCode", code + "-x")
                        .param("title", "Ours")
                        .param("inForceFrom", "2025-01-01")
                        .param("own_grounds", "7"))
                .andExpect(flash().attribute("problem", containsString("shorter than 4 calendar months")));
        mvc.perform(get("/library/packs").with(as(Role.CREW)))
                .andExpect(content().string(containsString("protection-nickel-cadmium")));
    }

    @Test
    void aPackTravelsAsDataAndComesBackTheSame() throws Exception {
        String all = mvc.perform(
                        get("/api/rule-packs/protection-vented/versions").with(as(Role.ENGINEER)))
                .andReturn()
                .getResponse()
                .getContentAsString();
        String own = all.substring(1, all.length() - 1).replace("\"protection-vented\"", "\"own-data-" + count + "\"");
        mvc.perform(put("/api/rule-packs/own-data-" + count)
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(own))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.requirements.length()").value(10));
        mvc.perform(put("/api/rule-packs/protection-vented")
                        .with(as(Role.ENGINEER))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(all.substring(1, all.length() - 1)))
                .andExpect(status().isConflict());
    }
}
