package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.ohmstead.intake.file.ColumnKind;

/** Jar voltages one by one, and their sum against the string's. */
final class Volts {

    private static final double LEAD_ACID_VOLTS = 2.0;
    private static final double NICKEL_CADMIUM_VOLTS = 1.2;

    private Volts() {}

    static Optional<Remark> negative(SurveyUnderCheck survey) {
        double tiny = jarVolts(survey, survey.limits().tinyVoltsPerCell());
        return where(survey, volts -> volts < -tiny, RemarkCode.VOLTS_NEGATIVE, "above 0 V");
    }

    static Optional<Remark> tiny(SurveyUnderCheck survey) {
        double tiny = jarVolts(survey, survey.limits().tinyVoltsPerCell());
        String expected = "about " + Figures.of(nominal(survey), "V");
        return where(survey, volts -> Math.abs(volts) <= tiny, RemarkCode.VOLTS_TINY, expected);
    }

    static Optional<Remark> impossible(SurveyUnderCheck survey) {
        double ceiling = jarVolts(survey, survey.limits().ceilingVoltsPerCell());
        if (UnitSlips.voltsThousandfold(survey).isPresent()) {
            return Optional.empty();
        }
        return where(
                survey, volts -> volts > ceiling, RemarkCode.VOLTS_IMPOSSIBLE, "at most " + Figures.of(ceiling, "V"));
    }

    static Optional<Remark> sumOff(SurveyUnderCheck survey) {
        double share = Math.abs(shareOff(survey));
        Thresholds limits = survey.limits();
        return share > limits.voltsSumDoubt() && share <= limits.voltsSumHold()
                ? Optional.of(sum(survey, RemarkCode.VOLTS_SUM_OFF))
                : Optional.empty();
    }

    static Optional<Remark> sumFarOff(SurveyUnderCheck survey) {
        return Math.abs(shareOff(survey)) > survey.limits().voltsSumHold()
                ? Optional.of(sum(survey, RemarkCode.VOLTS_SUM_FAR_OFF))
                : Optional.empty();
    }

    /** Of a whole jar. */
    static double nominal(SurveyUnderCheck survey) {
        ExpectedJar jar = survey.expected().jar();
        return jar.cellsPerJar() * (jar.technology().isLeadAcid() ? LEAD_ACID_VOLTS : NICKEL_CADMIUM_VOLTS);
    }

    /** NaN unless every jar's voltage and the string's were measured. */
    private static double shareOff(SurveyUnderCheck survey) {
        double string = survey.facts().stringVolts();
        return string > 0 ? (sumOf(survey) - string) / string : Double.NaN;
    }

    private static double sumOf(SurveyUnderCheck survey) {
        return Arrays.stream(survey.laidOut().volts()).sum();
    }

    private static Remark sum(SurveyUnderCheck survey, RemarkCode code) {
        return Remark.of(
                code,
                survey.fact("string volts"),
                "jars add up to " + Figures.of(sumOf(survey), "V") + " (" + Figures.percent(shareOff(survey)) + ")",
                Figures.of(survey.facts().stringVolts(), "V"));
    }

    private static double jarVolts(SurveyUnderCheck survey, double voltsPerCell) {
        return voltsPerCell * survey.expected().jar().cellsPerJar();
    }

    private static Optional<Remark> where(
            SurveyUnderCheck survey, DoublePredicate condition, RemarkCode code, String expected) {
        double[] volts = survey.laidOut().volts();
        int[] positions = survey.positionsWhere(index -> condition.test(volts[index]));
        if (positions.length == 0) {
            return Optional.empty();
        }
        String seen = Figures.of(volts[positions[0] - 1], "V") + (positions.length > 1 ? " at the first" : "");
        return Optional.of(Remark.of(code, survey.jars(positions, ColumnKind.JAR_VOLTS), seen, expected));
    }
}
