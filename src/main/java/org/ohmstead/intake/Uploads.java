package org.ohmstead.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Person;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads uploads, as far as the asking person reaches. */
@Repository
class Uploads {

    private static final String SELECT = """
            select u.*, r.byte_count, site.code || ' / ' || s.name as string
            from upload u
            join raw_file r on r.sha256 = u.sha256
            left join battery_string s on s.id = coalesce(u.string_id, u.claimed_string_id)
            left join site on site.id = s.site_id
            where (:everywhere or site.area_id = any (:areaIds) or (s.id is null and u.received_by = :me))
            """;

    private final JdbcClient jdbc;
    private final UploadRemarks remarks;

    Uploads(JdbcClient jdbc, UploadRemarks remarks) {
        this.jdbc = jdbc;
        this.remarks = remarks;
    }

    Optional<UploadView> find(UUID id, Person person) {
        return asked(SELECT + " and u.id = :id", person)
                .param("id", id)
                .query(Uploads::view)
                .optional()
                .map(this::whole);
    }

    /** The earliest other upload of the same bytes from which a survey came. */
    Optional<UploadView> storedEarlier(byte[] sha256, UUID otherThan, Person person) {
        return asked(
                        SELECT + " and u.sha256 = :sha256 and u.id <> :id and u.survey_id is not null"
                                + " order by u.received_at limit 1",
                        person)
                .param("sha256", sha256)
                .param("id", otherThan)
                .query(Uploads::view)
                .optional();
    }

    /** Latest first, each with the gravest of its remarks. */
    List<UploadView> recent(@Nullable UploadState state, Person person, int limit) {
        String ofState = state == null ? "" : " and u.state = '" + state.name() + "'";
        List<UploadView> latest = asked(SELECT + ofState + " order by u.received_at desc, u.id limit :limit", person)
                .param("limit", limit)
                .query(Uploads::view)
                .list();
        Map<UUID, RemarkView> gravest =
                remarks.gravest(latest.stream().map(UploadView::id).toList());
        return latest.stream()
                .map(upload -> upload.with(0, 0, headline(gravest.get(upload.id()))))
                .toList();
    }

    private static List<RemarkView> headline(@Nullable RemarkView gravest) {
        return gravest == null ? List.of() : List.of(gravest);
    }

    byte[] raw(UUID id) {
        return jdbc.sql("select r.content from raw_file r join upload u on u.sha256 = r.sha256 where u.id = :id")
                .param("id", id)
                .query((row, n) -> row.getBytes(1))
                .single();
    }

    private UploadView whole(UploadView upload) {
        Long surveyId = upload.surveyId();
        int[] stored = surveyId == null ? new int[2] : stored(surveyId);
        return upload.with(stored[0], stored[1], remarks.of(upload.id()));
    }

    private int[] stored(long surveyId) {
        return jdbc.sql("""
                        select (select count(*) from unnest(ohmic) o where o is not null) as jars,
                               (select count(*) from unnest(link_microohms) l where l is not null) as links
                        from survey where id = ?
                        """)
                .param(surveyId)
                .query((row, n) -> new int[] {row.getInt("jars"), row.getInt("links")})
                .single();
    }

    private JdbcClient.StatementSpec asked(String sql, Person person) {
        return jdbc.sql(sql)
                .param("everywhere", person.reach().everywhere())
                .param("areaIds", person.reach().areaIdArray())
                .param("me", person.username());
    }

    private static UploadView view(ResultSet row, int n) throws SQLException {
        return new UploadView(
                row.getObject("id", UUID.class),
                row.getString("file_name"),
                HexFormat.of().formatHex(row.getBytes("sha256")),
                row.getLong("byte_count"),
                row.getTimestamp("received_at").toInstant(),
                row.getString("received_by"),
                UploadState.valueOf(row.getString("state")),
                Stage.valueOf(row.getString("stage")),
                row.getObject("string_id", Long.class),
                row.getString("string"),
                row.getObject("survey_id", Long.class),
                0,
                0,
                instant(row.getTimestamp("settled_at")),
                row.getString("settled_by"),
                row.getString("settled_reason"),
                row.getObject("supersedes", Long.class),
                row.getString("supersedes_reason"),
                List.of());
    }

    private static @Nullable Instant instant(@Nullable Timestamp timestamp) {
        return timestamp == null ? null : timestamp.toInstant();
    }
}
