package org.ohmstead.programme;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Photographs of visits, kept as they came. Added at any time, never changed or removed. */
@Service
@Transactional
public class VisitPhotos {

    private static final int MOST_A_VISIT = 20;

    private final VisitBook visits;
    private final PhotoTable table;
    private final VisitForms forms;
    private final Access access;
    private final AuditTrail audit;

    VisitPhotos(VisitBook visits, PhotoTable table, VisitForms forms, Access access, AuditTrail audit) {
        this.visits = visits;
        this.table = table;
        this.forms = forms;
        this.access = access;
        this.audit = audit;
    }

    /** A visit and the photographs that belong to it. */
    public record Illustrated(NewVisit visit, List<NewPhoto> photos) {}

    /** A photograph with its bytes. */
    public record Picture(PhotoView photo, byte[] bytes) {}

    /**
     * Records visits to several strings at once: all or none.
     *
     * @param form names the form that says so; sent again it records nothing more
     * @return the visits' ids
     * @throws Conflict when that form came before and said something else
     */
    public List<Long> record(UUID form, List<Illustrated> all) {
        access.require(HAND_IN_SURVEYS);
        if (all.isEmpty()) {
            throw new Refused("Nothing was looked at; mark at least one point of a list.");
        }
        return forms.once(form, all, () -> all.stream().map(this::record).toList());
    }

    private long record(Illustrated one) {
        long id = visits.record(one.visit());
        add(id, one.photos());
        return id;
    }

    /**
     * @throws NotFound when there is no such visit within reach
     * @throws Conflict when it was voided
     * @throws Refused when one is no picture, or there would be more than 20
     */
    public List<PhotoView> add(long visitId, List<NewPhoto> photos) {
        access.require(HAND_IN_SURVEYS);
        if (visits.visit(visitId).voidedBecause() != null) {
            throw new Conflict("Visit " + visitId + " is voided; nothing is added to it.");
        }
        photos.forEach(photo -> table.insert(visitId, photo, access.current().username()));
        List<PhotoView> kept = table.of(visitId);
        if (kept.size() > MOST_A_VISIT) {
            throw new Refused(
                    "A visit keeps at most " + MOST_A_VISIT + " photographs; this would make " + kept.size() + ".");
        }
        if (!photos.isEmpty()) {
            audit.record(
                    "photographs added", "visit", String.valueOf(visitId), null, Map.of("photographs", photos.size()));
        }
        return kept;
    }

    /** In the order they came. */
    @Transactional(readOnly = true)
    public List<PhotoView> of(long visitId) {
        access.require(SEE_ESTATE);
        visits.visit(visitId);
        return table.of(visitId);
    }

    @Transactional(readOnly = true)
    public Picture picture(long visitId, long photoId) {
        access.require(SEE_ESTATE);
        PhotoView photo = of(visitId).stream()
                .filter(one -> one.id() == photoId)
                .findFirst()
                .orElseThrow(() -> NotFound.of("photograph", photoId));
        return new Picture(photo, table.bytes(photoId));
    }
}
