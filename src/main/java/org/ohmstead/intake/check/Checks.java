package org.ohmstead.intake.check;

import java.util.List;
import java.util.Optional;
import org.ohmstead.intake.file.SurveySheet;

/** What a good engineer would notice in a survey, in the order of the walk. */
public final class Checks {

    private static final List<Check> ALL = List.of(
            Positions::missing,
            Positions::lastMissing,
            Positions::doubled,
            Positions::foreign,
            Closing::recognised,
            WalkOrder::reversed,
            WalkOrder::skipped,
            WalkOrder::readTwice,
            WalkOrder::swapped,
            WalkOrder::otherString,
            WalkOrder::unseen,
            Likeness::copied,
            Likeness::tooAlike,
            Likeness::scattered,
            Digits::regular,
            Straps::differ,
            Straps::unmeasured,
            UnitSlips::jarThousandfold,
            UnitSlips::jarReciprocal,
            UnitSlips::linkThousandfold,
            UnitSlips::voltsThousandfold,
            OhmicGates::impossible,
            OhmicGates::jumped,
            LinkGates::impossible,
            LinkGates::jumped,
            Volts::negative,
            Volts::tiny,
            Volts::impossible,
            Volts::sumOff,
            Volts::sumFarOff,
            Currents::pastClamp,
            Currents::rippleHigh,
            Temperatures::missing,
            Temperatures::odd,
            Temperatures::farFromBaseline,
            Times::future,
            Times::beforeService,
            Times::outOfOrder,
            Times::sameDay,
            Times::siteTimeDoubtful,
            Comparability::kindChanged,
            Comparability::frequencyChanged,
            Comparability::offFloat,
            Comparability::calibrationPast);

    private Checks() {}

    /**
     * Lays a readable sheet out along its string and looks at it.
     *
     * @throws IllegalArgumentException when the sheet is not readable
     */
    public static CheckedSurvey check(SurveySheet sheet, Expectation expected, Thresholds limits) {
        SurveyUnderCheck survey = SurveyUnderCheck.of(sheet, expected, limits);
        List<Remark> remarks = ALL.stream()
                .map(check -> check.look(survey))
                .flatMap(Optional::stream)
                .toList();
        return new CheckedSurvey(survey.laidOut(), remarks, survey.walk());
    }
}
