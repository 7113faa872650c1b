package org.ohmstead.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.check.Severity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The remarks made on uploads, in the order they were made. */
@Repository
class UploadRemarks {

    private final JdbcClient jdbc;

    UploadRemarks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void replace(UUID uploadId, List<Remark> remarks) {
        jdbc.sql("delete from upload_remark where upload_id = ?")
                .param(uploadId)
                .update();
        for (int i = 0; i < remarks.size(); i++) {
            insert(uploadId, i, remarks.get(i));
        }
    }

    List<RemarkView> of(UUID uploadId) {
        return jdbc.sql("select * from upload_remark where upload_id = ? order by ordinal")
                .param(uploadId)
                .query((row, n) -> view(row))
                .list();
    }

    /** Of each upload, the first of its gravest remarks. */
    Map<UUID, RemarkView> gravest(List<UUID> uploadIds) {
        Map<UUID, RemarkView> gravest = new HashMap<>();
        jdbc.sql("""
                        select distinct on (upload_id) * from upload_remark where upload_id = any (:ids)
                        order by upload_id, array_position(array['REFUSE', 'HOLD', 'DOUBT', 'NOTE'], severity), ordinal
                        """).param("ids", uploadIds.toArray(UUID[]::new)).query((ResultSet row) -> {
            gravest.put(row.getObject("upload_id", UUID.class), view(row));
        });
        return gravest;
    }

    private static RemarkView view(ResultSet row) throws SQLException {
        return new RemarkView(
                RemarkCode.valueOf(row.getString("code")),
                Severity.valueOf(row.getString("severity")),
                row.getInt("line"),
                row.getInt("column"),
                row.getString("place"),
                row.getString("seen"),
                row.getString("expected"),
                row.getString("message"),
                row.getString("remedy"));
    }

    private void insert(UUID uploadId, int ordinal, Remark remark) {
        jdbc.sql("""
                        insert into upload_remark
                          (upload_id, ordinal, code, severity, line, "column", place, seen, expected, message, remedy)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(
                        uploadId,
                        ordinal,
                        remark.code().name(),
                        remark.severity().name(),
                        remark.place().line(),
                        remark.place().column(),
                        remark.place().words(),
                        remark.seen(),
                        remark.expected(),
                        remark.message(),
                        remark.remedy())
                .update();
    }
}
