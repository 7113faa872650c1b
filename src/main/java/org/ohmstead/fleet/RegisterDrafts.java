package org.ohmstead.fleet;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.kernel.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Register files between preview and bringing in, kept for a day, each for the person who sent it. */
@Service
@Transactional
public class RegisterDrafts {

    private static final Duration KEPT = Duration.ofDays(1);

    private final JdbcClient jdbc;
    private final Access access;
    private final Clock clock;

    RegisterDrafts(JdbcClient jdbc, Access access, Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.clock = clock;
    }

    /** @param kind of file, such as {@code sites} */
    public record Draft(String kind, byte[] content) {}

    public UUID keep(String kind, byte[] content) {
        access.require(Permission.EDIT_REGISTER);
        jdbc.sql("delete from register_draft where drafted_at < ?")
                .param(Timestamp.from(clock.instant().minus(KEPT)))
                .update();
        UUID id = UUID.randomUUID();
        jdbc.sql("insert into register_draft (id, kind, content, drafted_at, drafted_by) values (?, ?, ?, ?, ?)")
                .params(
                        id,
                        kind,
                        content,
                        Timestamp.from(clock.instant()),
                        access.current().username())
                .update();
        return id;
    }

    /** Hands the draft out once. */
    public Draft take(UUID id) {
        access.require(Permission.EDIT_REGISTER);
        return jdbc.sql("delete from register_draft where id = ? and drafted_by = ? returning kind, content")
                .params(id, access.current().username())
                .query((row, n) -> new Draft(row.getString("kind"), row.getBytes("content")))
                .optional()
                .orElseThrow(() -> new NotFound(
                        "This preview was already brought in or is older than a day. Send the file again."));
    }
}
