package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Urgency;

/**
 * What is to be said of one jar. Numbers are null where there is nothing to say; shares: 0.41 is 41 % up.
 *
 * @param ohmic last reading, in the unit of its kind
 * @param changeOnBaseline rise over the baseline; for conductance the rise of its reciprocal
 * @param changeOnMedian rise over the median of the jars that came with it, in the same survey
 * @param robustZ the same in robust standard deviations
 * @param trend of the share of the baseline
 * @param forecast what the forecast says, once it has been joined
 */
public record JarJudgement(
        int position,
        @Nullable String serial,
        LocalDate sittingSince,
        Urgency urgency,
        @Nullable LocalDate readOn,
        @Nullable OhmicKind ohmicKind,
        @Nullable Double ohmic,
        @Nullable Baseline baseline,
        @Nullable Double changeOnBaseline,
        @Nullable Double changeOnMedian,
        @Nullable Double robustZ,
        @Nullable Trend trend,
        @Nullable Double volts,
        @Nullable Double voltsPerCell,
        @Nullable Double voltsOffMedian,
        @Nullable Double celsius,
        List<Reason> reasons,
        @Nullable UnitForecast forecast) {

    public JarJudgement {
        reasons = List.copyOf(reasons);
    }

    /** The same with what the forecast says and asks; it never asks less than before. */
    public JarJudgement with(UnitForecast said, List<Reason> more) {
        List<Reason> all = Verdicts.joined(reasons, more);
        return new JarJudgement(
                position,
                serial,
                sittingSince,
                Verdicts.urgency(all),
                readOn,
                ohmicKind,
                ohmic,
                baseline,
                changeOnBaseline,
                changeOnMedian,
                robustZ,
                trend,
                volts,
                voltsPerCell,
                voltsOffMedian,
                celsius,
                all,
                said);
    }

    static JarJudgement of(JarCase jar, List<Reason> reasons) {
        OhmicEvidence ohmic = jar.ohmic();
        Reading last = ohmic.last();
        return new JarJudgement(
                jar.spell().position(),
                jar.spell().serial(),
                jar.spell().during().from(),
                Verdicts.urgency(reasons),
                last == null ? null : last.takenOn(),
                last == null ? null : last.kind(),
                last == null ? null : Numbers.orNull(last.value()),
                ohmic.baseline() == null ? null : ohmic.baseline().shown(),
                Numbers.orNull(ohmic.rise()),
                Numbers.orNull(ohmic.lotRise()),
                Numbers.orNull(ohmic.z()),
                ohmic.trend(),
                Numbers.orNull(jar.volts().volts()),
                Numbers.orNull(jar.volts().perCell()),
                Numbers.orNull(jar.volts().offMedian()),
                Numbers.orNull(jar.celsius()),
                reasons,
                null);
    }
}
