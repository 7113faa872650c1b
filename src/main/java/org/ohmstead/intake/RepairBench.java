package org.ohmstead.intake;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.check.Severity;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.repair.FixReading;
import org.ohmstead.intake.repair.Step;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Where held surveys are put right, step by step, and looked at again after each by the same checks. The raw file is never
 * altered; the steps stay on record with the survey.
 */
@Service
public class RepairBench {

    private final Intake intake;
    private final HeldUpload held;
    private final RepairBook repairs;
    private final UploadBook book;
    private final Uploads uploads;
    private final Stages stages;
    private final Rehearsal rehearsal;
    private final Admission admission;
    private final FleetRegister register;
    private final Access access;
    private final AuditTrail audit;

    RepairBench(
            Intake intake,
            HeldUpload held,
            RepairBook repairs,
            UploadBook book,
            Uploads uploads,
            Stages stages,
            Rehearsal rehearsal,
            Admission admission,
            FleetRegister register,
            Access access,
            AuditTrail audit) {
        this.intake = intake;
        this.held = held;
        this.repairs = repairs;
        this.book = book;
        this.uploads = uploads;
        this.stages = stages;
        this.rehearsal = rehearsal;
        this.admission = admission;
        this.register = register;
        this.access = access;
        this.audit = audit;
    }

    /**
     * How a held survey stands now, and what could put it right.
     *
     * @throws Conflict when it is not held any more
     */
    @Transactional(readOnly = true)
    public Bench look(UUID id) {
        access.require(SEE_ESTATE);
        Passage now = rehearsed(id);
        SurveySheet sheet = now.sheet();
        String unit = now.readings() == null || sheet == null
                ? ""
                : Objects.requireNonNull(sheet.facts().ohmicKind()).unit();
        return new Bench(intake.upload(id), unit, Rehearsal.outcome(now), BenchLines.of(now), rehearsal.offers(now));
    }

    /** What one repair more would come to; nothing is kept. */
    @Transactional(readOnly = true)
    public Offer preview(UUID id, Step step) {
        access.require(SEE_ESTATE);
        Passage now = rehearsed(id);
        return rehearsal.offer(now, RemarkCode.READ_BY_RULE, seen(step, now));
    }

    /**
     * Makes a repair and looks at the survey again. Order, units and string are for anybody who hands in surveys; a single
     * value is an engineer's word, with a reason.
     *
     * @throws Conflict when it is not held any more
     * @throws Refused when the string has no such place, or a reason is needed and missing
     */
    @Transactional
    public UploadView repair(UUID id, Step step, String reason) {
        require(step.needsJudgement() ? SETTLE_SURVEYS : HAND_IN_SURVEYS, intake.upload(id));
        if (step.needsJudgement() && reason.isBlank()) {
            throw new Refused("Say how you know, so that others understand it later.");
        }
        Passage before = held.passage(held.lock(id));
        Step known = step instanceof FixReading ? seen(step, stages.rehearse(before)) : step;
        Passage after = stages.run(before.again(known));
        requireFit(after, known);
        repairs.add(id, known, reason.strip(), access.current().username());
        return concluded("repaired", after, known.words(), reason.strip());
    }

    /**
     * Takes the last repair back.
     *
     * @throws Conflict when there is none, or the survey is not held any more
     */
    @Transactional
    public UploadView takeBack(UUID id) {
        require(HAND_IN_SURVEYS, intake.upload(id));
        Handover handover = held.lock(id);
        RepairView last = repairs.all(id).stream()
                .filter(repair -> !repair.takenBack())
                .reduce((first, second) -> second)
                .orElseThrow(() -> new Conflict("There is no repair to take back."));
        if (last.step().needsJudgement()) {
            require(SETTLE_SURVEYS, intake.upload(id));
        }
        repairs.takeBack(id, last, access.current().username());
        return concluded("repair taken back", stages.run(held.passage(handover)), last.words(), "");
    }

    /**
     * Stores a repaired survey that nothing holds any more.
     *
     * @throws Conflict when it is not held any more
     * @throws Refused when something still holds it
     */
    @Transactional
    public UploadView store(UUID id) {
        require(HAND_IN_SURVEYS, intake.upload(id));
        Handover handover = held.lock(id);
        Passage passage = stages.run(held.passage(handover));
        if (passage.verdict() != UploadState.ACCEPTED) {
            throw new Refused("Something still holds it: " + holding(passage)
                    + ". Repair that, too, or let an engineer accept it as measured.");
        }
        admission.store(passage, Sha256.of(handover.bytes()));
        String done = passage.steps().stream().map(Step::words).collect(Collectors.joining("; "));
        String reason = done.isEmpty() ? "Nothing holds it any more" : "As repaired: " + done;
        book.settle(id, access.current().username(), reason);
        return recorded("stored as repaired", id, Map.of("repairs", reason));
    }

    private UploadView concluded(String action, Passage passage, String words, String reason) {
        UUID id = passage.handover().id();
        book.conclude(passage, UploadState.HELD, null);
        return recorded(action, id, Map.of("step", words, "reason", reason));
    }

    private UploadView recorded(String action, UUID id, Map<String, ?> detail) {
        UploadView upload = intake.upload(id);
        audit.record(action, "upload", id.toString(), areaOf(upload), detail);
        return upload;
    }

    private Passage rehearsed(UUID id) {
        UploadView upload = intake.upload(id);
        if (upload.state() != UploadState.HELD) {
            throw new Conflict("This upload is not held any more; there is nothing to repair.");
        }
        Handover handover =
                new Handover(id, upload.fileName(), uploads.raw(id), uploads.claimedString(id), upload.correction());
        return stages.rehearse(held.passage(handover));
    }

    /** A single value is put on record beside what stood there. */
    private static Step seen(Step step, Passage now) {
        SurveySheet sheet = now.sheet();
        return step instanceof FixReading fix && sheet != null ? fix.seenIn(sheet) : step;
    }

    private static void requireFit(Passage passage, Step step) {
        boolean misfits = passage.remarks().stream()
                .anyMatch(remark -> remark.code() == RemarkCode.REPAIR_MISFITS
                        && remark.place().words().equals(step.words()));
        if (misfits) {
            throw new Refused(passage.remarks().stream()
                    .filter(remark -> remark.code() == RemarkCode.REPAIR_MISFITS)
                    .map(remark -> remark.seen())
                    .collect(Collectors.joining(" ")));
        }
    }

    private static String holding(Passage passage) {
        List<String> codes = passage.remarks().stream()
                .filter(remark -> remark.severity().compareTo(Severity.HOLD) >= 0)
                .map(remark -> remark.place().words() + " (" + remark.code() + ")")
                .toList();
        return String.join(", ", codes);
    }

    private void require(Permission permission, UploadView upload) {
        Long areaId = areaOf(upload);
        if (areaId == null) {
            access.require(permission);
        } else {
            access.require(permission, areaId);
        }
    }

    private @Nullable Long areaOf(UploadView upload) {
        Long stringId = upload.stringId();
        return stringId == null ? null : register.string(stringId).areaId();
    }
}
