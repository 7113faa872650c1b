package org.ohmstead.database;

import java.nio.file.Path;

/** The embedded server could not be started. */
final class DatabaseNotStarted extends IllegalStateException {

    private static final long serialVersionUID = 1;

    DatabaseNotStarted(Path home, Exception cause) {
        super("The database in " + home + " could not be started: " + cause.getMessage() + ".", cause);
    }

    /** What a person can do about it. */
    String remedy() {
        return getCause() instanceof DirectoryInUse
                ? "Stop the other service, or give this one a directory of its own in OHMSTEAD_DATABASE_DIRECTORY."
                : "As root this needs the command \"unshare\" with user namespaces allowed; otherwise run the service as an"
                        + " ordinary user, or name another PostgreSQL server in SPRING_DATASOURCE_URL.";
    }
}
