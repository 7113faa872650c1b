package org.ohmstead.kernel;

import java.util.List;

/** The good rows of an input together with what was wrong with the others. */
public record Partial<T>(List<T> rows, List<Flaw> flaws) {

    public Partial {
        rows = List.copyOf(rows);
        flaws = List.copyOf(flaws);
    }

    public boolean isFlawless() {
        return flaws.isEmpty();
    }
}
