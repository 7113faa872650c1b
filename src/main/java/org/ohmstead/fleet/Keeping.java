package org.ohmstead.fleet;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.fleet.csv.Sheet;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** Writes down and announces what was done to the register. */
@Component
class Keeping {

    private final AuditTrail trail;
    private final ApplicationEventPublisher events;

    Keeping(AuditTrail trail, ApplicationEventPublisher events) {
        this.trail = trail;
        this.events = events;
    }

    <E> void created(Sheet<E> sheet, E entry, @Nullable Long areaId) {
        trail.record(sheet.one() + " created", sheet.one(), sheet.keyOf(entry), areaId, sheet.cells(entry));
    }

    <E> void changed(Sheet<E> sheet, E before, E after, @Nullable Long areaId) {
        trail.record(
                sheet.one() + " changed",
                sheet.one(),
                sheet.keyOf(before),
                areaId,
                Sound.changes(sheet, before, after));
    }

    void done(String action, StringView string, Map<String, ?> detail) {
        trail.record(action, "string", string.title(), string.areaId(), detail);
        announce(string.id());
    }

    /**
     * Announced once, however many things of the string change in the transaction, just before it commits: so listeners
     * see everything and take part in the transaction, and what is rolled back, as a preview is, is never announced.
     */
    void announce(long stringId) {
        TransactionSynchronizationManager.getSynchronizations().stream()
                .filter(Announcement.class::isInstance)
                .map(Announcement.class::cast)
                .filter(announcement -> !announcement.made)
                .findFirst()
                .orElseGet(this::announcement)
                .stringIds
                .add(stringId);
    }

    private Announcement announcement() {
        Announcement announcement = new Announcement();
        TransactionSynchronizationManager.registerSynchronization(announcement);
        return announcement;
    }

    private final class Announcement implements TransactionSynchronization {

        private final Set<Long> stringIds = new LinkedHashSet<>();
        private boolean made;

        @Override
        public void beforeCommit(boolean readOnly) {
            made = true;
            stringIds.forEach(stringId -> events.publishEvent(new StringChanged(stringId)));
        }
    }
}
