package org.ohmstead.worklist;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.RemakeView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.worklist.model.Evidence;
import org.ohmstead.worklist.model.WorkItem;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Writes remade links into the register for whoever reports the work. A crew may not change the register; this one fact it
 * brings in by its report, and the audit trail names both.
 */
@Component
class RemakesOfWork {

    private final JarsAndLinks links;
    private final FleetRegister register;
    private final Access access;
    private final JdbcClient jdbc;

    RemakesOfWork(JarsAndLinks links, FleetRegister register, Access access, JdbcClient jdbc) {
        this.links = links;
        this.register = register;
        this.access = access;
        this.jdbc = jdbc;
    }

    /** "As found 61 µΩ, as left 24.5 µΩ. Lug was loose." */
    String words(WorkReport report) {
        String found = reading("as found", report.asFoundMicroohms());
        String left = reading("as left", report.asLeftMicroohms());
        String readings = found.isEmpty() || left.isEmpty() ? found + left : found + ", " + left;
        String note = report.note().strip();
        return readings.isEmpty() ? note : note.isEmpty() ? readings : readings + "; " + note;
    }

    private static String reading(String name, @Nullable Double microohms) {
        return microohms == null
                ? ""
                : name + " "
                        + java.math.BigDecimal.valueOf(microohms)
                                .stripTrailingZeros()
                                .toPlainString() + " µΩ";
    }

    Evidence record(WorkItem item, WorkReport report) {
        StringView string = register.string(item.stringId());
        RemakeEntry entry = new RemakeEntry(
                string.siteCode(),
                string.name(),
                ordinal(item),
                report.on(),
                report.asFoundMicroohms(),
                report.asLeftMicroohms(),
                report.note().strip());
        RemakeView remake = access.asSystem(actor(), () -> links.recordRemake(entry));
        return new Evidence(Evidence.Kind.REMAKE, remake.id());
    }

    private static int ordinal(WorkItem item) {
        return Objects.requireNonNull(item.key().subject().unit());
    }

    private String actor() {
        return access.current().username() + " by the work list";
    }

    /** The remake that came with the item's last report, unless the register has it no longer. */
    void takeBack(WorkItem item) {
        reported(item).ifPresent(id -> access.asSystem(actor(), () -> links.takeBackRemake(id)));
    }

    private Optional<Long> reported(WorkItem item) {
        return jdbc.sql("""
                        select r.id from (select evidence_kind, evidence_id from work_event
                                          where item_id = ? and kind = 'DONE' order by id desc limit 1) e
                        join link_remake r on r.id = e.evidence_id and e.evidence_kind = 'REMAKE'""").param(item.id()).query(Long.class).optional();
    }
}
