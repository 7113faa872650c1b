package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Baseline.Origin;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

/**
 * What is to be said of one link. Numbers are null where there is nothing to say; resistances in microohms; shares: 0.2
 * is 20 % up.
 *
 * @param madeOn since when the joint is as it is
 * @param combinedMicroohms from post to post, straps in parallel
 * @param conductorMicroohms the cable's own share by the conductor tables; null for straps and unknown cables
 * @param netMicroohms what is left for the joints; zero or less when the cable dominates
 * @param baseline the first net reading since the joint was made; null while there is no later one
 * @param changeOnKind against the average of its kind in the same survey
 */
public record LinkJudgement(
        int ordinal,
        LinkKind kind,
        LocalDate madeOn,
        Urgency urgency,
        @Nullable LocalDate readOn,
        @Nullable Double combinedMicroohms,
        @Nullable Double conductorMicroohms,
        @Nullable Double netMicroohms,
        boolean cableDominates,
        @Nullable Baseline baseline,
        @Nullable Double changeOnBaseline,
        @Nullable Double kindAverageMicroohms,
        @Nullable Double changeOnKind,
        @Nullable Trend trend,
        @Nullable Double dropMillivolts,
        @Nullable Double heatWatts,
        List<Reason> reasons,
        @Nullable UnitForecast forecast) {

    public LinkJudgement {
        reasons = List.copyOf(reasons);
    }

    /** The same with what the forecast says and asks; it never asks less than before. */
    public LinkJudgement with(UnitForecast said, List<Reason> more) {
        List<Reason> all = Verdicts.joined(reasons, more);
        return new LinkJudgement(
                ordinal,
                kind,
                madeOn,
                Verdicts.urgency(all),
                readOn,
                combinedMicroohms,
                conductorMicroohms,
                netMicroohms,
                cableDominates,
                baseline,
                changeOnBaseline,
                kindAverageMicroohms,
                changeOnKind,
                trend,
                dropMillivolts,
                heatWatts,
                all,
                said);
    }

    static LinkJudgement of(LinkCase link, List<Reason> reasons) {
        LinkReading last = link.last();
        return new LinkJudgement(
                link.joint().link().ordinal(),
                link.joint().link().kind(),
                link.joint().madeOn(),
                Verdicts.urgency(reasons),
                last == null ? null : last.takenOn(),
                last == null ? null : Numbers.orNull(last.combined()),
                last == null || !link.isCable() ? null : Numbers.orNull(last.conductor()),
                last == null ? null : Numbers.orNull(last.net()),
                last != null && last.cableDominates(),
                baseline(link),
                Numbers.orNull(link.rise()),
                Numbers.orNull(link.average()),
                Numbers.orNull(link.kindRise()),
                link.trend(),
                Numbers.orNull(link.dropMillivolts()),
                Numbers.orNull(link.heatWatts()),
                reasons,
                null);
    }

    private static @Nullable Baseline baseline(LinkCase link) {
        LinkReading first = link.first();
        return first == null || link.count() < 2
                ? null
                : new Baseline(first.net(), Origin.FIRST_READING, first.takenOn());
    }
}
