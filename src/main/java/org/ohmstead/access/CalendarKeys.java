package org.ohmstead.access;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.kernel.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The secret of a person's calendar address. Shown once when made; only a hash is stored. It opens nothing else. */
@Service
@Transactional
public class CalendarKeys {

    private final JdbcClient jdbc;
    private final People people;
    private final AuditTrail audit;
    private final Clock clock;

    CalendarKeys(JdbcClient jdbc, People people, AuditTrail audit, Clock clock) {
        this.jdbc = jdbc;
        this.people = people;
        this.audit = audit;
        this.clock = clock;
    }

    /** Makes a new secret; the one before opens nothing any more. */
    public String create(Person owner) {
        String secret = Secrets.next();
        jdbc.sql("""
                        insert into calendar_feed (user_id, secret_sha256, made_at) values (?, ?, ?)
                        on conflict (user_id) do update set secret_sha256 = excluded.secret_sha256, made_at = excluded.made_at""")
                .params(owner.userId(), Secrets.hash(secret), Timestamp.from(clock.instant()))
                .update();
        audit.record("calendar address made", "account", owner.username(), null, Map.of());
        return secret;
    }

    public void revoke(Person owner) {
        int revoked = jdbc.sql("delete from calendar_feed where user_id = ?")
                .param(owner.userId())
                .update();
        if (revoked != 1) {
            throw NotFound.of("calendar address of", owner.username());
        }
        audit.record("calendar address revoked", "account", owner.username(), null, Map.of());
    }

    @Transactional(readOnly = true)
    public Optional<Instant> madeAt(Person owner) {
        return jdbc.sql("select made_at from calendar_feed where user_id = ?")
                .param(owner.userId())
                .query((row, n) -> row.getTimestamp("made_at").toInstant())
                .optional();
    }

    /** Whose calendar it is, if the account is open. */
    @Transactional(readOnly = true)
    public Optional<Person> owner(String secret) {
        return jdbc.sql("select user_id from calendar_feed where secret_sha256 = ?")
                .param(Secrets.hash(secret))
                .query(Long.class)
                .optional()
                .flatMap(people::findEnabled);
    }
}
