package org.ohmstead.intake.history;

import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes histories in and tells how far they are. Whoever may settle surveys may load histories. */
@Service
public class Histories {

    private static final int MOST_LISTED = 50;

    private final HistoryShelf shelf;
    private final HistoryFiles files;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;
    private final ObjectProvider<SchedulerClient> scheduler;

    Histories(
            HistoryShelf shelf,
            HistoryFiles files,
            Access access,
            AuditTrail audit,
            Clock clock,
            ObjectProvider<SchedulerClient> scheduler) {
        this.shelf = shelf;
        this.files = files;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
        this.scheduler = scheduler;
    }

    /**
     * Takes a history in: every file's bytes are kept when this returns, and worked through in the background. The same
     * bytes again are the same history.
     *
     * @throws Refused when it is no history, or beyond the limits, with the reason; nothing is kept then
     */
    @Transactional(rollbackFor = IOException.class)
    public HistoryReceipt receive(String fileName, Path file) throws IOException {
        access.require(SETTLE_SURVEYS);
        if (Files.size(file) == 0) {
            throw new Refused("The file is empty. Check that it was packed completely, then send it again.");
        }
        byte[] sha256 = fingerprint(file);
        UUID id = UUID.randomUUID();
        String name = new Piece(fileName, new byte[0]).name();
        if (!shelf.enter(id, sha256, name, Files.size(file), access.current().username())) {
            return new HistoryReceipt(load(shelf.of(sha256).orElseThrow()), false);
        }
        AtomicInteger count = new AtomicInteger();
        HistoryPieces.cut(file, name, piece -> shelf.add(id, count.incrementAndGet(), piece));
        audit.record("history received", "history", id.toString(), null, Map.of("file", name, "files", count.get()));
        scheduler.ifAvailable(client -> client.scheduleIfNotExists(
                HistoryJobs.LOAD.instance(id.toString()).build(), clock.instant()));
        return new HistoryReceipt(load(id), true);
    }

    /** @throws NotFound when there is none, or somebody else loaded it and the asking person does not reach everything */
    @Transactional(readOnly = true)
    public HistoryView load(UUID id) {
        access.require(SEE_ESTATE);
        return shelf.find(id)
                .filter(load -> isInReach(load.receivedBy()))
                .orElseThrow(() -> NotFound.of("history", id));
    }

    /** Latest first. */
    @Transactional(readOnly = true)
    public List<HistoryView> recent() {
        access.require(SEE_ESTATE);
        return shelf.recent(
                access.reach().everywhere() ? null : access.current().username(), MOST_LISTED);
    }

    /** Files of one outcome, or of all, after the file of that number. */
    @Transactional(readOnly = true)
    public List<HistoryFile> files(UUID id, @Nullable FileOutcome outcome, int after, int limit) {
        return files.after(load(id).id(), outcome, after, limit);
    }

    @Transactional(readOnly = true)
    public void eachFile(UUID id, @Nullable FileOutcome outcome, Consumer<HistoryFile> consumer) {
        files.each(load(id).id(), outcome, consumer);
    }

    private boolean isInReach(String receivedBy) {
        return access.reach().everywhere() || receivedBy.equals(access.current().username());
    }

    private static byte[] fingerprint(Path file) throws IOException {
        MessageDigest digest = Sha256.digest();
        try (InputStream bytes = Files.newInputStream(file)) {
            byte[] chunk = new byte[1 << 16];
            for (int read = bytes.read(chunk); read >= 0; read = bytes.read(chunk)) {
                digest.update(chunk, 0, read);
            }
        }
        return digest.digest();
    }
}
