package org.ohmstead.database;

import java.io.IOException;

/** Another running service has the directory; taking its server for an orphan would break it. */
final class DirectoryInUse extends IOException {

    private static final long serialVersionUID = 1;

    DirectoryInUse() {
        super("another running service uses this directory");
    }
}
