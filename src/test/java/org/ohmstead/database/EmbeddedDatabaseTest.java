package org.ohmstead.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.BeanCreationException;

class EmbeddedDatabaseTest {

    @TempDir(cleanup = CleanupMode.ALWAYS)
    private Path directory;

    @Test
    void whatWasCommittedIsThereAfterTheServiceWasKilled() throws Exception {
        assertThat(runAndDieWithoutWarning(directory)).isEqualTo(137);
        try (EmbeddedDatabase database = EmbeddedDatabase.startIn(directory);
                Connection connection = connect(database, database.password())) {
            assertThat(single(connection, "select count(*) from kept")).isEqualTo("1000");
        }
    }

    @Test
    void aCommitIsOnDiskBeforeItIsAcknowledged() throws SQLException {
        try (EmbeddedDatabase database = EmbeddedDatabase.startIn(directory);
                Connection connection = connect(database, database.password())) {
            for (String setting : List.of("fsync", "synchronous_commit", "full_page_writes")) {
                assertThat(single(connection, "show " + setting)).as(setting).isEqualTo("on");
            }
        }
    }

    @Test
    void onlyOneServiceUsesADirectoryAndOnlyWithThePassword() {
        try (EmbeddedDatabase database = EmbeddedDatabase.startIn(directory)) {
            assertThatThrownBy(() -> EmbeddedDatabase.startIn(directory))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("another running service uses this directory")
                    .satisfies(refused -> assertThat(new DatabaseNotStartedAnalyzer()
                                    .analyze(new BeanCreationException("no database", refused))
                                    .getAction())
                            .startsWith("Stop the other service"));
            assertThatThrownBy(() -> connect(database, "guess")).isInstanceOf(SQLException.class);
        }
    }

    /** Runs {@link Doomed} in a JVM of its own and returns its exit code. */
    private static int runAndDieWithoutWarning(Path directory) throws IOException, InterruptedException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Doomed.class.getName(),
                        directory.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    private static Connection connect(EmbeddedDatabase database, String password) throws SQLException {
        return DriverManager.getConnection(database.jdbcUrl(), database.username(), password);
    }

    private static String single(Connection connection, String sql) throws SQLException {
        try (var statement = connection.createStatement();
                var row = statement.executeQuery(sql)) {
            row.next();
            return row.getString(1);
        }
    }

    /** Commits rows and is gone, as by kill -9: no hook runs, the database server is left behind. */
    static final class Doomed {

        private Doomed() {}

        public static void main(String[] args) throws SQLException {
            EmbeddedDatabase database = EmbeddedDatabase.startIn(Path.of(args[0]));
            try (Connection connection = connect(database, database.password());
                    var statement = connection.createStatement()) {
                statement.execute("create table kept as select generate_series(1, 1000) as n");
                Runtime.getRuntime().halt(137);
            }
        }
    }
}
