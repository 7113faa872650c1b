package org.ohmstead.overview;

import java.util.List;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.RemarkView;
import org.ohmstead.intake.UploadState;
import org.ohmstead.intake.UploadView;
import org.springframework.stereotype.Component;

/** Surveys that came in and wait for a decision. */
@Component
class HeldAtTheDoor {

    private static final int MOST = 50;

    private final Intake intake;

    HeldAtTheDoor(Intake intake) {
        this.intake = intake;
    }

    /** The latest of all in reach. */
    List<EstateView.Held> latest(int most) {
        return intake.recent(UploadState.HELD, most).stream()
                .map(HeldAtTheDoor::held)
                .toList();
    }

    /** Those among the latest that belong to these strings. */
    List<EstateView.Held> of(List<StringTile> strings) {
        List<Long> ids = strings.stream().map(StringTile::stringId).toList();
        return intake.recent(UploadState.HELD, MOST).stream()
                .filter(upload -> upload.stringId() != null && ids.contains(upload.stringId()))
                .map(HeldAtTheDoor::held)
                .toList();
    }

    private static EstateView.Held held(UploadView upload) {
        return new EstateView.Held(
                upload.id().toString(),
                upload.string() == null ? upload.fileName() : upload.string(),
                upload.receivedAt(),
                why(upload));
    }

    /** What its gravest remark says. */
    private static String why(UploadView upload) {
        return upload.remarks().stream()
                .max(java.util.Comparator.comparing(RemarkView::severity))
                .map(RemarkView::message)
                .orElse("It waits for a decision.");
    }
}
