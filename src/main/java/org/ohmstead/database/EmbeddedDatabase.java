package org.ohmstead.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * A real PostgreSQL server on a directory of its own, started and stopped with the service. Durable: a commit is on
 * disk before it is acknowledged. Listens on the loopback address only and asks for a password that is made at the
 * first start and kept beside the data, readable by the owner alone.
 */
public final class EmbeddedDatabase implements AutoCloseable {

    private static final String ONLY_LOOPBACK_WITH_PASSWORD = """
            host all all 127.0.0.1/32 scram-sha-256
            host all all ::1/128 scram-sha-256
            """;

    private final FileChannel lockFile;
    private final EmbeddedPostgres server;
    private final String password;

    private EmbeddedDatabase(FileChannel lockFile, EmbeddedPostgres server, String password) {
        this.lockFile = lockFile;
        this.server = server;
        this.password = password;
    }

    /**
     * Starts the server on that directory, making it where there is none.
     *
     * @throws DatabaseNotStarted when it cannot, or another running service has the directory
     */
    public static EmbeddedDatabase startIn(Path directory) {
        Path home = directory.toAbsolutePath().normalize();
        try {
            Files.createDirectories(home);
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwx------"));
            FileChannel lockFile = lock(home);
            String password = password(home);
            return new EmbeddedDatabase(lockFile, start(home, password), password);
        } catch (IOException | IllegalStateException e) {
            throw new DatabaseNotStarted(home, e);
        }
    }

    public String jdbcUrl() {
        return "jdbc:postgresql://localhost:" + server.getPort() + "/postgres";
    }

    public String username() {
        return "postgres";
    }

    public String password() {
        return password;
    }

    @Override
    public void close() {
        try (lockFile) {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException("The database could not be stopped", e);
        }
    }

    private static EmbeddedPostgres start(Path home, String password) throws IOException {
        Path data = home.resolve("data");
        var orphan = OrphanedServer.on(data);
        if (orphan.isPresent()) {
            orphan.get().stop();
        }
        return EmbeddedPostgres.builder()
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setOverrideWorkingDirectory(home.resolve("server").toFile())
                .setRegisterShutdownHook(false)
                .setPGStartupWait(Duration.ofSeconds(60))
                .setLocaleConfig("locale", "C")
                .setLocaleConfig("locale-provider", "builtin")
                .setLocaleConfig("builtin-locale", "C.UTF-8")
                .setLocaleConfig("pwfile", home.resolve("password").toString())
                .setConnectConfig("password", password)
                .setDataDirectoryCustomizer(EmbeddedDatabase::closeToStrangers)
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("max_connections", "100")
                .setServerConfig("listen_addresses", "localhost")
                .setServerConfig("unix_socket_directories", "")
                .setServerConfig("max_wal_size", "2GB")
                .start();
    }

    private static void closeToStrangers(java.io.File data) {
        try {
            Files.writeString(data.toPath().resolve("pg_hba.conf"), ONLY_LOOPBACK_WITH_PASSWORD);
        } catch (IOException e) {
            throw new UncheckedIOException("The database's access list could not be written", e);
        }
    }

    /** Held as long as the service runs, so that a second one does not take the first one's server for an orphan. */
    private static FileChannel lock(Path home) throws IOException {
        FileChannel channel =
                FileChannel.open(home.resolve("in-use"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = tryLock(channel);
        if (lock == null) {
            channel.close();
            throw new DirectoryInUse();
        }
        return channel;
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private static String password(Path home) throws IOException {
        Path file = home.resolve("password");
        if (!Files.exists(file)) {
            byte[] secret = new byte[24];
            new SecureRandom().nextBytes(secret);
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            Files.writeString(file, HexFormat.of().formatHex(secret), StandardCharsets.US_ASCII);
        }
        return Files.readString(file, StandardCharsets.US_ASCII).trim();
    }
}
