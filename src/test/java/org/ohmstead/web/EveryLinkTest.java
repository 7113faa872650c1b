package org.ohmstead.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.asyncDispatch;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.net.URI;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.web.util.HtmlUtils;

/** Walks over the demo estate from link to link, a few of each kind: every one leads somewhere, for every role. */
@ServiceTest
@ActiveProfiles({"test", "demo"})
class EveryLinkTest {

    private static final Pattern LINK = Pattern.compile("<a\\b[^>]*\\bhref=\"([^\"]*)\"");
    private static final Pattern HEADLINE = Pattern.compile("<h1[ >]");
    private static final Pattern NO_WORD = Pattern.compile(">[^<]*\\b(NaN|null|Infinity|undefined)\\b[^<]*<");
    private static final int OF_EACH_KIND = 2;

    @Autowired
    private MockMvc web;

    private final Deque<String> open = new ArrayDeque<>(List.of("/"));
    private final Set<String> seen = new HashSet<>();
    private final Map<String, Integer> kinds = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    @ParameterizedTest
    @CsvSource({"engineer, 100", "manager, 60", "crew, 40", "administrator, 100"})
    void everyLinkLeadsSomewhere(String username, int atLeast) throws Exception {
        MockHttpSession session = session(username);
        while (!open.isEmpty()) {
            String address = open.remove();
            if (seen.add(address) && kinds.merge(kind(address), 1, Integer::sum) <= OF_EACH_KIND) {
                follow(address, session);
            }
        }
        assertThat(faults).isEmpty();
        assertThat(kinds).hasSizeGreaterThan(atLeast);
    }

    private MockHttpSession session(String username) throws Exception {
        MvcResult signedIn = web.perform(formLogin("/sign-in").user(username).password("quiet standby power"))
                .andReturn();
        MockHttpSession session = (MockHttpSession) signedIn.getRequest().getSession(false);
        assertThat(session).isNotNull();
        return session;
    }

    private void follow(String address, MockHttpSession session) {
        try {
            MvcResult result = web.perform(
                            get(URI.create(address)).session(session).accept(MediaType.TEXT_HTML, MediaType.ALL))
                    .andReturn();
            if (result.getRequest().isAsyncStarted()) {
                result = web.perform(asyncDispatch(result)).andReturn();
            }
            look(address, result);
        } catch (Exception e) {
            faults.add(address + " broke: " + e);
        }
    }

    private void look(String address, MvcResult result) throws Exception {
        int status = result.getResponse().getStatus();
        String type = String.valueOf(result.getResponse().getContentType());
        if (status >= 400) {
            faults.add(
                    address + " answers " + status + " " + result.getResponse().getErrorMessage());
        } else if (status == 200 && type.startsWith(MediaType.TEXT_HTML_VALUE)) {
            read(address, result.getResponse().getContentAsString());
        }
    }

    private void read(String address, String page) {
        if (HEADLINE.matcher(page).results().count() != 1) {
            faults.add(address + " has not one headline");
        }
        Matcher odd = NO_WORD.matcher(page);
        if (odd.find()) {
            faults.add(address + " says " + odd.group());
        }
        LINK.matcher(page)
                .results()
                .map(link -> HtmlUtils.htmlUnescape(link.group(1)).replaceAll("#.*", ""))
                .filter(link -> link.startsWith("/") || link.startsWith("?"))
                .map(link -> link.startsWith("?") ? address.replaceAll("\\?.*", "") + link : link)
                .forEach(open::add);
    }

    /** Addresses that differ in numbers and codes only are of one kind. */
    private static String kind(String address) {
        String[] parts = address.split("\\?", 2);
        String path = parts[0].replaceAll("/[A-Z0-9]+-[A-Z0-9-]+", "/CODE").replaceAll("\\d+", "N");
        String asked = parts.length < 2
                ? ""
                : Arrays.stream(parts[1].split("&"))
                        .map(one -> one.replaceAll("=.+", "=X"))
                        .sorted()
                        .collect(Collectors.joining("&"));
        return path + "?" + asked;
    }
}
