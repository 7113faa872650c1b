package org.ohmstead.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.transaction.support.TransactionTemplate;

@ServiceTest
class AccessTest {

    @Autowired
    private Access access;

    @Autowired
    private People people;

    @Autowired
    private ApiTokens tokens;

    @Autowired
    private AuditTrail audit;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private SettableClock clock;

    @Autowired
    private TransactionTemplate transaction;

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
        clock.set(SettableClock.START);
    }

    @Test
    void nobodyMayDoAnythingWithoutSigningIn() {
        assertThatThrownBy(() -> access.require(Permission.SEE_ESTATE))
                .isInstanceOf(AuthenticationCredentialsNotFoundException.class);
    }

    @Test
    void aCrewMemberHandsInSurveysButDoesNotSettleThem() {
        signIn(person("crew.one", Role.CREW, Reach.EVERYWHERE));
        access.require(Permission.HAND_IN_SURVEYS);
        assertThatThrownBy(() -> access.require(Permission.SETTLE_SURVEYS))
                .isInstanceOf(AccessDeniedException.class)
                .hasMessage("Crew accounts may not accept, refuse or void surveys.");
    }

    @Test
    void anAreaOutOfReachDoesNotExist() {
        long near = area("ACC-NEAR");
        long far = area("ACC-FAR");
        signIn(person("engineer.near", Role.ENGINEER, new Reach(false, Set.of(near))));
        access.require(Permission.EDIT_REGISTER, near);
        assertThatThrownBy(() -> access.require(Permission.EDIT_REGISTER, far)).isInstanceOf(NotFound.class);
    }

    @Test
    void aTokenLetsItsOwnerInUntilRevoked() {
        Person owner = person("token.owner", Role.CREW, Reach.EVERYWHERE);
        String token = tokens.create(owner, "van laptop");
        assertThat(tokens.owner(token)).contains(owner);
        tokens.revoke(owner, tokens.of(owner).get(0).id());
        assertThat(tokens.owner(token)).isEmpty();
    }

    @Test
    void aTokenRunsOutAfterAYear() {
        Person owner = person("token.old", Role.CREW, Reach.EVERYWHERE);
        String token = tokens.create(owner, "old");
        clock.tick(Duration.ofDays(367));
        assertThat(tokens.owner(token)).isEmpty();
    }

    @Test
    void aTokenOfAClosedAccountOpensNothing() {
        Person owner = person("token.closed", Role.CREW, Reach.EVERYWHERE);
        String token = tokens.create(owner, "closed");
        people.close(owner.userId());
        assertThat(tokens.owner(token)).isEmpty();
    }

    @Test
    void aTokenIsStoredOnlyAsAHash() {
        Person owner = person("token.hash", Role.CREW, Reach.EVERYWHERE);
        String token = tokens.create(owner, "hash");
        List<String> rows = jdbc.sql("select t::text from api_token t where user_id = ?")
                .param(owner.userId())
                .query(String.class)
                .list();
        assertThat(rows).hasSize(1).allSatisfy(row -> assertThat(row).doesNotContain(token.substring(4)));
    }

    @Test
    void aOneTimeLinkWorksOnceAndForADay() {
        long id = person("link.user", Role.MANAGER, Reach.EVERYWHERE).userId();
        String late = people.newLink(id);
        clock.tick(Duration.ofHours(25));
        assertThatThrownBy(() -> people.redeem(late, "three quiet words")).isInstanceOf(NotFound.class);
        String good = people.newLink(id);
        people.redeem(good, "three quiet words");
        assertThat(people.find("link.user"))
                .hasValueSatisfying(view -> assertThat(view.hasPassword()).isTrue());
        assertThatThrownBy(() -> people.redeem(good, "three other words")).isInstanceOf(NotFound.class);
    }

    @Test
    void aShortPasswordIsRefused() {
        long id = person("short.password", Role.MANAGER, Reach.EVERYWHERE).userId();
        assertThatThrownBy(() -> people.choosePassword(id, "elevenchars"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("12");
    }

    @Test
    void theAuditTrailNamesTheActorAndRefusesChanges() {
        access.asSystem(
                "test rig",
                () -> transaction.executeWithoutResult(
                        status -> audit.record("looked", "thing", "42", null, Map.of("why", "test"))));
        AuditTrail.Entry entry = audit.before(Long.MAX_VALUE, 1).get(0);
        assertThat(entry.actor()).isEqualTo("test rig");
        assertThat(entry.subjectId()).isEqualTo("42");
        for (String change :
                List.of("update audit_entry set actor = 'x'", "delete from audit_entry", "truncate audit_entry")) {
            assertThatThrownBy(() -> jdbc.sql(change).update())
                    .isInstanceOf(DataAccessException.class)
                    .hasMessageContaining("audit_entry is append-only");
        }
    }

    private Person person(String username, Role role, Reach reach) {
        people.open(new NewPerson(username, username, role, reach));
        return people.findEnabled(username).orElseThrow();
    }

    private static void signIn(Person person) {
        SecurityContextHolder.getContext().setAuthentication(new PersonAuthentication(person));
    }

    private long area(String code) {
        return jdbc.sql("insert into area (code, name) values (?, ?) returning id")
                .params(code, code)
                .query(Long.class)
                .single();
    }
}
