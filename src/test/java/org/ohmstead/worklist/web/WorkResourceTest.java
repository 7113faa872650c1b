package org.ohmstead.worklist.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasSize;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
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
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A string that was never surveyed: it asks to be read. Today is 10 March 2026. */
@ServiceTest
class WorkResourceTest {

    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private Access access;

    @Autowired
    private MockMvc mvc;

    private StringView string;

    @BeforeEach
    void aStringThatWasNeverSurveyed() {
        String code = "WRE-" + ++count;
        string = access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            return register.createString(Entries.string(code, "A", code, 6, 6));
        });
    }

    private static PersonAuthentication person(Role role, Reach reach) {
        return new PersonAuthentication(new Person(9, "work.rest", "Test", role, reach));
    }

    private static PersonAuthentication engineer() {
        return person(Role.ENGINEER, Reach.EVERYWHERE);
    }

    private ResultActions send(PersonAuthentication who, String path, String body) throws Exception {
        return mvc.perform(post(path)
                .with(authentication(who))
                .with(csrf())
                .contentType(MediaType.APPLICATION_JSON)
                .content(body));
    }

    private long raised(String kind, String subject, String unit) throws Exception {
        String answer = send(
                        engineer(),
                        "/api/work",
                        "{\"stringId\":" + string.id() + ",\"kind\":\"" + kind + "\",\"subject\":\"" + subject
                                + "\",\"unit\":" + unit + ",\"urgency\":\"PLAN\",\"reason\":\"=SUM of a lug, seen\"}")
                .andExpect(status().isCreated())
                .andReturn()
                .getResponse()
                .getContentAsString();
        return JsonPath.<Number>read(answer, "$.id").longValue();
    }

    @Test
    void theListIsServedFilteredAndOneByOne() throws Exception {
        long id = raised("REMAKE_LINK", "LINK", "4");
        mvc.perform(get("/api/work")
                        .param("string", String.valueOf(string.id()))
                        .with(authentication(engineer())))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.total").value(2))
                .andExpect(jsonPath("$.items[0].kind").value("REMAKE_LINK"))
                .andExpect(jsonPath("$.items[0].what").value("link 4|5"))
                .andExpect(jsonPath("$.items[1].kind").value("MEASURE_AGAIN"));
        mvc.perform(get("/api/work")
                        .param("site", string.siteCode())
                        .param("kind", "REMAKE_LINK", "REPLACE_JAR")
                        .param("state", "PLANNED")
                        .with(authentication(engineer())))
                .andExpect(jsonPath("$.total").value(0));
        mvc.perform(get("/api/work/{id}", id).with(authentication(engineer())))
                .andExpect(jsonPath("$.item.state").value("RAISED"))
                .andExpect(jsonPath("$.events", hasSize(1)));
        mvc.perform(get("/api/strings/{id}/work", string.id()).with(authentication(engineer())))
                .andExpect(jsonPath("$", hasSize(2)));
        mvc.perform(get("/api/work/counts").param("area", string.siteCode()).with(authentication(engineer())))
                .andExpect(jsonPath("$.RAISED").value(2));
        mvc.perform(get("/api/work").param("size", "0").with(authentication(engineer())))
                .andExpect(status().isUnprocessableContent());
    }

    @Test
    void anItemGoesItsWayByRest() throws Exception {
        long id = raised("REMAKE_LINK", "LINK", "4");
        send(engineer(), "/api/work/" + id + "/plan", "{\"on\":\"2026-03-20\",\"assignee\":\"Crew North\"}")
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.state").value("PLANNED"));
        send(
                        engineer(),
                        "/api/work/" + id + "/done",
                        "{\"on\":\"2026-03-09\",\"by\":\"A. Crew\",\"asLeftMicroohms\":24.5}")
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.state").value("DONE"))
                .andExpect(jsonPath("$.doneNote").value("as left 24.5 µΩ"));
        send(engineer(), "/api/work/" + id + "/plan", "{\"on\":\"2026-03-20\"}")
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.detail").value(containsString("Take the report back")));
        send(engineer(), "/api/work/" + id + "/reopen", "{}")
                .andExpect(jsonPath("$.state").value("PLANNED"));
        send(engineer(), "/api/work/" + id + "/dismiss", "{}").andExpect(status().isUnprocessableContent());
        send(engineer(), "/api/work/" + id + "/dismiss", "{\"reason\":\"Taken out.\",\"quietUntil\":\"2026-06-30\"}")
                .andExpect(jsonPath("$.state").value("DISMISSED"))
                .andExpect(jsonPath("$.quietUntil").value("2026-06-30"));
    }

    @Test
    void severalAreTreatedAtOnceOrNone() throws Exception {
        long one = raised("REMAKE_LINK", "LINK", "4");
        long other = raised("INVESTIGATE", "JAR", "5");
        send(
                        engineer(),
                        "/api/work/bulk",
                        "{\"act\":\"ASSIGN\",\"ids\":[" + one + "," + other + "],\"assignee\":\"N\"}")
                .andExpect(status().isOk())
                .andExpect(jsonPath("$[1].assignee").value("N"));
        send(
                        engineer(),
                        "/api/work/bulk",
                        "{\"act\":\"DISMISS\",\"ids\":[" + one + ",-1],\"dismissal\":{\"reason\":\"x\"}}")
                .andExpect(status().isNotFound());
        send(engineer(), "/api/work/bulk", "{\"ids\":[1]}").andExpect(status().isUnprocessableContent());
        mvc.perform(get("/api/work/{id}", one).with(authentication(engineer())))
                .andExpect(jsonPath("$.item.state").value("RAISED"));
    }

    @Test
    void theFileIsSafeAgainstFormulas() throws Exception {
        long id = raised("REMAKE_LINK", "LINK", "4");
        String csv = mvc.perform(get("/api/work.csv")
                        .param("string", String.valueOf(string.id()))
                        .with(authentication(engineer())))
                .andExpect(status().isOk())
                .andExpect(content().contentTypeCompatibleWith("text/csv"))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(csv).startsWith("item,area,site").contains(id + ",").contains("\"'=SUM of a lug, seen\"");
        assertThat(csv.split("\r\n")).hasSize(3);
    }

    @Test
    void whatIsUnresolvedIsServedWithItsEffort() throws Exception {
        raised("REMAKE_LINK", "LINK", "4");
        mvc.perform(get("/api/work/unresolved")
                        .param("asOf", "2026-03-31")
                        .param("area", string.siteCode())
                        .with(authentication(engineer())))
                .andExpect(jsonPath("$", hasSize(2)))
                .andExpect(jsonPath("$[0].effort[0].kind").value("RAISED"));
    }

    @Test
    void eachRouteAsksWhoMay() throws Exception {
        long id = raised("REMAKE_LINK", "LINK", "4");
        PersonAuthentication elsewhere = person(Role.ENGINEER, new Reach(false, Set.of(-1L)));
        PersonAuthentication manager = person(Role.MANAGER, Reach.EVERYWHERE);
        PersonAuthentication crew = person(Role.CREW, Reach.EVERYWHERE);
        mvc.perform(get("/api/work/{id}", id).with(authentication(elsewhere))).andExpect(status().isNotFound());
        for (String act : new String[] {"plan", "done", "dismiss", "reopen"}) {
            String body = "{\"on\":\"2026-03-10\",\"by\":\"x\",\"reason\":\"x\",\"assignee\":\"x\"}";
            send(elsewhere, "/api/work/" + id + "/" + act, body).andExpect(status().isNotFound());
            send(manager, "/api/work/" + id + "/" + act, body).andExpect(status().isForbidden());
        }
        send(crew, "/api/work/" + id + "/dismiss", "{\"reason\":\"x\"}").andExpect(status().isForbidden());
        send(crew, "/api/work/" + id + "/plan", "{\"on\":\"2026-03-20\"}").andExpect(status().isOk());
        mvc.perform(get("/api/work")).andExpect(status().isUnauthorized());
    }
}
