package org.ohmstead.intake;

import java.util.HexFormat;
import java.util.Locale;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Component;

/** Takes a held upload in hand, so that nobody else settles or repairs it until the commit. */
@Component
class HeldUpload {

    private final UploadBook book;
    private final Uploads uploads;
    private final RepairBook repairs;
    private final Access access;

    HeldUpload(UploadBook book, Uploads uploads, RepairBook repairs, Access access) {
        this.book = book;
        this.uploads = uploads;
        this.repairs = repairs;
        this.access = access;
    }

    /** @throws Conflict when it is not held any more */
    Handover lock(UUID id) {
        book.queueUp(HexFormat.of().parseHex(seen(id).sha256()));
        Long claimed = book.claimedString(id);
        UploadView upload = seen(id);
        if (upload.state() != UploadState.HELD) {
            throw new Conflict("This upload is not held any more: it was "
                    + upload.state().word().toLowerCase(Locale.ROOT) + ".");
        }
        return new Handover(id, upload.fileName(), uploads.raw(id), claimed, upload.correction());
    }

    /** With the repairs that are in force. */
    Passage passage(Handover handover) {
        Integer part = seen(handover.id()).part();
        return new Passage(handover, part == null ? 0 : part, repairs.inForce(handover.id()));
    }

    private UploadView seen(UUID id) {
        return uploads.find(id, access.current()).orElseThrow(() -> NotFound.of("upload", id));
    }
}
