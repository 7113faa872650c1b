package org.ohmstead.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.authenticated;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.unauthenticated;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;

@ServiceTest
class SignInTest {

    private static final String PASSWORD = "a long enough password";

    @Autowired
    private MockMvc web;

    @Autowired
    private People people;

    @Autowired
    private ApiTokens tokens;

    @Test
    void aPageAsksStrangersToSignIn() throws Exception {
        web.perform(get("/account").accept(MediaType.TEXT_HTML))
                .andExpect(status().isFound())
                .andExpect(header().string("Location", containsString("/sign-in")));
    }

    @Test
    void theApiAnswersStrangersWithAProblem() throws Exception {
        web.perform(get("/api/anything"))
                .andExpect(status().isUnauthorized())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.type").value("urn:ohmstead:problem:not-signed-in"));
    }

    @Test
    void anUnknownTokenIsAnsweredWithAProblem() throws Exception {
        web.perform(get("/api/anything").header("Authorization", "Bearer ohm_nonsense"))
                .andExpect(status().isUnauthorized())
                .andExpect(jsonPath("$.detail").value("This token is unknown, revoked or out of date."));
    }

    @Test
    void aTokenOpensWhatItsOwnerMayButMakesNoOtherTokenAndChangesNobodysAccess() throws Exception {
        account("lost.token", Role.ADMINISTRATOR);
        Person owner = people.findEnabled("lost.token").orElseThrow();
        String bearer = "Bearer " + tokens.create(owner, "phone");
        web.perform(get("/api/strings").header("Authorization", bearer)).andExpect(status().isOk());
        for (String address : List.of("/account", "/administration")) {
            web.perform(get(address).header("Authorization", bearer)).andExpect(status().isForbidden());
        }
        web.perform(post("/account/tokens").header("Authorization", bearer).param("label", "second"))
                .andExpect(status().isForbidden());
        assertThat(tokens.of(owner)).hasSize(1);
    }

    @Test
    void theRightPasswordOpensTheDoorAndTheWrongOneDoesNot() throws Exception {
        account("door.user", Role.MANAGER);
        web.perform(formLogin("/sign-in").user("door.user").password(PASSWORD)).andExpect(authenticated());
        web.perform(formLogin("/sign-in").user("door.user").password("wrong")).andExpect(unauthenticated());
    }

    @Test
    void anAccountWithoutPasswordCanNotBeGuessed() throws Exception {
        people.open(new NewPerson("no.password", "No Password", Role.MANAGER, Reach.EVERYWHERE));
        web.perform(formLogin("/sign-in").user("no.password").password("")).andExpect(unauthenticated());
    }

    @Test
    void theWelcomeLinkSetsThePasswordOnce() throws Exception {
        long id = people.open(new NewPerson("welcomed", "Welcomed", Role.CREW, Reach.EVERYWHERE))
                .id();
        String link = "/welcome/" + people.newLink(id);
        web.perform(get(link)).andExpect(status().isOk()).andExpect(content().string(containsString("welcomed")));
        web.perform(post(link).with(csrf()).param("password", PASSWORD).param("again", PASSWORD))
                .andExpect(redirectedUrl("/sign-in?chosen"));
        web.perform(get(link)).andExpect(content().string(containsString("opens nothing")));
    }

    @Test
    void administrationIsForAdministrators() throws Exception {
        account("curious.crew", Role.CREW);
        var crew = user(people.credentials("curious.crew").orElseThrow());
        web.perform(get("/administration").with(crew)).andExpect(status().isForbidden());
        web.perform(get("/account").with(crew))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("href=\"/administration\""))));
    }

    @Test
    void anAdministratorOpensAnAccountAndGetsALinkToHandOver() throws Exception {
        account("the.admin", Role.ADMINISTRATOR);
        var admin = user(people.credentials("the.admin").orElseThrow());
        var flash = web.perform(post("/administration/people")
                        .with(csrf())
                        .with(admin)
                        .param("username", "new.hand")
                        .param("displayName", "New Hand")
                        .param("role", "CREW")
                        .param("everywhere", "true"))
                .andExpect(redirectedUrl("/administration"))
                .andReturn()
                .getFlashMap();
        web.perform(get("/administration").with(admin).flashAttrs(flash))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("/welcome/" + flash.get("link"))));
        web.perform(get("/administration/audit").with(admin))
                .andExpect(content().string(containsString("account opened")));
    }

    @Test
    void aFormWithoutItsTokenChangesNothing() throws Exception {
        account("forged", Role.ADMINISTRATOR);
        web.perform(post("/account/tokens")
                        .with(user(people.credentials("forged").orElseThrow()))
                        .param("label", "x"))
                .andExpect(status().isForbidden());
    }

    @Test
    void pagesRunNoScriptButOurOwn() throws Exception {
        web.perform(get("/sign-in"))
                .andExpect(header().string("Content-Security-Policy", containsString("script-src 'self'")))
                .andExpect(header().string("Content-Security-Policy", not(containsString("unsafe"))));
    }

    private void account(String name, Role role) {
        long id = people.open(new NewPerson(name, name, role, Reach.EVERYWHERE)).id();
        people.choosePassword(id, PASSWORD);
    }
}
