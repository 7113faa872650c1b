package org.ohmstead.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.check.Place;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.ledger.SurveyLedger;
import org.springframework.stereotype.Component;

/** Lets a file's survey into the ledger, or each of its surveys, or writes down why not. */
@Component
class Admission {

    private final Stages stages;
    private final UploadBook book;
    private final Uploads uploads;
    private final SurveyLedger ledger;
    private final CorrectedSurvey corrected;
    private final Access access;

    Admission(
            Stages stages,
            UploadBook book,
            Uploads uploads,
            SurveyLedger ledger,
            CorrectedSurvey corrected,
            Access access) {
        this.stages = stages;
        this.book = book;
        this.uploads = uploads;
        this.ledger = ledger;
        this.corrected = corrected;
        this.access = access;
    }

    void admit(Handover handover, byte[] sha256) {
        Passage passage = new Passage(handover);
        if (isStoredEarlier(passage, sha256)) {
            return;
        }
        stages.run(passage);
        if (!passage.several().isEmpty()) {
            admitParts(passage, sha256);
        }
        conclude(passage, sha256);
    }

    void store(Passage passage, byte[] sha256) {
        if (isStoredEarlier(passage, sha256)) {
            return;
        }
        book.remark(passage);
        long surveyId = ledger.accept(SurveyDraft.of(passage, sha256));
        corrected.takePlace(passage, surveyId);
        book.enter(passage, UploadState.ACCEPTED, surveyId);
    }

    private void conclude(Passage passage, byte[] sha256) {
        if (passage.verdict() == UploadState.ACCEPTED) {
            store(passage, sha256);
        } else {
            book.conclude(passage, passage.verdict(), null);
        }
    }

    private void admitParts(Passage whole, byte[] sha256) {
        queueUpForAll(whole);
        List<Remark> ofTheFile = whole.remarks();
        for (int number = 1; number <= whole.several().size(); number++) {
            Handover handover = part(whole.handover(), number);
            book.enterPart(
                    handover,
                    sha256,
                    access.current().username(),
                    whole.handover().id(),
                    number);
            Passage part = new Passage(handover, number, List.of());
            part.remark(ofTheFile);
            if (!isStoredEarlier(part, sha256)) {
                stages.runRead(part, whole.several().get(number - 1));
                conclude(part, sha256);
            }
        }
    }

    /** In one order for all, before anything is stored, so that two such files never wait for each other. */
    private void queueUpForAll(Passage whole) {
        TreeSet<Long> stringIds = new TreeSet<>();
        for (SurveySheet sheet : whole.several()) {
            StringBlueprint found =
                    stages.match(new Passage(whole.handover()), sheet).blueprint();
            if (found != null) {
                stringIds.add(found.string().id());
            }
        }
        new ArrayList<>(stringIds).forEach(book::queueUpFor);
    }

    /** Named after the whole, so that a request that is repeated names the same parts. */
    private static Handover part(Handover whole, int number) {
        UUID id = UUID.nameUUIDFromBytes((whole.id() + "/part/" + number).getBytes(StandardCharsets.UTF_8));
        return new Handover(id, whole.fileName(), whole.bytes(), whole.claimedStringId());
    }

    /** The same bytes are the same survey: this upload points at it, too. */
    private boolean isStoredEarlier(Passage passage, byte[] sha256) {
        Optional<UploadView> stored = uploads.storedEarlier(sha256, passage, access.current());
        stored.ifPresent(earlier -> attach(passage, earlier));
        return stored.isPresent();
    }

    private void attach(Passage passage, UploadView earlier) {
        corrected.requireSettled(passage, Objects.requireNonNull(earlier.surveyId()));
        String seen = "survey " + earlier.surveyId() + ", handed in as " + earlier.fileName();
        passage.remark(List.of(Remark.of(RemarkCode.SAME_FILE, Place.FILE, seen, "")));
        book.conclude(passage, UploadState.ACCEPTED, earlier.stringId(), earlier.surveyId());
    }
}
