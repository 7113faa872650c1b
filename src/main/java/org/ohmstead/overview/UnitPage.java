package org.ohmstead.overview;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.kernel.Urgency;

/**
 * The life of one jar or link.
 *
 * @param unit of the values: mΩ, S or µΩ
 * @param before address of the neighbour towards the positive end
 */
public record UnitPage(
        StringPage.Plate plate,
        String title,
        Urgency urgency,
        String unit,
        List<StringPage.Fact> facts,
        List<Why> reasons,
        List<Spell> spells,
        List<Reading> readings,
        @Nullable Double baseline,
        @Nullable String before,
        @Nullable String after,
        @Nullable Prospect prospect,
        @Nullable OverruleView overruled) {

    /** A stretch of its life: a jar that sat here, or a joint as it was made. */
    public record Spell(
            String words, LocalDate from, @Nullable LocalDate until, String note) {}

    /** @param volts null for links */
    public record Reading(
            long surveyId,
            LocalDate takenOn,
            @Nullable Double value,
            @Nullable Double change,
            @Nullable Double volts,
            @Nullable Double celsius) {}

    /** What the engine asks, whatever people decided. */
    public Urgency byEngine() {
        return reasons.stream().map(Why::asks).reduce(Urgency.CLEAR, Urgency::or);
    }
}
