package org.ohmstead.programme;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the rules ask of each string, how that stands on any day, and when each string is to be visited next. */
@Service
@Transactional(readOnly = true)
public class Programme {

    /** Strings held in memory at a time. */
    private static final int CHUNK = 200;

    private final FleetRegister register;
    private final NextDateTable dates;
    private final InServiceTable strings;
    private final DutyBook book;
    private final Access access;
    private final Clock clock;

    Programme(
            FleetRegister register,
            NextDateTable dates,
            InServiceTable strings,
            DutyBook book,
            Access access,
            Clock clock) {
        this.register = register;
        this.dates = dates;
        this.strings = strings;
        this.book = book;
        this.access = access;
        this.clock = clock;
    }

    /** @throws NotFound when there is no such string within reach, or it has no next date (retired, never assessed) */
    public NextDateView nextDate(long stringId) {
        return findNextDate(stringId).orElseThrow(() -> NotFound.of("next date of string", stringId));
    }

    /** @throws NotFound when there is no such string within reach */
    public Optional<NextDateView> findNextDate(long stringId) {
        access.require(SEE_ESTATE);
        register.requireString(stringId);
        return dates.find(stringId);
    }

    /** Of all strings in reach, the earliest first. */
    public List<NextDateView> nextDates() {
        access.require(SEE_ESTATE);
        return dates.inReach(access.reach());
    }

    /**
     * @param asOf in the site's calendar; null for its today
     * @throws NotFound when there is no such string within reach
     */
    public StringDuties duties(long stringId, @Nullable LocalDate asOf) {
        access.require(SEE_ESTATE);
        register.string(stringId);
        return book.of(strings.of(List.of(stringId)), string -> day(string, asOf))
                .get(0);
    }

    /** Of every string in reach that is under a pack on that day; null for each site's today. */
    public List<StringDuties> dutiesOfEstate(@Nullable LocalDate asOf) {
        List<StringDuties> all = new ArrayList<>();
        eachOfEstate(asOf, all::add);
        return all;
    }

    /** The same one by one, however large the estate; the consumer runs inside the transaction. */
    public void eachOfEstate(@Nullable LocalDate asOf, Consumer<StringDuties> consumer) {
        access.require(SEE_ESTATE);
        List<InService> all = strings.inReach(access.reach());
        for (int from = 0; from < all.size(); from += CHUNK) {
            List<InService> chunk = all.subList(from, Math.min(all.size(), from + CHUNK));
            book.of(chunk, string -> day(string, asOf)).stream()
                    .filter(duties -> duties.pack() != null)
                    .forEach(consumer);
        }
    }

    /**
     * What a report on the days from {@code first} to {@code last} must name of those strings: every span of every
     * requirement that fell due or was done in them, and the running ones. Strings out of reach are left out.
     *
     * @param asOf in the sites' calendars; null for each site's today
     */
    public List<DutyLine> lines(Collection<Long> stringIds, LocalDate first, LocalDate last, @Nullable LocalDate asOf) {
        access.require(SEE_ESTATE);
        Set<Long> wanted = Set.copyOf(stringIds);
        List<InService> some = strings.inReach(access.reach()).stream()
                .filter(string -> wanted.contains(string.stringId()))
                .toList();
        return book.of(some, string -> day(string, asOf)).stream()
                .flatMap(duties -> DutyLine.of(duties, first, last).stream())
                .toList();
    }

    /** The same of every string in reach, however many; the consumer runs inside the transaction. */
    public void eachLine(LocalDate first, LocalDate last, @Nullable LocalDate asOf, Consumer<DutyLine> consumer) {
        eachOfEstate(asOf, duties -> DutyLine.of(duties, first, last).forEach(consumer));
    }

    private LocalDate day(InService string, @Nullable LocalDate asOf) {
        return asOf == null ? LocalDate.ofInstant(clock.instant(), string.timeZone()) : asOf;
    }
}
