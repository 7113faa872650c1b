package org.ohmstead.reports;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Files that take a while: asked for, made in the background by whichever node claims them, fetched when ready. */
@Service
public class ReportExports {

    private static final int SHOWN = 12;
    private static final int MOST_UNDER_WAY = 3;

    private final ExportTable table;
    private final Access access;
    private final AuditTrail audit;
    private final TransactionTemplate transaction;
    private final ObjectProvider<SchedulerClient> scheduler;
    private final Clock clock;

    ReportExports(
            ExportTable table,
            Access access,
            AuditTrail audit,
            TransactionTemplate transaction,
            ObjectProvider<SchedulerClient> scheduler,
            Clock clock) {
        this.table = table;
        this.access = access;
        this.audit = audit;
        this.transaction = transaction;
        this.scheduler = scheduler;
        this.clock = clock;
    }

    /** A finished file. */
    public record File(String name, ReportForm form, byte[] content) {}

    /**
     * Committed before it is scheduled, so that a node never claims what it can't see yet.
     *
     * @return its id
     * @throws Conflict when several of the same person's are under way
     */
    public UUID ask(ReportWish wish, ReportForm form) {
        access.require(SEE_ESTATE);
        if (form == ReportForm.ZIP && wish.kind() != ReportKind.COMPLIANCE) {
            throw new Refused("Only a quarter's compliance comes as a pack of files.");
        }
        long underWay = recent().stream().filter(ExportView::isUnderWay).count();
        if (underWay >= MOST_UNDER_WAY) {
            throw new Conflict(underWay + " of your files are being made. Wait for one of them.");
        }
        UUID id = UUID.randomUUID();
        String by = access.current().username();
        transaction.executeWithoutResult(status -> {
            table.add(id, new ExportTable.Order(wish, form, by));
            audit.record(
                    "export asked for",
                    "export",
                    id.toString(),
                    null,
                    Map.of("report", wish.kind().code(), "form", form.suffix()));
        });
        scheduler.ifAvailable(client -> client.scheduleIfNotExists(
                ReportJobs.EXPORT.instance(id.toString()).build(), clock.instant()));
        return id;
    }

    /** The person's own, the latest first. */
    public List<ExportView> recent() {
        access.require(SEE_ESTATE);
        return table.recent(access.current().username(), SHOWN);
    }

    /** @throws NotFound when the person has asked for no such export, or it was tidied away */
    public ExportView export(UUID id) {
        access.require(SEE_ESTATE);
        return table.find(id, access.current().username()).orElseThrow(() -> NotFound.of("export", id));
    }

    /** @throws NotFound when there is none, or it is not ready */
    public File file(UUID id) {
        access.require(SEE_ESTATE);
        ExportView export = export(id);
        String name = export.fileName();
        if (name == null) {
            throw NotFound.of("finished export", id);
        }
        return new File(name, ReportForm.of(export.form()), table.content(id));
    }
}
