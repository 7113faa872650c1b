package org.ohmstead.assessment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The record of walks over the estate. Progress is committed at once, so that others see it. */
@Component
class Runs {

    private final JdbcClient jdbc;
    private final Clock clock;

    Runs(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A new one, unless one is under way. */
    @Transactional
    public RunView request(String by) {
        jdbc.sql("insert into assessment_run (requested_at, requested_by) values (?, ?) on conflict do nothing")
                .params(now(), by)
                .update();
        return last().orElseThrow();
    }

    /** Starts again from the beginning when a node died on the way. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void start(long id, int stringsTotal) {
        jdbc.sql("""
                        update assessment_run
                        set started_at = ?, strings_total = ?, strings_seen = 0, strings_judged = 0 where id = ?
                        """).params(now(), stringsTotal, id).update();
    }

    /** Together with the judgements it counts. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void progress(long id, int seen, int judged) {
        jdbc.sql("update assessment_run set strings_seen = ?, strings_judged = ? where id = ?")
                .params(seen, judged, id)
                .update();
    }

    @Transactional
    public RunView finish(long id) {
        jdbc.sql("update assessment_run set finished_at = ? where id = ?")
                .params(now(), id)
                .update();
        return jdbc.sql("select * from assessment_run where id = ?")
                .param(id)
                .query((row, n) -> view(row))
                .single();
    }

    Optional<RunView> last() {
        return jdbc.sql("select * from assessment_run order by id desc limit 1")
                .query((row, n) -> view(row))
                .optional();
    }

    Optional<RunView> underWay() {
        return last().filter(run -> run.finishedAt() == null);
    }

    private Timestamp now() {
        return Timestamp.from(clock.instant());
    }

    private static RunView view(ResultSet row) throws SQLException {
        Timestamp started = row.getTimestamp("started_at");
        Timestamp finished = row.getTimestamp("finished_at");
        return new RunView(
                row.getLong("id"),
                row.getTimestamp("requested_at").toInstant(),
                row.getString("requested_by"),
                started == null ? null : started.toInstant(),
                finished == null ? null : finished.toInstant(),
                row.getInt("strings_total"),
                row.getInt("strings_seen"),
                row.getInt("strings_judged"));
    }
}
