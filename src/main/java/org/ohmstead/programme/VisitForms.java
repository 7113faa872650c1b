package org.ohmstead.programme;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.programme.VisitPhotos.Illustrated;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Checklists that were handed in, by the names of their forms: the same form sent again records nothing twice. */
@Component
class VisitForms {

    private final JdbcClient jdbc;
    private final Clock clock;

    VisitForms(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    private record HandedIn(byte[] sha256, List<Long> visitIds) {}

    /**
     * Records once; whoever sends the same form at the same moment waits for the first.
     *
     * @return the visits' ids, of the first time when there was one
     * @throws Conflict when the form came before and said something else
     */
    List<Long> once(UUID form, List<Illustrated> said, Supplier<List<Long>> recording) {
        jdbc.sql("select pg_advisory_xact_lock(hashtextextended(?, 20))")
                .param(form.toString())
                .query(row -> {});
        byte[] sha256 = sha256(said);
        Optional<HandedIn> before = find(form);
        if (before.isEmpty()) {
            List<Long> ids = recording.get();
            insert(form, sha256, ids);
            return ids;
        }
        if (!Arrays.equals(before.get().sha256(), sha256)) {
            throw new Conflict("This form was handed in before and said something else: see visit "
                    + before.get().visitIds().get(0)
                    + ". Open a new form; void the visit if it is wrong.");
        }
        return before.get().visitIds();
    }

    private Optional<HandedIn> find(UUID form) {
        return jdbc.sql("select content_sha256, visit_ids from visit_form where id = ?")
                .param(form)
                .query((row, n) -> new HandedIn(row.getBytes("content_sha256"), List.of((Long[])
                        row.getArray("visit_ids").getArray())))
                .optional();
    }

    private void insert(UUID form, byte[] sha256, List<Long> ids) {
        jdbc.sql("insert into visit_form (id, content_sha256, visit_ids, recorded_at) values (?, ?, ?, ?)")
                .params(form, sha256, ids.toArray(Long[]::new), Timestamp.from(clock.instant()))
                .update();
    }

    private static byte[] sha256(List<Illustrated> said) {
        MessageDigest digest = Sha256.digest();
        for (Illustrated one : said) {
            digest.update(one.visit().toString().getBytes(StandardCharsets.UTF_8));
            one.photos().forEach(photo -> digest.update(Sha256.of(photo.bytes())));
        }
        return digest.digest();
    }
}
