package org.ohmstead.worklist.model;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.LinkName;

/**
 * What work is about.
 *
 * @param unit position of a jar, ordinal of a link
 * @param requirement code of a duty's requirement
 */
public record Subject(
        Kind kind, @Nullable Integer unit, @Nullable String requirement) {

    /** What kind of thing. */
    public enum Kind {
        STRING,
        JAR,
        LINK,
        DUTY
    }

    public static final Subject STRING = new Subject(Kind.STRING, null, null);

    public Subject {
        boolean ofUnit = kind == Kind.JAR || kind == Kind.LINK;
        if (ofUnit != (unit != null) || (kind == Kind.DUTY) != (requirement != null)) {
            throw new IllegalArgumentException("A " + kind + " is not named by " + unit + ", " + requirement);
        }
    }

    public static Subject jar(int position) {
        return new Subject(Kind.JAR, position, null);
    }

    public static Subject link(int ordinal) {
        return new Subject(Kind.LINK, ordinal, null);
    }

    public static Subject duty(String requirement) {
        return new Subject(Kind.DUTY, null, requirement);
    }

    /**
     * As people say it: "jar 7", "link 8|9", "positive terminal link", "the string", "terminal resistance".
     *
     * @param positions of the string
     */
    public String words(int positions) {
        return switch (kind) {
            case STRING -> "the string";
            case JAR -> "jar " + unit;
            case LINK -> unit == null ? "link" : LinkName.of(unit, positions);
            case DUTY -> String.valueOf(requirement).replace('-', ' ');
        };
    }
}
