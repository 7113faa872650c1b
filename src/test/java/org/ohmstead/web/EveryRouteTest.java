package org.ohmstead.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.PersonView;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Who may do what, for every route there is, against {@code src/test/resources/access/routes.csv}. Each is called with
 * nothing; where that is answered 400 or 422 for want of something, also with the least that can be read. Whoever is
 * refused must be told so then, whatever else is wrong with the request; whoever is let in may be told anything but that, and
 * nothing breaks. Every call is rolled back. Reach is another matter: all see the whole estate here.
 */
@ServiceTest
@ActiveProfiles({"test", "demo"})
class EveryRouteTest {

    private static final String NOBODY = "anonymous";
    private static final int TO_THE_DOOR = -1;
    private static final Set<Integer> NOT_READ = Set.of(400, 422);

    @Autowired
    private MockMvc web;

    @Autowired
    private List<RequestMappingHandlerMapping> mappings;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private People people;

    @Autowired
    private PlatformTransactionManager transactions;

    private final RouteTable table = RouteTable.read();
    private final List<String> faults = new ArrayList<>();
    private List<Route> routes = List.of();

    @BeforeEach
    void collect() {
        routes = Route.of(mappings);
    }

    @Test
    void whoMayIsDecidedForEveryRoute() {
        assertThat(table.faults(routes)).isEmpty();
        assertThat(routes).hasSizeGreaterThan(250);
    }

    @ParameterizedTest
    @EnumSource
    void everyRouteLetsInWhomItShould(Role role) {
        String username = role.word().toLowerCase(Locale.ROOT);
        routes.stream().filter(table::decides).forEach(route -> {
            List<Integer> answers = answers(route, username);
            boolean fits = table.letsIn(username, route) ? isIn(answers) : isRefused(answers);
            if (!fits) {
                faults.add(fault(route, username, answers));
            }
        });
        assertThat(faults).isEmpty();
    }

    @Test
    void whoIsNotSignedInIsLetInByNothingButTheDoor() {
        routes.stream().filter(table::decides).forEach(route -> {
            int answer = answer(route, NOBODY, false);
            boolean refused = answer == (route.isApi() ? 401 : TO_THE_DOOR);
            if (refused == table.letsIn(NOBODY, route) || answer >= 500) {
                faults.add(fault(route, NOBODY, List.of(answer)));
            }
        });
        assertThat(faults).isEmpty();
    }

    private static boolean isIn(List<Integer> answers) {
        return answers.stream().allMatch(answer -> answer < 500 && answer != 401 && answer != 403 && answer > 0);
    }

    private static boolean isRefused(List<Integer> answers) {
        return answers.get(answers.size() - 1) == 403;
    }

    private String fault(Route route, String who, List<Integer> answers) {
        return "%s should be %s by %s, but was answered %s"
                .formatted(who, table.letsIn(who, route) ? "let in" : "refused", route.address(), answers);
    }

    private List<Integer> answers(Route route, String username) {
        int empty = answer(route, username, false);
        return NOT_READ.contains(empty) ? List.of(empty, answer(route, username, true)) : List.of(empty);
    }

    /** The status; {@link #TO_THE_DOOR} for the way to the sign-in page. */
    private int answer(Route route, String username, boolean least) {
        TransactionTemplate undone = new TransactionTemplate(transactions);
        return Objects.requireNonNull(undone.execute(transaction -> {
            transaction.setRollbackOnly();
            String owner = username.equals(NOBODY) ? "engineer" : username;
            LeastRequest request = new LeastRequest(route, new DemoThings(jdbc), owner);
            try {
                return answer(least ? request.least() : request.empty(), username);
            } catch (Exception e) {
                faults.add(route.address() + " broke for " + username + ": " + e);
                return 500;
            }
        }));
    }

    private int answer(AbstractMockHttpServletRequestBuilder<?> request, String username) throws Exception {
        request.with(csrf());
        if (!username.equals(NOBODY)) {
            request.with(authentication(new PersonAuthentication(person(username))));
        }
        MockHttpServletResponse response = web.perform(request).andReturn().getResponse();
        boolean toTheDoor = Objects.toString(response.getRedirectedUrl(), "").endsWith("/sign-in");
        return toTheDoor ? TO_THE_DOOR : response.getStatus();
    }

    private Person person(String username) {
        PersonView account = people.find(username).orElseThrow();
        return new Person(account.id(), username, account.displayName(), account.role(), Reach.EVERYWHERE);
    }
}
