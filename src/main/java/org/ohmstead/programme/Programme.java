package org.ohmstead.programme;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.util.List;
import java.util.Optional;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.StringAssessed;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.programme.rules.NextDates;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** When each string is to be visited next: recomputed whenever it is assessed, in the same transaction. */
@Service
public class Programme {

    private final FleetRegister register;
    private final NextDateTable table;
    private final Access access;

    Programme(FleetRegister register, NextDateTable table, Access access) {
        this.register = register;
        this.table = table;
        this.access = access;
    }

    /** @throws NotFound when there is no such string within reach, or it has no next date (retired, never assessed) */
    @Transactional(readOnly = true)
    public NextDateView nextDate(long stringId) {
        return findNextDate(stringId).orElseThrow(() -> NotFound.of("next date of string", stringId));
    }

    /** @throws NotFound when there is no such string within reach */
    @Transactional(readOnly = true)
    public Optional<NextDateView> findNextDate(long stringId) {
        access.require(SEE_ESTATE);
        register.string(stringId);
        return table.find(stringId);
    }

    /** Of all strings in reach, the earliest first. */
    @Transactional(readOnly = true)
    public List<NextDateView> nextDates() {
        access.require(SEE_ESTATE);
        return table.inReach(access.reach());
    }

    @EventListener
    void on(StringAssessed assessed) {
        StringView string = register.string(assessed.stringId());
        if (string.retiredOn() != null) {
            table.remove(string.id());
            return;
        }
        table.put(
                string.id(),
                NextDates.next(
                        string.inServiceOn(),
                        assessed.surveyedOn(),
                        string.entry().surveyIntervalMonths(),
                        assessed.recheckBy()));
    }
}
