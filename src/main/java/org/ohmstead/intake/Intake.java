package org.ohmstead.intake;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.ledger.SurveyLedger;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A survey file's way in, exactly once: received, read, matched, checked, and then accepted, held or refused. Whatever the
 * bytes, they are kept and answered with a receipt.
 */
@Service
public class Intake {

    private final Stages stages;
    private final Admission admission;
    private final HeldUpload held;
    private final UploadBook book;
    private final Uploads uploads;
    private final SurveyLedger ledger;
    private final CorrectedSurvey corrected;
    private final FleetRegister register;
    private final Access access;
    private final AuditTrail audit;

    Intake(
            Stages stages,
            Admission admission,
            HeldUpload held,
            UploadBook book,
            Uploads uploads,
            SurveyLedger ledger,
            CorrectedSurvey corrected,
            FleetRegister register,
            Access access,
            AuditTrail audit) {
        this.stages = stages;
        this.admission = admission;
        this.held = held;
        this.book = book;
        this.uploads = uploads;
        this.ledger = ledger;
        this.corrected = corrected;
        this.register = register;
        this.access = access;
        this.audit = audit;
    }

    /**
     * Takes a file in. The same bytes under the same name get their first receipt again; the same bytes under another name
     * are the same survey and are not stored twice.
     *
     * @throws Conflict when other bytes came under this name before
     * @throws NotFound when the claimed string is not in reach
     */
    @Transactional
    public Receipt receive(Handover handedIn) {
        access.require(HAND_IN_SURVEYS);
        Optional.ofNullable(handedIn.claimedStringId()).ifPresent(register::string);
        Handover handover = corrected.claim(handedIn);
        byte[] sha256 = Sha256.of(handover.bytes());
        book.queueUp(sha256);
        if (!book.enter(handover, sha256, access.current().username())) {
            return firstReceipt(handover, sha256);
        }
        admission.admit(handover, sha256);
        UploadView upload = upload(handover.id());
        record("received", upload, Map.of("file", upload.fileName(), "state", upload.state()));
        return new Receipt(upload, true);
    }

    /** @throws NotFound when there is no such upload within reach */
    @Transactional(readOnly = true)
    public UploadView upload(UUID id) {
        access.require(SEE_ESTATE);
        return uploads.find(id, access.current()).orElseThrow(() -> NotFound.of("upload", id));
    }

    /** Latest first, each with the gravest of its remarks only; of one state, or of all. */
    @Transactional(readOnly = true)
    public List<UploadView> recent(@Nullable UploadState state, int limit) {
        access.require(SEE_ESTATE);
        return uploads.recent(state, access.current(), limit);
    }

    /** The very bytes that were handed in. */
    @Transactional(readOnly = true)
    public byte[] raw(UUID id) {
        return uploads.raw(upload(id).id());
    }

    /**
     * Stores a held survey as it was measured, with what is missing left missing. The register may have been corrected since:
     * the file is read, matched and checked once more first.
     *
     * @throws Conflict when it is not held any more
     * @throws Refused when no reason is given, or its string is still not known
     */
    @Transactional
    public UploadView accept(UUID id, String reason) {
        return accept(held(id, reason), reason);
    }

    /**
     * Stores a held survey as it was measured, in the place of a stored one of its string.
     *
     * @throws Conflict when it is not held any more, or the other one is of another string
     */
    @Transactional
    public UploadView acceptInPlaceOf(UUID id, long surveyId, String reason) {
        Handover handover = held(id, reason);
        Correction correction = new Correction(surveyId, reason);
        ledger.survey(surveyId);
        book.correct(id, correction);
        return accept(handover.correcting(correction), reason);
    }

    private UploadView accept(Handover handover, String reason) {
        Passage passage = stages.run(held.passage(handover));
        if (passage.readings() == null) {
            throw new Refused(
                    "The survey's string is not known, so it can't be stored. Correct the register or the sheet.");
        }
        admission.store(passage, Sha256.of(handover.bytes()));
        return settled("accepted as measured", handover.id(), reason);
    }

    /**
     * Refuses a held survey; its bytes stay.
     *
     * @throws Conflict when it is not held any more
     */
    @Transactional
    public UploadView refuse(UUID id, String reason) {
        held(id, reason);
        book.refuse(id);
        return settled("refused", id, reason);
    }

    private Receipt firstReceipt(Handover handover, byte[] sha256) {
        UUID id = handover.id();
        Correction correction = handover.correction();
        Long supersedes = correction == null ? null : correction.surveyId();
        return uploads.find(id, access.current())
                .filter(upload -> upload.sha256().equals(HexFormat.of().formatHex(sha256)))
                .filter(upload -> supersedes == null || supersedes.equals(upload.supersedes()))
                .map(upload -> new Receipt(upload, false))
                .orElseThrow(() -> new Conflict("Upload " + id
                        + " was named before for another file, or to correct another survey. Nothing was changed;"
                        + " hand this file in under a new name."));
    }

    private Handover held(UUID id, String reason) {
        requireToSettle(upload(id));
        if (reason.isBlank()) {
            throw new Refused("Give the reason, so that others understand it later.");
        }
        return held.lock(id);
    }

    private void requireToSettle(UploadView upload) {
        Long areaId = areaOf(upload);
        if (areaId == null) {
            access.require(SETTLE_SURVEYS);
        } else {
            access.require(SETTLE_SURVEYS, areaId);
        }
    }

    private UploadView settled(String action, UUID id, String reason) {
        book.settle(id, access.current().username(), reason);
        UploadView upload = upload(id);
        record(action, upload, Map.of("reason", reason));
        return upload;
    }

    private void record(String action, UploadView upload, Map<String, ?> detail) {
        audit.record(action, "upload", upload.id().toString(), areaOf(upload), detail);
    }

    private @Nullable Long areaOf(UploadView upload) {
        Long stringId = upload.stringId();
        return stringId == null ? null : register.string(stringId).areaId();
    }
}
