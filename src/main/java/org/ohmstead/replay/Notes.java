package org.ohmstead.replay;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.ohmstead.kernel.Flaw;

/** Tells what could not be read, with file and line, and how far the work has come; counts what was left out. */
final class Notes {
    private static final int LISTED_PER_FILE = 10;

    private final PrintStream out;
    private final Map<Path, Integer> listed = new HashMap<>();
    private int skipped;
    private int lost;

    Notes(PrintStream out) {
        this.out = out;
    }

    /** A file, a sheet or a row that is left out. */
    void skip(Path file, Flaw flaw) {
        skipped++;
        tell("skipped", file, flaw);
    }

    /** A single value that is left out. */
    void lose(Path file, Flaw flaw) {
        lost++;
        tell("value left out", file, flaw);
    }

    private void tell(String what, Path file, Flaw flaw) {
        int count = listed.merge(file, 1, Integer::sum);
        if (count <= LISTED_PER_FILE) {
            out.println(what + ": " + file + ": " + flaw);
        } else if (count == LISTED_PER_FILE + 1) {
            out.println("more was left out of " + file + "; it is counted at the end");
        }
    }

    void say(String sentence) {
        out.println(sentence);
    }

    /** Tells after each tenth of the work. */
    void progress(String what, int done, int all) {
        if (10L * done / all > 10L * (done - 1) / all) {
            out.println(what + ": " + done + " of " + all);
        }
    }

    int skipped() {
        return skipped;
    }

    int lost() {
        return lost;
    }
}
