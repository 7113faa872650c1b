package org.ohmstead.assessment.model;

/**
 * Kinds of trouble that a pattern of readings suggests. A suggestion of where to look, never a finding: {@code
 * docs/assessment.md} has the table of patterns and where each row comes from.
 */
public enum Trouble {
    REPLACED_UNRECORDED("work without record", "it reads like new since the last survey; was it replaced or remade?"),
    MISREAD("a misread value", "the last reading lies far off its history; read it again before anything else"),
    SHORTED_CELL("a shorted cell", "volts low while the ohmic value has not risen"),
    HEATING("heating", "warmer than its neighbours; mind heat and gas before touching it"),
    POST("a post of the jar", "both links at one jar have risen: look at the jar's posts, not only at the joints"),
    OPENING("an opening inner connection", "the ohmic value stepped up and stayed there with volts not low"),
    WORN_TOGETHER("wear of the whole string", "it has risen no more than the others did"),
    DRY_OUT("drying out", "a gradual rise beyond the string with volts normal, in a valve-regulated jar"),
    WEAR("corrosion or loss of active material", "a gradual rise beyond the string with volts normal"),
    LOOSENED("a loosened joint", "the resistance stepped up and stayed there"),
    CORRODING("a corroding joint", "the resistance rises bit by bit over its own first reading"),
    BADLY_MADE("a joint that was never well made", "over its like from the first reading on");

    private final String words;
    private final String pattern;

    Trouble(String words, String pattern) {
        this.words = words;
        this.pattern = pattern;
    }

    public String words() {
        return words;
    }

    /** What was seen that suggests it. */
    public String pattern() {
        return pattern;
    }
}
