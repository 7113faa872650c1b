package org.ohmstead.intake.check;

import java.util.List;
import java.util.Optional;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.file.ReadingRow;

/** Skipped jars, double triggers, rows beyond the end. */
final class Positions {

    private Positions() {}

    static Optional<Remark> missing(SurveyUnderCheck survey) {
        int[] missing = unmeasured(survey);
        if (missing.length == 0 || isOnlyTheLast(missing, survey)) {
            return Optional.empty();
        }
        int measured = survey.laidOut().positions() - missing.length;
        return Optional.of(Remark.of(
                RemarkCode.POSITION_MISSING,
                survey.jars(missing, ColumnKind.JAR_OHMIC),
                Words.count(measured, "jar") + " measured",
                Words.count(survey.laidOut().positions(), "jar")));
    }

    static Optional<Remark> lastMissing(SurveyUnderCheck survey) {
        int[] missing = unmeasured(survey);
        if (!isOnlyTheLast(missing, survey)) {
            return Optional.empty();
        }
        int positions = survey.laidOut().positions();
        return Optional.of(Remark.of(
                RemarkCode.LAST_JAR_MISSING,
                survey.jars(missing, ColumnKind.JAR_OHMIC),
                "jars up to " + (positions - 1),
                Words.count(positions, "jar")));
    }

    static Optional<Remark> doubled(SurveyUnderCheck survey) {
        return extra(survey, survey.laidOut().doubled(), RemarkCode.POSITION_DOUBLED);
    }

    static Optional<Remark> foreign(SurveyUnderCheck survey) {
        return extra(survey, survey.laidOut().foreign(), RemarkCode.POSITION_FOREIGN);
    }

    private static int[] unmeasured(SurveyUnderCheck survey) {
        double[] ohmic = survey.laidOut().ohmic();
        return survey.positionsWhere(index -> Double.isNaN(ohmic[index]));
    }

    /** Had the string one jar only, nothing would be left to tell a skipped reading from a survey not taken. */
    private static boolean isOnlyTheLast(int[] missing, SurveyUnderCheck survey) {
        int positions = survey.laidOut().positions();
        return missing.length == 1 && missing[0] == positions && positions > 1;
    }

    private static Optional<Remark> extra(SurveyUnderCheck survey, List<ReadingRow> rows, RemarkCode code) {
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        int[] positions =
                rows.stream().mapToInt(ReadingRow::position).sorted().distinct().toArray();
        Place place = survey.place(
                Words.counted("position", positions),
                rows.get(0).line(),
                survey.sheet().columnOf(ColumnKind.POSITION));
        String expected = "each position once, 1 to " + survey.laidOut().positions();
        return Optional.of(Remark.of(code, place, Words.count(rows.size(), "row") + " too many", expected));
    }
}
