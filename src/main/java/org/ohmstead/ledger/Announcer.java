package org.ohmstead.ledger;

import java.util.function.Supplier;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Announces accepted surveys one by one, unless they are part of a history that is announced as a whole. */
@Component
class Announcer {

    private final ApplicationEventPublisher events;
    private final ThreadLocal<Boolean> quiet = ThreadLocal.withInitial(() -> false);

    Announcer(ApplicationEventPublisher events) {
        this.events = events;
    }

    void accepted(long stringId, long surveyId) {
        if (!quiet.get()) {
            events.publishEvent(new SurveyAccepted(stringId, surveyId));
        }
    }

    <T> T quietly(Supplier<T> work) {
        quiet.set(true);
        try {
            return work.get();
        } finally {
            quiet.remove();
        }
    }
}
