package org.ohmstead.access;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** A person's own tokens for the API. Shown once when made; only a hash is stored. */
@Service
@Transactional
public class ApiTokens {

    static final String PREFIX = "ohm_";
    private static final Duration GOOD_FOR = Duration.ofDays(366);

    private final JdbcClient jdbc;
    private final People people;
    private final AuditTrail audit;
    private final Clock clock;

    ApiTokens(JdbcClient jdbc, People people, AuditTrail audit, Clock clock) {
        this.jdbc = jdbc;
        this.people = people;
        this.audit = audit;
        this.clock = clock;
    }

    /** A token as its owner sees it afterwards. */
    public record TokenView(
            long id,
            String label,
            Instant createdAt,
            Instant expiresAt,
            @Nullable Instant lastUsedAt,
            boolean revoked) {}

    /** Makes a token for the person and returns it; it can't be shown again. */
    public String create(Person owner, String label) {
        if (label.isBlank() || label.length() > 80) {
            throw new Refused("Name the token after what will use it, in 1 to 80 characters.");
        }
        String token = PREFIX + Secrets.next();
        Instant now = clock.instant();
        jdbc.sql("insert into api_token (user_id, label, token_sha256, created_at, expires_at) values (?, ?, ?, ?, ?)")
                .params(
                        owner.userId(),
                        label.strip(),
                        Secrets.hash(token),
                        Timestamp.from(now),
                        Timestamp.from(now.plus(GOOD_FOR)))
                .update();
        audit.record("token made", "account", owner.username(), null, Map.of("label", label.strip()));
        return token;
    }

    public void revoke(Person owner, long tokenId) {
        int revoked = jdbc.sql(
                        "update api_token set revoked_at = ? where id = ? and user_id = ? and revoked_at is null")
                .params(Timestamp.from(clock.instant()), tokenId, owner.userId())
                .update();
        if (revoked != 1) {
            throw NotFound.of("token", tokenId);
        }
        audit.record("token revoked", "account", owner.username(), null, Map.of("token", tokenId));
    }

    @Transactional(readOnly = true)
    public List<TokenView> of(Person owner) {
        return jdbc.sql("""
                        select id, label, created_at, expires_at, last_used_at, revoked_at is not null as revoked
                        from api_token where user_id = ? order by id desc
                        """)
                .param(owner.userId())
                .query((row, n) -> new TokenView(
                        row.getLong("id"),
                        row.getString("label"),
                        row.getTimestamp("created_at").toInstant(),
                        row.getTimestamp("expires_at").toInstant(),
                        instant(row.getTimestamp("last_used_at")),
                        row.getBoolean("revoked")))
                .list();
    }

    /** The owner of a token that is neither revoked nor out of date, if the account is open. */
    public Optional<Person> owner(String token) {
        Timestamp now = Timestamp.from(clock.instant());
        Optional<Long> userId =
                jdbc.sql("""
                        select user_id from api_token
                        where token_sha256 = ? and revoked_at is null and expires_at > ?
                        """).params(Secrets.hash(token), now).query(Long.class).optional();
        userId.ifPresent(id -> noteUse(token, now));
        return userId.flatMap(people::findEnabled);
    }

    /** At most once an hour, so that reading through the API does not write on every request. */
    private void noteUse(String token, Timestamp now) {
        jdbc.sql("""
                        update api_token set last_used_at = ?
                        where token_sha256 = ? and (last_used_at is null or last_used_at < ?::timestamptz - interval '1 hour')
                        """).params(now, Secrets.hash(token), now).update();
    }

    private static @Nullable Instant instant(@Nullable Timestamp timestamp) {
        return timestamp == null ? null : timestamp.toInstant();
    }
}
