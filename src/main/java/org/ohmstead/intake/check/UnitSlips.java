package org.ohmstead.intake.check;

import java.util.Optional;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.statistics.Quantiles;

/** A whole column in the wrong unit: milli for micro, or siemens for ohms. */
final class UnitSlips {

    private static final double THOUSAND = 1_000;

    private UnitSlips() {}

    static Optional<Remark> jarThousandfold(SurveyUnderCheck survey) {
        return thousandfold(
                survey,
                new Column(
                        "all jars",
                        ColumnKind.JAR_OHMIC,
                        survey.kind().unit(),
                        medianOhmic(survey),
                        Levels.ohmic(survey)));
    }

    /** Ohms in milliohms and siemens of the same jar multiply to a thousand; that is not a conversion, only a suspicion. */
    static Optional<Remark> jarReciprocal(SurveyUnderCheck survey) {
        double seen = medianOhmic(survey);
        double expected = Levels.ohmic(survey);
        double factor = survey.limits().slipFactor();
        boolean reciprocal = isNear(seen * expected, THOUSAND, factor) && !isNear(seen, expected, factor);
        if (!reciprocal || jarThousandfold(survey).isPresent()) {
            return Optional.empty();
        }
        Place place = survey.place("all jars", survey.sheet().line(), 0);
        String unit = survey.kind().unit();
        String other = survey.kind() == OhmicKind.CONDUCTANCE ? "mΩ" : "S";
        return Optional.of(Remark.of(
                RemarkCode.RECIPROCAL_SLIP,
                place,
                "median " + Figures.of(seen, unit) + ", likely " + other,
                "about " + Figures.of(expected, unit)));
    }

    static Optional<Remark> linkThousandfold(SurveyUnderCheck survey) {
        double seen = Levels.medianLink(survey.laidOut().linkMicroohms());
        return thousandfold(survey, new Column("all links", ColumnKind.LINK, "µΩ", seen, Levels.linkMicroohms(survey)));
    }

    static Optional<Remark> voltsThousandfold(SurveyUnderCheck survey) {
        double seen = Quantiles.median(survey.laidOut().volts());
        return thousandfold(survey, new Column("all jars", ColumnKind.JAR_VOLTS, "V", seen, Volts.nominal(survey)));
    }

    /** Whether the ohmic column as a whole is in doubt, so that its single values need not be. */
    static boolean isOhmicSlipped(SurveyUnderCheck survey) {
        return jarThousandfold(survey).isPresent() || jarReciprocal(survey).isPresent();
    }

    private static double medianOhmic(SurveyUnderCheck survey) {
        return Quantiles.median(survey.laidOut().ohmic());
    }

    private static Optional<Remark> thousandfold(SurveyUnderCheck survey, Column column) {
        double factor = survey.limits().slipFactor();
        boolean slipped = isNear(column.seen, column.expected * THOUSAND, factor)
                || isNear(column.seen * THOUSAND, column.expected, factor);
        return slipped ? Optional.of(slip(survey, column)) : Optional.empty();
    }

    private static Remark slip(SurveyUnderCheck survey, Column column) {
        Place place =
                survey.place(column.words, survey.sheet().line(), survey.sheet().columnOf(column.kind));
        return Remark.of(
                RemarkCode.UNIT_SLIP,
                place,
                "median " + Figures.of(column.seen, column.unit),
                "about " + Figures.of(column.expected, column.unit));
    }

    private static boolean isNear(double value, double target, double factor) {
        return value > target / factor && value < target * factor;
    }

    private record Column(String words, ColumnKind kind, String unit, double seen, double expected) {}
}
