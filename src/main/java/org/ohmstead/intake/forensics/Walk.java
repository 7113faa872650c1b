package org.ohmstead.intake.forensics;

/**
 * A way the string may have been walked: which jar the n-th line of readings really came from.
 *
 * @param kind what went wrong, if anything
 * @param at the jar from which on the lines are off: the one skipped, the one read twice, the first of a swapped pair; 0
 *     when the walk concerns the whole string
 * @param with the other jar of a swapped pair, else 0
 * @param jars how many jars the string has
 */
public record Walk(Kind kind, int at, int with, int jars) {

    /** The shapes a walk can take. */
    public enum Kind {
        IN_ORDER,
        FROM_THE_OTHER_END,
        SKIPPED,
        READ_TWICE,
        SWAPPED
    }

    public static Walk inOrder(int jars) {
        return new Walk(Kind.IN_ORDER, 0, 0, jars);
    }

    public static Walk fromTheOtherEnd(int jars) {
        return new Walk(Kind.FROM_THE_OTHER_END, 0, 0, jars);
    }

    /** That jar was left out, and the lines from there on stand one too early. */
    public static Walk skipping(int jar, int jars) {
        return new Walk(Kind.SKIPPED, jar, 0, jars);
    }

    /** That jar was read twice, and the lines after it stand one too late. */
    public static Walk readingTwice(int jar, int jars) {
        return new Walk(Kind.READ_TWICE, jar, 0, jars);
    }

    public static Walk swapping(int one, int other, int jars) {
        return new Walk(Kind.SWAPPED, one, other, jars);
    }

    /**
     * The jar that line n (counted from 1) came from. After a skipped jar the lines run out one early: a last line, if
     * there is one, is the last jar read again.
     */
    public int jarOf(int line) {
        return switch (kind) {
            case IN_ORDER -> line;
            case FROM_THE_OTHER_END -> jars + 1 - line;
            case SKIPPED -> line < at ? line : Math.min(line + 1, jars);
            case READ_TWICE -> line <= at ? line : line - 1;
            case SWAPPED -> line == at ? with : line == with ? at : line;
        };
    }

    /** The link whose value stands in that line: a line holds a jar and the link after it, line 0 a link alone. */
    public int linkOf(int line) {
        return switch (kind) {
            case FROM_THE_OTHER_END -> jars - line;
            case SKIPPED, READ_TWICE -> line == 0 ? 0 : jarOf(line);
            case IN_ORDER, SWAPPED -> line;
        };
    }

    int placeOf(Series.Places places, int index) {
        return places == Series.Places.JARS ? jarOf(index + 1) - 1 : linkOf(index);
    }
}
