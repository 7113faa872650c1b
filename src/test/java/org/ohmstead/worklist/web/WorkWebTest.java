package org.ohmstead.worklist.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
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
import org.ohmstead.kernel.Urgency;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.worklist.NewWork;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** One item a person raised at a string of twelve jars; today is 10 March 2026. */
@ServiceTest
class WorkWebTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FleetRegister register;

    @Autowired
    private WorkList work;

    @Autowired
    private Access access;

    private String code;
    private StringView string;
    private long item;

    @BeforeEach
    void anItem() {
        code = "WKW-" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            string = register.createString(Entries.string(code, "A", code, 6, 6));
            item = work.raise(new NewWork(
                            string.id(),
                            WorkKind.INVESTIGATE,
                            Subject.Kind.JAR,
                            7,
                            Urgency.PLAN,
                            null,
                            "Smells of acid"))
                    .id();
        });
    }

    private static RequestPostProcessor as(Role role, Reach reach) {
        return authentication(new PersonAuthentication(new Person(9, "work.web", "Wanda Web", role, reach)));
    }

    private static RequestPostProcessor as(Role role) {
        return as(role, Reach.EVERYWHERE);
    }

    @Test
    void theListNamesWorkStringAndReason() throws Exception {
        mvc.perform(get("/work").param("area", code).with(as(Role.ENGINEER)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Investigate jar 7")))
                .andExpect(content().string(containsString("Smells of acid")))
                .andExpect(content().string(containsString("area=" + code + "\">CSV</a>")));
    }

    @Test
    void whoOnlyReadsIsOfferedNoAct() throws Exception {
        mvc.perform(get("/work/" + item).with(as(Role.MANAGER)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Smells of acid")))
                .andExpect(content().string(not(containsString("Report it done"))))
                .andExpect(content().string(not(containsString("Dismiss it"))));
        mvc.perform(post("/work/" + item + "/done")
                        .param("on", "2026-03-10")
                        .param("by", "Wanda")
                        .with(as(Role.MANAGER))
                        .with(csrf()))
                .andExpect(status().isForbidden());
    }

    @Test
    void whoMayNotIsRefusedBeforeTheFormIsLookedAt() throws Exception {
        mvc.perform(post("/strings/" + string.id() + "/work")
                        .with(as(Role.MANAGER))
                        .with(csrf()))
                .andExpect(status().isForbidden());
        mvc.perform(post("/work/" + item + "/dismiss").with(as(Role.CREW)).with(csrf()))
                .andExpect(status().isForbidden());
    }

    @Test
    void aCrewPlansButDoesNotDismiss() throws Exception {
        mvc.perform(post("/work/plan")
                        .param("item", String.valueOf(item))
                        .param("on", "2026-03-12")
                        .param("who", "Crew North & South")
                        .param("area", code)
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(redirectedUrl("/work?area=" + code))
                .andExpect(flash().attribute("notice", "1 item is planned."));
        mvc.perform(get("/work").param("assignee", "crew north & south").with(as(Role.CREW)))
                .andExpect(content().string(containsString("planned")))
                .andExpect(content().string(containsString("assignee=crew%20north%20%26%20south")));
        mvc.perform(post("/work/dismiss")
                        .param("item", String.valueOf(item))
                        .param("reason", "no")
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().isForbidden());
    }

    @Test
    void whatIsNotPossibleIsSaidOnThePage() throws Exception {
        mvc.perform(post("/work/plan")
                        .param("on", "2026-03-12")
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(flash().attribute("problem", containsString("Choose 1 to")));
        mvc.perform(post("/work/" + item + "/plan")
                        .param("on", "2026-03-01")
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(flash().attribute("problem", containsString("today or a later day")));
    }

    @Test
    void anotherAreasItemIsNotThere() throws Exception {
        Reach elsewhere = new Reach(false, java.util.Set.of(-1L));
        mvc.perform(get("/work/" + item).with(as(Role.CREW, elsewhere))).andExpect(status().isNotFound());
        mvc.perform(get("/work").param("area", code).with(as(Role.CREW, elsewhere)))
                .andExpect(content().string(not(containsString("Investigate jar 7"))));
    }

    @Test
    void workIsAskedForAndWhatIsMissingIsSaidWithTheFormAsItWas() throws Exception {
        String of = "/strings/" + string.id() + "/work";
        mvc.perform(get(of + "/new").with(as(Role.CREW))).andExpect(status().isOk());
        mvc.perform(post(of).param("about", "LINK")
                        .param("kind", "REMAKE_LINK")
                        .param("urgency", "ACT")
                        .param("reason", "Hot to the touch")
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Give the number")))
                .andExpect(content().string(containsString("Hot to the touch")));
        mvc.perform(post(of).param("about", "LINK")
                        .param("unit", "4")
                        .param("kind", "REMAKE_LINK")
                        .param("urgency", "ACT")
                        .param("reason", "Hot to the touch")
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().is3xxRedirection())
                .andExpect(flash().attribute("notice", "It is on the list."));
        for (String panel : new String[] {of, "/sites/" + code + "/work"}) {
            mvc.perform(get(panel).with(as(Role.CREW))).andExpect(content().string(containsString("Remake link 4|5")));
        }
        mvc.perform(post(of).param("about", "LINK")
                        .param("unit", "4")
                        .param("kind", "REMAKE_LINK")
                        .param("urgency", "ACT")
                        .param("reason", "Once more")
                        .with(as(Role.CREW))
                        .with(csrf()))
                .andExpect(status().isConflict());
    }

    @Test
    void whatWasOpenAtTheEndOfADayIsListedWithItsEffort() throws Exception {
        mvc.perform(get("/work/unresolved")
                        .param("on", "2026-03-31")
                        .param("area", code)
                        .with(as(Role.MANAGER)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Investigate jar 7")))
                .andExpect(content().string(containsString("raised")));
        mvc.perform(get("/work/unresolved")
                        .param("on", "2025-12-31")
                        .param("area", code)
                        .with(as(Role.MANAGER)))
                .andExpect(content().string(containsString("Nothing was unresolved")));
    }
}
