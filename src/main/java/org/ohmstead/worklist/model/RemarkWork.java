package org.ohmstead.worklist.model;

import static java.util.Map.entry;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.kernel.Urgency;

/** Which remarks on a survey that was accepted all the same mean that the string must be read again, and in how many days. */
public final class RemarkWork {

    private static final int SOON = 30;
    private static final int IN_A_QUARTER = 90;

    private static final Map<RemarkCode, Integer> DAYS = Map.ofEntries(
            entry(RemarkCode.COPIED, SOON),
            entry(RemarkCode.COPIED_ALIKE, SOON),
            entry(RemarkCode.ORDER_REVERSED, SOON),
            entry(RemarkCode.ORDER_SKIPPED, SOON),
            entry(RemarkCode.ORDER_READ_TWICE, SOON),
            entry(RemarkCode.ORDER_SWAPPED, SOON),
            entry(RemarkCode.ORDER_OTHER_STRING, SOON),
            entry(RemarkCode.POSITION_DOUBLED, SOON),
            entry(RemarkCode.OHMIC_IMPOSSIBLE, SOON),
            entry(RemarkCode.LINK_IMPOSSIBLE, SOON),
            entry(RemarkCode.VOLTS_NEGATIVE, SOON),
            entry(RemarkCode.VOLTS_TINY, SOON),
            entry(RemarkCode.VOLTS_SUM_FAR_OFF, SOON),
            entry(RemarkCode.LINKS_UNMEASURED, IN_A_QUARTER),
            entry(RemarkCode.CURRENT_PAST_CLAMP, IN_A_QUARTER),
            entry(RemarkCode.OFF_FLOAT, IN_A_QUARTER),
            entry(RemarkCode.SCATTER_HIGH, IN_A_QUARTER),
            entry(RemarkCode.OHMIC_KIND_CHANGED, IN_A_QUARTER));

    private RemarkWork() {}

    /** The remarks that ask for another reading. */
    public static Set<RemarkCode> codes() {
        return DAYS.keySet();
    }

    /**
     * @param place as people say it; empty for the whole survey
     * @throws IllegalArgumentException when such a remark asks for no reading
     */
    public static Want of(RemarkCode code, String place, LocalDate surveyedOn) {
        Integer days = DAYS.get(code);
        if (days == null) {
            throw new IllegalArgumentException(code + " asks for no reading");
        }
        String where = place.isBlank() ? "" : " (" + place + ")";
        return new Want(
                new WorkKey(WorkKind.MEASURE_AGAIN, Subject.STRING),
                null,
                Urgency.RECHECK,
                surveyedOn.plusDays(days),
                "The survey of " + surveyedOn + " was accepted with a remark" + where + ": " + code.message(),
                Source.REMARK,
                true);
    }
}
