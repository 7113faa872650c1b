package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.List;
import org.ohmstead.kernel.Sha256;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored photographs. */
@Component
class PhotoTable {

    private static final String COLUMNS = """
            select id, visit_id, file_name, media_type, octet_length(bytes) as size, recorded_at, recorded_by
            from visit_photo where visit_id = ?""";

    private final JdbcClient jdbc;
    private final Clock clock;

    PhotoTable(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** The same picture again changes nothing. */
    void insert(long visitId, NewPhoto photo, String by) {
        jdbc.sql("""
                        insert into visit_photo (visit_id, file_name, media_type, sha256, bytes, recorded_at, recorded_by)
                        values (?, ?, ?, ?, ?, ?, ?) on conflict (visit_id, sha256) do nothing""")
                .params(
                        visitId,
                        photo.fileName(),
                        photo.mediaType(),
                        Sha256.of(photo.bytes()),
                        photo.bytes(),
                        Timestamp.from(clock.instant()),
                        by)
                .update();
    }

    List<PhotoView> of(long visitId) {
        return jdbc.sql(COLUMNS + " order by id")
                .param(visitId)
                .query((row, n) -> view(row))
                .list();
    }

    byte[] bytes(long photoId) {
        return jdbc.sql("select bytes from visit_photo where id = ?")
                .param(photoId)
                .query((row, n) -> row.getBytes("bytes"))
                .single();
    }

    private static PhotoView view(ResultSet row) throws SQLException {
        return new PhotoView(
                row.getLong("id"),
                row.getLong("visit_id"),
                row.getString("file_name"),
                row.getString("media_type"),
                row.getInt("size"),
                row.getTimestamp("recorded_at").toInstant(),
                row.getString("recorded_by"));
    }
}
