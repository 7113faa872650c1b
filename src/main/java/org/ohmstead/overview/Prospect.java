package org.ohmstead.overview;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Trouble;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.assessment.model.prospect.ChanceWords;

/**
 * What the forecast says of a jar or link, for people.
 *
 * @param chance of failing within twelve months: "1 in 5" for jars, "unlikely" for links
 * @param when its limit is passed, meant to hold four times in five; null for links, whose dates cannot be trusted
 * @param early null beyond the horizon, and for links
 * @param riseOverNew expected, 0.12 is 12 %
 * @param trouble what the pattern suggests, null when nothing does
 * @param pattern what suggests it
 */
public record Prospect(
        LocalDate asOf,
        String chance,
        @Nullable String when,
        double risk,
        @Nullable LocalDate early,
        @Nullable LocalDate middle,
        @Nullable LocalDate late,
        double riseOverNew,
        double ratePerYear,
        @Nullable String trouble,
        @Nullable String pattern) {

    static @Nullable Prospect ofJar(@Nullable UnitForecast said, LocalDate asOf) {
        return said == null
                ? null
                : of(said, asOf, ChanceWords.of(said.risk()), ChanceWords.range(asOf, said.early(), said.late()));
    }

    static @Nullable Prospect ofLink(@Nullable UnitForecast said, LocalDate asOf) {
        return said == null ? null : of(said, asOf, ChanceWords.coarse(said.risk()), null);
    }

    private static Prospect of(UnitForecast said, LocalDate asOf, String chance, @Nullable String when) {
        Trouble trouble = said.trouble();
        return new Prospect(
                asOf,
                chance,
                when,
                said.risk(),
                said.early(),
                said.middle(),
                said.late(),
                said.riseOverNew(),
                said.ratePerYear(),
                trouble == null ? null : trouble.words(),
                trouble == null ? null : trouble.pattern());
    }
}
