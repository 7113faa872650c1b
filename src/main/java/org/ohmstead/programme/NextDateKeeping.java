package org.ohmstead.programme;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ohmstead.access.Reach;
import org.ohmstead.assessment.StringAssessed;
import org.ohmstead.assessment.StringsAssessed;
import org.ohmstead.capacity.CapacityTestsChanged;
import org.ohmstead.programme.rules.NextDate;
import org.ohmstead.programme.rules.NextDates;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** Keeps the next dates up to date: with every assessment, every change of a programme, and every night. */
@Component
class NextDateKeeping {

    private static final int CHUNK = 200;

    private final InServiceTable strings;
    private final DutyBook book;
    private final NextDateTable table;
    private final TransactionTemplate transaction;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    NextDateKeeping(
            InServiceTable strings,
            DutyBook book,
            NextDateTable table,
            TransactionTemplate transaction,
            ApplicationEventPublisher events,
            Clock clock) {
        this.strings = strings;
        this.book = book;
        this.table = table;
        this.transaction = transaction;
        this.events = events;
        this.clock = clock;
    }

    @EventListener
    void on(StringAssessed assessed) {
        take(List.of(assessed));
    }

    @EventListener
    void on(StringsAssessed assessed) {
        take(assessed.strings());
    }

    @EventListener
    void on(CapacityTestsChanged changed) {
        keep(strings.of(List.of(changed.stringId())));
    }

    /** In the transaction of whatever made it necessary. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void recompute(Collection<Long> stringIds) {
        if (!stringIds.isEmpty()) {
            keep(strings.of(stringIds));
        }
    }

    /** Some strings a transaction. */
    void recomputeEstate() {
        List<InService> all = strings.inReach(Reach.EVERYWHERE);
        for (int from = 0; from < all.size(); from += CHUNK) {
            List<Long> chunk = all.subList(from, Math.min(all.size(), from + CHUNK)).stream()
                    .map(InService::stringId)
                    .toList();
            transaction.executeWithoutResult(status -> keep(strings.of(chunk)));
        }
    }

    private void take(List<StringAssessed> assessed) {
        Map<Long, StringAssessed> news = new HashMap<>();
        assessed.forEach(one -> news.put(one.stringId(), one));
        keep(strings.of(news.keySet()).stream()
                .map(string -> string.assessed(Objects.requireNonNull(news.get(string.stringId()))))
                .toList());
    }

    private void keep(List<InService> all) {
        table.remove(all.stream()
                .filter(string -> string.retiredOn() != null)
                .map(InService::stringId)
                .toList());
        List<InService> serving =
                all.stream().filter(string -> string.retiredOn() == null).toList();
        List<StringDuties> duties = book.of(serving, this::today);
        Map<InService, NextDate> dates = new HashMap<>();
        for (int i = 0; i < serving.size(); i++) {
            InService string = serving.get(i);
            dates.put(
                    string,
                    NextDates.next(
                            string.survey(), new ArrayList<>(duties.get(i).duties()), string.demand()));
        }
        table.put(dates);
        events.publishEvent(new DutiesReckoned(duties));
    }

    private LocalDate today(InService string) {
        return LocalDate.ofInstant(clock.instant(), string.timeZone());
    }
}
