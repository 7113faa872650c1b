package org.ohmstead.assessment.model.prospect;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.assessment.model.forecast.DataDoubt;
import org.ohmstead.assessment.model.forecast.UnitForecast;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

/**
 * What the forecast says of a unit, told as a sentence: {@code Said.of(7).withRisk(0.3).stepped().done()}. Unless told
 * otherwise a settled unit of ten readings of which nothing is to be feared. Judgements by the rules stand beside it.
 */
public final class Said {

    static final LocalDate DAY = LocalDate.parse("2026-11-20");

    private final int number;
    private final Set<DataDoubt> doubts = EnumSet.noneOf(DataDoubt.class);
    private double risk = 0.01;
    private double beyondLimit;
    private double rise;
    private double shorted;
    private double pending = Double.NaN;
    private int readings = 10;
    private boolean steps;
    private @Nullable LocalDate renewed;

    private Said(int number) {
        this.number = number;
    }

    public static Said of(int number) {
        return new Said(number);
    }

    public Said withRisk(double chance) {
        risk = chance;
        return this;
    }

    public Said beyondLimit(double chance) {
        beyondLimit = chance;
        return this;
    }

    public Said risenBy(double share) {
        rise = share;
        return this;
    }

    Said shorted(double chance) {
        shorted = chance;
        return this;
    }

    Said setAside(double logarithmic) {
        pending = logarithmic;
        return this;
    }

    public Said afterReadings(int count) {
        readings = count;
        return this;
    }

    Said stepped() {
        steps = true;
        return this;
    }

    Said likeNew() {
        renewed = DAY;
        return this;
    }

    Said doubted(DataDoubt doubt) {
        doubts.add(doubt);
        return this;
    }

    public UnitForecast done() {
        return new UnitForecast(
                number,
                risk,
                risk,
                risk >= 0.2,
                beyondLimit,
                DAY.plusYears(2),
                DAY.plusYears(3),
                DAY.plusYears(5),
                rise,
                0.01,
                0,
                shorted,
                pending,
                renewed,
                steps,
                readings,
                doubts);
    }

    static JarJudgement jar(
            int position,
            @Nullable Double onBaseline,
            @Nullable Double onMedian,
            @Nullable Double voltsOffMedian,
            Reason... reasons) {
        return new JarJudgement(
                position,
                null,
                DAY.minusYears(6),
                Urgency.CLEAR,
                DAY,
                null,
                null,
                null,
                onBaseline,
                onMedian,
                null,
                null,
                null,
                null,
                voltsOffMedian,
                null,
                List.of(reasons),
                null);
    }

    static LinkJudgement link(int ordinal, @Nullable Double onBaseline, Reason... reasons) {
        return new LinkJudgement(
                ordinal,
                LinkKind.STRAP,
                DAY.minusYears(6),
                Urgency.CLEAR,
                DAY,
                null,
                null,
                null,
                false,
                null,
                onBaseline,
                null,
                null,
                null,
                null,
                null,
                List.of(reasons),
                null);
    }

    static Reason asks(Rule rule) {
        return new Reason(rule, Urgency.PLAN, "Seen.", "Seen no more.", 0);
    }

    static Reason notes(Rule rule) {
        return Reason.note(rule, "Seen.", "Seen no more.");
    }
}
