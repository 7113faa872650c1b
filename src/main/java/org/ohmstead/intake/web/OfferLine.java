package org.ohmstead.intake.web;

import java.util.List;
import java.util.Map;
import org.ohmstead.intake.BenchLine;
import org.ohmstead.intake.MovedPlace;
import org.ohmstead.intake.Offer;
import org.ohmstead.intake.UploadState;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.Severity;

/**
 * One repair with its before and after, as the page shows it.
 *
 * @param fields of the form that makes it
 * @param state what would become of the survey
 * @param gone holding remarks that it answers
 * @param come holding remarks that it raises
 * @param misfit how well it fits afterwards; empty when that is not known
 * @param moved the first places that change
 * @param more how many further ones do
 */
record OfferLine(
        String words,
        Map<String, Object> fields,
        UploadState state,
        List<Remark> gone,
        List<Remark> come,
        String misfit,
        List<Moved> moved,
        int more,
        PatternDrawing drawing) {

    private static final int SHOWN = 12;

    /** Numbers as text; empty where nothing was measured. */
    record Moved(
            String place,
            String ohmic,
            String ohmicThen,
            String expected,
            String volts,
            String voltsThen,
            String link,
            String linkThen) {}

    static OfferLine of(Offer offer, List<BenchLine> lines, StepForm form) {
        List<MovedPlace> moved = offer.moved();
        return new OfferLine(
                offer.words(),
                form.fields(offer.step()),
                offer.after().state(),
                holding(offer.gone()),
                holding(offer.come()),
                BenchTable.percent(offer.after().misfitPercent()),
                moved.stream().limit(SHOWN).map(OfferLine::moved).toList(),
                Math.max(0, moved.size() - SHOWN),
                PatternDrawing.after(lines, moved));
    }

    private static List<Remark> holding(List<Remark> remarks) {
        return remarks.stream()
                .filter(remark -> remark.severity().compareTo(Severity.HOLD) >= 0)
                .toList();
    }

    private static Moved moved(MovedPlace place) {
        return new Moved(
                place.position() == 0 ? "+ terminal" : "" + place.position(),
                BenchTable.ohmic(place.ohmic()),
                BenchTable.ohmic(place.ohmicThen()),
                BenchTable.ohmic(place.expected()),
                BenchTable.ohmic(place.volts()),
                BenchTable.ohmic(place.voltsThen()),
                BenchTable.link(place.linkMicroohms()),
                BenchTable.link(place.linkMicroohmsThen()));
    }
}
