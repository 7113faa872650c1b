package org.ohmstead.kernel;

import java.util.List;

/** The input can't be taken as it is; every flaw has a place and a remedy. Nothing was changed. */
public class Refused extends RuntimeException {

    private final transient List<Flaw> flaws;

    public Refused(String message, List<Flaw> flaws) {
        super(message);
        this.flaws = List.copyOf(flaws);
    }

    public Refused(String message) {
        this(message, List.of());
    }

    public List<Flaw> flaws() {
        return flaws;
    }
}
