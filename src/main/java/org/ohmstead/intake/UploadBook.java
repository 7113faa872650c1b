package org.ohmstead.intake;

import java.sql.Timestamp;
import java.time.Clock;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.Conflict;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Writes uploads down, each name once and each file's bytes once. */
@Repository
class UploadBook {

    private final JdbcClient jdbc;
    private final UploadRemarks remarks;
    private final Clock clock;

    UploadBook(JdbcClient jdbc, UploadRemarks remarks, Clock clock) {
        this.jdbc = jdbc;
        this.remarks = remarks;
        this.clock = clock;
    }

    /** Lets uploads of the same bytes, and those settling them, pass one after the other until the commit. */
    void queueUp(byte[] sha256) {
        jdbc.sql("select pg_advisory_xact_lock(hashtextextended(encode(?, 'hex'), 0))")
                .param(sha256)
                .query((row, n) -> true)
                .single();
    }

    /** Lets surveys of one string pass one after the other, so that each is checked against the one before. */
    void queueUpFor(long stringId) {
        jdbc.sql("select id from battery_string where id = ? for no key update")
                .param(stringId)
                .query(Long.class)
                .single();
    }

    /** @return false when the name is taken; the other's commit was waited for */
    boolean enter(Handover handover, byte[] sha256, String receivedBy) {
        return enter(handover, sha256, receivedBy, null, null);
    }

    /** One survey of a file of several. */
    void enterPart(Handover part, byte[] sha256, String receivedBy, UUID whole, int number) {
        if (!enter(part, sha256, receivedBy, whole, number)) {
            throw new Conflict("Upload " + part.id() + ", the name of a part of this file, was used before.");
        }
    }

    private boolean enter(
            Handover handover, byte[] sha256, String receivedBy, @Nullable UUID partOf, @Nullable Integer part) {
        Timestamp now = Timestamp.from(clock.instant());
        Correction correction = handover.correction();
        jdbc.sql("insert into raw_file (sha256, byte_count, content, stored_at) values (?, ?, ?, ?)"
                        + " on conflict (sha256) do nothing")
                .params(sha256, handover.bytes().length, handover.bytes(), now)
                .update();
        return jdbc.sql("""
                        insert into upload (id, sha256, file_name, received_at, received_by, claimed_string_id,
                          supersedes, supersedes_reason, part_of, part, state, stage)
                        values (:id, :sha256, :fileName, :now, :by, :claimed, :supersedes, :why, :partOf, :part,
                          'RECEIVED', 'RECEIVED')
                        on conflict (id) do nothing
                        """)
                        .param("id", handover.id())
                        .param("sha256", sha256)
                        .param("fileName", handover.fileName())
                        .param("now", now)
                        .param("by", receivedBy)
                        .param("claimed", handover.claimedStringId())
                        .param("supersedes", correction == null ? null : correction.surveyId())
                        .param("why", correction == null ? null : correction.reason())
                        .param("partOf", partOf)
                        .param("part", part, java.sql.Types.INTEGER)
                        .update()
                == 1;
    }

    void conclude(Passage passage, UploadState state, @Nullable Long surveyId) {
        enter(passage, state, surveyId);
        remark(passage);
    }

    /** Written before the survey is accepted: whoever listens to that can tell what was remarked on it. */
    void remark(Passage passage) {
        remarks.replace(passage.handover().id(), passage.remarks());
    }

    void enter(Passage passage, UploadState state, @Nullable Long surveyId) {
        StringBlueprint blueprint = passage.blueprint();
        enter(passage, state, blueprint == null ? null : blueprint.string().id(), surveyId);
    }

    void conclude(Passage passage, UploadState state, @Nullable Long stringId, @Nullable Long surveyId) {
        enter(passage, state, stringId, surveyId);
        remark(passage);
    }

    private void enter(Passage passage, UploadState state, @Nullable Long stringId, @Nullable Long surveyId) {
        UUID id = passage.handover().id();
        jdbc.sql("update upload set state = :state, stage = :stage, string_id = :string, survey_id = :survey"
                        + " where id = :id")
                .param("state", state.name())
                .param("stage", passage.stage().name())
                .param("string", stringId)
                .param("survey", surveyId)
                .param("id", id)
                .update();
    }

    void settle(UUID id, String by, String reason) {
        jdbc.sql("update upload set settled_at = ?, settled_by = ?, settled_reason = ? where id = ?")
                .params(Timestamp.from(clock.instant()), by, reason, id)
                .update();
    }

    /** Whose place the survey of a held upload takes may be said when it is settled, too. */
    void correct(UUID id, Correction correction) {
        jdbc.sql("update upload set supersedes = ?, supersedes_reason = ? where id = ?")
                .params(correction.surveyId(), correction.reason(), id)
                .update();
    }

    void refuse(UUID id) {
        jdbc.sql("update upload set state = 'REFUSED' where id = ?").param(id).update();
    }

    @Nullable
    Long claimedString(UUID id) {
        return jdbc.sql("select coalesce(claimed_string_id, 0) from upload where id = ? for update")
                .param(id)
                .query(Long.class)
                .optional()
                .filter(claimed -> claimed != 0)
                .orElse(null);
    }
}
