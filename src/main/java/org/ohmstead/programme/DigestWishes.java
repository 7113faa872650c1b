package org.ohmstead.programme;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.Person;
import org.ohmstead.kernel.Refused;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who asked for the digest by e-mail, each for themselves. */
@Service
@Transactional
public class DigestWishes {

    private static final int LONGEST = 254;

    private final JdbcClient jdbc;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    DigestWishes(JdbcClient jdbc, Access access, AuditTrail audit, Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    record Wish(long userId, String username, String email) {}

    /** The address of whoever asks; none when they did not ask for the digest. */
    @Transactional(readOnly = true)
    public Optional<String> own() {
        access.require(SEE_ESTATE);
        return jdbc.sql("select email from digest_wish where user_id = ?")
                .param(access.current().userId())
                .query(String.class)
                .optional();
    }

    /** @throws Refused when it is no e-mail address */
    public void wish(String email) {
        access.require(SEE_ESTATE);
        String address = email.strip();
        if (!address.matches("[^@\\s,;<>\"]+@[^@\\s,;<>\"]+") || address.length() > LONGEST) {
            throw new Refused("\"" + address + "\" is no e-mail address.");
        }
        Person person = access.current();
        jdbc.sql("""
                        insert into digest_wish (user_id, email, wished_at) values (?, ?, ?)
                        on conflict (user_id) do update set email = excluded.email, wished_at = excluded.wished_at""")
                .params(person.userId(), address, Timestamp.from(clock.instant()))
                .update();
        audit.record("digest wished", "account", person.username(), null, Map.of());
    }

    public void stop() {
        access.require(SEE_ESTATE);
        Person person = access.current();
        jdbc.sql("delete from digest_wish where user_id = ?")
                .param(person.userId())
                .update();
        audit.record("digest stopped", "account", person.username(), null, Map.of());
    }

    /** Of open accounts to which none went out on that day yet. */
    List<Wish> open(LocalDate day) {
        return jdbc.sql("""
                        select w.user_id, u.username, w.email from digest_wish w join app_user u on u.id = w.user_id
                        where u.enabled and w.sent_on is distinct from ? order by w.user_id""")
                .param(day)
                .query((row, n) -> new Wish(row.getLong("user_id"), row.getString("username"), row.getString("email")))
                .list();
    }

    void sent(Wish wish, LocalDate day) {
        jdbc.sql("update digest_wish set sent_on = ? where user_id = ?")
                .params(day, wish.userId())
                .update();
    }
}
