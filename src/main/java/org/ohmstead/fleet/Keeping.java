package org.ohmstead.fleet;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.fleet.csv.Sheet;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

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

    void announce(long stringId) {
        events.publishEvent(new StringChanged(stringId));
    }
}
