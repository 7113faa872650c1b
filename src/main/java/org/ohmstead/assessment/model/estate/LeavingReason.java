package org.ohmstead.assessment.model.estate;

import java.util.Locale;
import java.util.regex.Pattern;
import org.ohmstead.assessment.model.estate.Stay.End;

/**
 * Reads from the register's own words why a jar left. The written rule: words of another reason come first, then words of
 * a condition; without either, a jar that left with most of its string was renewed, one that left alone had failed.
 */
public final class LeavingReason {

    private static final Pattern ELSEWHERE =
            beginning("moved|lent|borrow|swap|spare|project|rebuil|extension|closed|stolen"
                    + "|mistake|wrong|whole string|string renewed|planned renewal|upgrade|sold|retired|decommission");

    private static final Pattern CONDITION =
            beginning("fail|short|open|ohmic|impedance|resistance|conductance|capacity|leak"
                    + "|crack|dry|dried|sulph|sulf|corro|low volt|volts|swoll|swell|bulg|worn|wear|defect|faulty|damage|weak|dead"
                    + "|hot|condition|post|burn|test");

    private LeavingReason() {}

    /** @param withMostOfItsString whether more than half of the string's jars left on the same day */
    public static End of(String words, boolean withMostOfItsString) {
        String said = words.toLowerCase(Locale.ROOT);
        if (ELSEWHERE.matcher(said).find()) {
            return End.TAKEN_OUT;
        }
        if (CONDITION.matcher(said).find()) {
            return End.FAILED;
        }
        return withMostOfItsString || !said.isBlank() ? End.TAKEN_OUT : End.UNEXPLAINED;
    }

    /** Words that begin so. */
    private static Pattern beginning(String words) {
        return Pattern.compile("\\b(" + words + ")");
    }
}
