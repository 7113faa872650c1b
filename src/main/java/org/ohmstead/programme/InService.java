package org.ohmstead.programme;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.StringAssessed;
import org.ohmstead.programme.rules.NextDates;

/** What the programme needs to know of a string, with what its assessment said last. */
record InService(
        long stringId,
        long areaId,
        ZoneId timeZone,
        LocalDate inServiceOn,
        @Nullable LocalDate retiredOn,
        int surveyIntervalMonths,
        @Nullable LocalDate surveyedOn,
        @Nullable LocalDate recheckBy,
        @Nullable LocalDate riskOn,
        NextDates.@Nullable Demand demand) {

    InService assessed(StringAssessed news) {
        return new InService(
                stringId,
                areaId,
                timeZone,
                inServiceOn,
                retiredOn,
                surveyIntervalMonths,
                news.surveyedOn(),
                news.recheckBy(),
                news.riskOn(),
                demand);
    }

    NextDates.Survey survey() {
        return new NextDates.Survey(inServiceOn, surveyedOn, surveyIntervalMonths, recheckBy, riskOn);
    }

    boolean isRetiredBy(LocalDate day) {
        return retiredOn != null && !retiredOn.isAfter(day);
    }
}
