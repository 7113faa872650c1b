package org.ohmstead.access;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.ohmstead.kernel.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Secrets that let the owner of an account choose a password, once, within a day. Stored as hashes. */
@Component
class OneTimeLinks {

    static final Duration GOOD_FOR = Duration.ofHours(24);

    private final JdbcClient jdbc;
    private final Clock clock;

    OneTimeLinks(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    static NotFound gone() {
        return new NotFound("This link was used, has run out or never existed. Ask an administrator for a new one.");
    }

    String create(long userId) {
        String secret = Secrets.next();
        jdbc.sql("insert into one_time_link (token_sha256, user_id, created_at, expires_at) values (?, ?, ?, ?)")
                .params(
                        Secrets.hash(secret),
                        userId,
                        now(),
                        Timestamp.from(clock.instant().plus(GOOD_FOR)))
                .update();
        return secret;
    }

    Optional<Long> owner(String secret) {
        return jdbc.sql(
                        "select user_id from one_time_link where token_sha256 = ? and used_at is null and expires_at > ?")
                .params(Secrets.hash(secret), now())
                .query(Long.class)
                .optional();
    }

    void useUp(String secret) {
        int used = jdbc.sql("update one_time_link set used_at = ? where token_sha256 = ? and used_at is null")
                .params(now(), Secrets.hash(secret))
                .update();
        if (used != 1) {
            throw gone();
        }
    }

    private Timestamp now() {
        return Timestamp.from(clock.instant());
    }
}
