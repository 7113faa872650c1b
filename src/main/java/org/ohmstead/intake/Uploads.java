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
    private final RepairBook repairs;

    Uploads(JdbcClient jdbc, UploadRemarks remarks, RepairBook repairs) {
        this.jdbc = jdbc;
        this.remarks = remarks;
        this.repairs = repairs;
    }

    Optional<UploadView> find(UUID id, Person person) {
        return asked(SELECT + " and u.id = :id", person)
                .param("id", id)
                .query(Uploads::view)
                .optional()
                .map(upload -> whole(upload, person));
    }

    /** The earliest other upload of the same bytes, or of the same part of them, from which a survey came. */
    Optional<UploadView> storedEarlier(byte[] sha256, Passage passage, Person person) {
        return asked(
                        SELECT + " and u.sha256 = :sha256 and u.id <> :id and u.survey_id is not null"
                                + " and coalesce(u.part, 0) = :part order by u.received_at limit 1",
                        person)
                .param("sha256", sha256)
                .param("id", passage.handover().id())
                .param("part", passage.part())
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
                .map(upload -> upload.headed(headline(gravest.get(upload.id()))))
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

    /** The string that the client said it belongs to. */
    @Nullable
    Long claimedString(UUID id) {
        return jdbc.sql("select coalesce(claimed_string_id, 0) from upload where id = ?")
                .param(id)
                .query(Long.class)
                .optional()
                .filter(claimed -> claimed != 0)
                .orElse(null);
    }

    private UploadView whole(UploadView upload, Person person) {
        Long surveyId = upload.surveyId();
        int[] stored = surveyId == null ? new int[2] : stored(surveyId);
        List<UploadView> parts = upload.state() == UploadState.IN_PARTS ? parts(upload.id(), person) : List.of();
        return upload.with(stored[0], stored[1], remarks.of(upload.id()), repairs.all(upload.id()), parts);
    }

    private List<UploadView> parts(UUID id, Person person) {
        return asked(SELECT + " and u.part_of = :id order by u.part", person)
                .param("id", id)
                .query(Uploads::view)
                .list()
                .stream()
                .map(part -> whole(part, person))
                .toList();
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
                row.getObject("part_of", UUID.class),
                row.getObject("part", Integer.class),
                List.of(),
                List.of(),
                List.of());
    }

    private static @Nullable Instant instant(@Nullable Timestamp timestamp) {
        return timestamp == null ? null : timestamp.toInstant();
    }
}
