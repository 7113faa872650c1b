package org.ohmstead.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A database server that outlived the service that started it, as happens when the service is killed. It still holds
 * the data directory, so it is asked to stop (fast shutdown: running work is rolled back, committed work is kept).
 */
final class OrphanedServer {

    private static final Logger LOG = LoggerFactory.getLogger(OrphanedServer.class);
    private static final int SECONDS_TO_STOP = 60;

    private final ProcessHandle process;

    private OrphanedServer(ProcessHandle process) {
        this.process = process;
    }

    /** The server that runs on this data directory, if its own note of its process id is still true. */
    static Optional<OrphanedServer> on(Path dataDirectory) throws IOException {
        Path note = dataDirectory.resolve("postmaster.pid");
        if (!Files.exists(note)) {
            return Optional.empty();
        }
        String firstLine = Files.readString(note).lines().findFirst().orElse("").trim();
        return parsePid(firstLine)
                .flatMap(ProcessHandle::of)
                .filter(process -> servesDirectory(process, dataDirectory))
                .map(OrphanedServer::new);
    }

    void stop() throws IOException {
        LOG.info("Stopping a database server left behind by an earlier run (process {})", process.pid());
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start();
        try {
            process.onExit().get(SECONDS_TO_STOP, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Interrupted while an earlier database server was stopping", e);
        } catch (ExecutionException | TimeoutException e) {
            throw new IOException(
                    "An earlier database server (process " + process.pid() + ") does not stop; stop it by hand", e);
        }
    }

    private static Optional<Long> parsePid(String text) {
        return text.matches("\\d{1,10}") ? Optional.of(Long.valueOf(text)) : Optional.empty();
    }

    /** Process ids are reused: only a postgres that names this very directory counts. */
    private static boolean servesDirectory(ProcessHandle process, Path dataDirectory) {
        ProcessHandle.Info info = process.info();
        boolean isPostgres = info.command().orElse("").endsWith("postgres");
        String[] arguments = info.arguments().orElse(new String[0]);
        for (String argument : arguments) {
            if (isPostgres && argument.equals(dataDirectory.toString())) {
                return true;
            }
        }
        return false;
    }
}
