package org.ohmstead.reports;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.reports.ExportTable.Order;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Makes the files that were asked for, each as the person who asked: with that person's reach on the day. */
@Component
class ExportWork {

    private static final Logger LOG = LoggerFactory.getLogger(ExportWork.class);

    /** It is held in memory once on its way into the database. */
    private static final long LARGEST_BYTES = 128L * 1024 * 1024;

    private static final Duration KEPT = Duration.ofDays(7);
    private static final int STEPS_A_UPDATE = 10;

    private final ExportTable table;
    private final ReportDesk desk;
    private final Compliance compliance;
    private final EvidencePack evidence;
    private final People people;
    private final Access access;
    private final Clock clock;

    ExportWork(
            ExportTable table,
            ReportDesk desk,
            Compliance compliance,
            EvidencePack evidence,
            People people,
            Access access,
            Clock clock) {
        this.table = table;
        this.desk = desk;
        this.compliance = compliance;
        this.evidence = evidence;
        this.people = people;
        this.access = access;
        this.clock = clock;
    }

    void tidy() {
        table.deleteBefore(clock.instant().minus(KEPT));
    }

    /** What went wrong is told to whoever asked; there is no second try by itself. */
    void perform(UUID id) {
        table.start(id).ifPresent(order -> {
            try {
                Person person = people.findEnabled(order.askedBy())
                        .orElseThrow(() -> new Refused("The account that asked for it is closed."));
                access.as(person, () -> {
                    make(id, order);
                    return id;
                });
            } catch (Refused | NotFound e) {
                table.fail(id, String.valueOf(e.getMessage()));
            } catch (RuntimeException e) {
                LOG.error("Export {} of {} failed", id, order.wish(), e);
                table.fail(id, "Something went wrong while it was made; the log of the service says more.");
            }
        });
    }

    private void make(UUID id, Order order) {
        try {
            Path file = Files.createTempFile("export", "." + order.form().suffix());
            try {
                MessageDigest digest = Sha256.digest();
                String name;
                try (OutputStream out = new DigestOutputStream(Files.newOutputStream(file), digest)) {
                    name = write(id, order, out);
                }
                requireStorable(Files.size(file));
                table.finish(id, name, file, digest.digest());
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void requireStorable(long bytes) {
        if (bytes > LARGEST_BYTES) {
            throw new Refused("It came to " + bytes / 1_000_000
                    + " MB, more than is kept here. Ask area by area, or fetch it directly.");
        }
    }

    private String write(UUID id, Order order, OutputStream out) throws IOException {
        Progress progress = (step, done, all) -> {
            if (done % STEPS_A_UPDATE == 0 || done + 1 >= all) {
                table.progress(id, step, done, all);
            }
        };
        if (order.form() == ReportForm.ZIP) {
            ReportWish wish = order.wish();
            Quarter quarter = wish.quarter() == null ? compliance.latestFinished() : Quarter.parse(wish.quarter());
            progress.at("working out the quarter", 0, 1);
            ComplianceSummary summary = compliance.summary(quarter, wish.area());
            evidence.write(summary, out, progress);
            return summary.fileName() + ".zip";
        }
        progress.at("working out what it says", 0, 2);
        MadeReport made = desk.make(order.wish());
        progress.at("writing it down", 1, 2);
        made.write(order.form(), out);
        return made.fileName(order.form());
    }
}
