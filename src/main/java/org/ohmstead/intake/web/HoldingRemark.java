package org.ohmstead.intake.web;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.Bench;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.Severity;
import org.ohmstead.intake.file.ColumnKind;

/**
 * A remark that holds the survey, with the repairs that answer it.
 *
 * @param single which kind of single value it asks about; null when about none
 * @param position of that value; 0 when it is not known
 * @param cell whether it asks about a cell that could not be read
 * @param elsewhere the form further down that answers it: "string", "time"; empty when there is none
 */
record HoldingRemark(
        Remark remark,
        List<OfferLine> offers,
        @Nullable ColumnKind single,
        int position,
        boolean cell,
        String elsewhere) {

    private static final Pattern NUMBER = Pattern.compile("\\d+");

    static List<HoldingRemark> of(Bench bench, StepForm form) {
        return bench.now().remarks().stream()
                .filter(remark -> remark.severity().compareTo(Severity.HOLD) >= 0)
                .map(remark -> of(remark, bench, form))
                .toList();
    }

    /** What is said beside: it holds nothing. */
    static List<Remark> others(Bench bench) {
        return bench.now().remarks().stream()
                .filter(remark -> remark.severity().compareTo(Severity.HOLD) < 0)
                .toList();
    }

    private static HoldingRemark of(Remark remark, Bench bench, StepForm form) {
        List<OfferLine> offers = bench.offers().stream()
                .filter(offer -> offer.because() == remark.code() && answers(offer.gone(), remark))
                .map(offer -> OfferLine.of(offer, bench.lines(), form))
                .toList();
        ColumnKind single = single(remark);
        return new HoldingRemark(
                remark,
                offers,
                single,
                single == null ? 0 : position(remark),
                remark.code().name().equals("VALUE_LOST") && remark.place().line() > 0,
                elsewhere(remark));
    }

    /** Of several alike, each has its own repairs; what leaves the remark as it is is no repair of it. */
    private static boolean answers(List<Remark> gone, Remark remark) {
        return gone.contains(remark);
    }

    private static @Nullable ColumnKind single(Remark remark) {
        return switch (remark.code()) {
            case POSITION_MISSING, LAST_JAR_MISSING, OHMIC_IMPOSSIBLE -> ColumnKind.JAR_OHMIC;
            case VOLTS_NEGATIVE, VOLTS_TINY, VOLTS_IMPOSSIBLE -> ColumnKind.JAR_VOLTS;
            case LINK_IMPOSSIBLE, STRAPS_DIFFER -> ColumnKind.LINK;
            default -> null;
        };
    }

    private static String elsewhere(Remark remark) {
        return switch (remark.code()) {
            case STRING_UNKNOWN, STRING_NOT_NAMED, STRING_NOT_AS_CLAIMED -> "string";
            case TIME_FUTURE, TIME_BEFORE_SERVICE -> "time";
            default -> "";
        };
    }

    private static int position(Remark remark) {
        Matcher number = NUMBER.matcher(remark.place().words());
        return number.find() ? Integer.parseInt(number.group()) : 0;
    }
}
