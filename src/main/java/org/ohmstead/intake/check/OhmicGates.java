package org.ohmstead.intake.check;

import java.util.Optional;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.kernel.OhmicKind;

/** Single ohmic values that cannot be, or that are far from the same jar's last one. */
final class OhmicGates {

    private OhmicGates() {}

    /**
     * Gates of healthy 2 V lead-acid cells, widened: a product of ohmic value and capacity far outside 0.06 to 0.3 Ω·Ah (from
     * memory, medium to low confidence). Nickel-cadmium has no such gate; there only zero and less are impossible.
     */
    static Optional<Remark> impossible(SurveyUnderCheck survey) {
        if (UnitSlips.isOhmicSlipped(survey)) {
            return Optional.empty();
        }
        double least = least(survey);
        double most = most(survey);
        double[] ohmic = survey.laidOut().ohmic();
        int[] positions = survey.positionsWhere(i -> ohmic[i] <= 0 || ohmic[i] < least || ohmic[i] > most);
        String unit = survey.kind().unit();
        return remark(survey, positions, RemarkCode.OHMIC_IMPOSSIBLE, between(least, most, unit));
    }

    static Optional<Remark> jumped(SurveyUnderCheck survey) {
        EarlierSurvey last = survey.expected().last();
        if (last == null || last.kind() != survey.kind() || UnitSlips.isOhmicSlipped(survey)) {
            return Optional.empty();
        }
        double[] before = last.ohmic();
        double[] ohmic = survey.laidOut().ohmic();
        double factor = survey.limits().jarJumpFactor();
        int[] positions = survey.positionsWhere(i -> i < before.length && isJump(ohmic[i], before[i], factor));
        return positions.length == 0
                ? Optional.empty()
                : remark(
                        survey,
                        positions,
                        RemarkCode.OHMIC_JUMPED,
                        "last time "
                                + Figures.of(
                                        before[positions[0] - 1], survey.kind().unit()));
    }

    static boolean isJump(double value, double before, double factor) {
        return value > 0 && before > 0 && (value > before * factor || value < before / factor);
    }

    private static Optional<Remark> remark(SurveyUnderCheck survey, int[] positions, RemarkCode code, String expected) {
        if (positions.length == 0) {
            return Optional.empty();
        }
        double first = survey.laidOut().ohmic()[positions[0] - 1];
        String seen = Figures.of(first, survey.kind().unit()) + (positions.length > 1 ? " at the first" : "");
        return Optional.of(Remark.of(code, survey.jars(positions, ColumnKind.JAR_OHMIC), seen, expected));
    }

    private static String between(double least, double most, String unit) {
        return Double.isNaN(least) ? "above 0 " + unit : Figures.of(least, unit) + " to " + Figures.of(most, unit);
    }

    private static double least(SurveyUnderCheck survey) {
        return Math.min(gateBelow(survey), gateAbove(survey));
    }

    private static double most(SurveyUnderCheck survey) {
        return Math.max(gateBelow(survey), gateAbove(survey));
    }

    private static double gateBelow(SurveyUnderCheck survey) {
        Thresholds limits = survey.limits();
        return gate(survey, limits.gateLowOhmAmpereHours() / limits.gateMarginBelow());
    }

    private static double gateAbove(SurveyUnderCheck survey) {
        Thresholds limits = survey.limits();
        return gate(survey, limits.gateHighOhmAmpereHours() * limits.gateMarginAbove());
    }

    private static double gate(SurveyUnderCheck survey, double ohmAmpereHours) {
        OhmicKind kind = survey.kind();
        return Levels.ofProduct(ohmAmpereHours, survey.expected().jar(), kind);
    }
}
