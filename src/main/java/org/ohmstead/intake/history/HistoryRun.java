package org.ohmstead.intake.history;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Objects;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import org.ohmstead.access.Access;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.intake.Handover;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.RemarkView;
import org.ohmstead.intake.UploadView;
import org.ohmstead.intake.check.Severity;
import org.ohmstead.intake.history.HistoryShelf.Waiting;
import org.ohmstead.kernel.Refused;
import org.ohmstead.ledger.BulkLedger;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.NonTransientDataAccessResourceException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Works through a history file by file, each in a transaction of its own and by the way of a single upload, as the person who
 * sent it. Whatever ends it, the next run goes on with the first file that still waits. Its strings are judged once, at the
 * end.
 */
@Component
class HistoryRun {

    private static final Logger LOG = LoggerFactory.getLogger(HistoryRun.class);

    private final HistoryShelf shelf;
    private final Intake intake;
    private final BulkLedger ledger;
    private final People people;
    private final Access access;
    private final TransactionTemplate transaction;

    HistoryRun(
            HistoryShelf shelf,
            Intake intake,
            BulkLedger ledger,
            People people,
            Access access,
            TransactionTemplate transaction) {
        this.shelf = shelf;
        this.intake = intake;
        this.ledger = ledger;
        this.people = people;
        this.access = access;
        this.transaction = transaction;
    }

    /** @throws IllegalStateException when it had to stop before the end; it is tried again later */
    void perform(UUID id, BooleanSupplier toStop) {
        HistoryView load = shelf.find(id).orElseThrow();
        if (!load.isUnderWay()) {
            return;
        }
        Person person = people.findEnabled(load.receivedBy())
                .orElseThrow(() -> new Refused("The account of " + load.receivedBy() + ", who sent it, is closed."));
        access.as(person, () -> {
            transaction.executeWithoutResult(status -> shelf.start(id));
            while (!toStop.getAsBoolean() && takeNext(id)) {
                LOG.debug("One more file of history {}", id);
            }
            if (toStop.getAsBoolean()) {
                throw new IllegalStateException("History " + id + " goes on after the service has started again.");
            }
            transaction.executeWithoutResult(status -> finish(id));
            return true;
        });
    }

    /** @return false when no file waits any more */
    boolean takeNext(UUID id) {
        int[] number = {0};
        try {
            return Boolean.TRUE.equals(transaction.execute(status -> {
                Waiting file = shelf.next(id).orElse(null);
                if (file == null) {
                    return false;
                }
                number[0] = file.number();
                take(id, file);
                return true;
            }));
        } catch (RuntimeException failed) {
            if (number[0] == 0 || isOfTheDatabase(failed)) {
                throw failed;
            }
            LOG.error("File {} of history {} could not be worked through", number[0], id, failed);
            transaction.executeWithoutResult(status -> shelf.conclude(
                    id, number[0], FileOutcome.FAILED, null, "The service failed here; its log says why."));
            return true;
        }
    }

    /** Such a file is not given up: the whole run is tried again later. */
    private static boolean isOfTheDatabase(RuntimeException failed) {
        return failed instanceof NonTransientDataAccessResourceException
                || failed instanceof DataAccessResourceFailureException
                || failed instanceof TransientDataAccessException
                || failed instanceof TransactionException;
    }

    private void take(UUID id, Waiting file) {
        UUID name = UUID.nameUUIDFromBytes((id + "/" + file.number()).getBytes(StandardCharsets.UTF_8));
        Handover handover = new Handover(name, file.fileName(), file.bytes(), null);
        UploadView upload = ledger.quietly(() -> intake.receive(handover)).upload();
        shelf.conclude(id, file.number(), HistoryShelf.outcome(upload), upload.id(), gravest(upload));
    }

    private static String gravest(UploadView upload) {
        return upload.remarks().stream()
                .filter(remark -> remark.severity() != Severity.NOTE)
                .max(Comparator.comparing(RemarkView::severity))
                .map(remark -> (remark.place().isEmpty() ? "" : remark.place() + ": ") + remark.message())
                .orElse("");
    }

    private void finish(UUID id) {
        shelf.finish(id);
        HashSet<Long> strings = new HashSet<>(shelf.strings(id));
        if (!strings.isEmpty()) {
            ledger.announce(Objects.requireNonNull(strings));
        }
    }
}
