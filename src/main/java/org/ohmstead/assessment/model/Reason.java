package org.ohmstead.assessment.model;

import org.ohmstead.kernel.Urgency;

/**
 * Why a jar, link or string asks what it asks.
 *
 * @param rule which rule spoke
 * @param asks what the rule asks for; {@code CLEAR} is a note that asks nothing
 * @param words what was seen, with its numbers
 * @param wouldChange what would make the rule say something else
 * @param recheckDays within how many days someone should read again; 0 when nobody need
 */
public record Reason(Rule rule, Urgency asks, String words, String wouldChange, int recheckDays) {

    /** Something worth knowing that asks nothing. */
    public static Reason note(Rule rule, String words, String wouldChange) {
        return new Reason(rule, Urgency.CLEAR, words, wouldChange, 0);
    }

    /** A finding that asks for work, or for a second reading before anyone works. */
    public static Reason asking(Rule rule, Urgency asks, String words, String wouldChange, Limits limits) {
        int days = switch (asks) {
            case ACT -> limits.countOf(Limit.RECHECK_SOON);
            case RECHECK -> limits.countOf(Limit.RECHECK);
            case PLAN, CLEAR -> 0;
        };
        return new Reason(rule, asks, words, wouldChange, days);
    }

    /** The same, to be read again soon. */
    Reason soon(Limits limits) {
        return new Reason(rule, asks, words, wouldChange, limits.countOf(Limit.RECHECK_SOON));
    }

    Reason soonIf(boolean sharp, Limits limits) {
        return sharp ? soon(limits) : this;
    }
}
