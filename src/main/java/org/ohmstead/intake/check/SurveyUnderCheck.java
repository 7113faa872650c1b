package org.ohmstead.intake.check;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.file.TakenAt;
import org.ohmstead.intake.forensics.WalkVerdict;
import org.ohmstead.kernel.OhmicKind;

/**
 * A readable sheet beside what is known of its string.
 *
 * @param walk how the string was walked; null where there is nothing to weigh it by
 */
record SurveyUnderCheck(
        SurveySheet sheet,
        TakenAt takenAt,
        OhmicKind kind,
        LaidOut laidOut,
        Expectation expected,
        Thresholds limits,
        @Nullable WalkVerdict walk) {

    /** @throws IllegalArgumentException when the sheet is not readable */
    static SurveyUnderCheck of(SurveySheet sheet, Expectation expected, Thresholds limits) {
        TakenAt takenAt = sheet.facts().takenAt();
        OhmicKind kind = sheet.facts().ohmicKind();
        if (takenAt == null || kind == null) {
            throw new IllegalArgumentException("Only a readable sheet can be checked");
        }
        LaidOut laidOut = LaidOut.of(sheet.rows(), expected.straps(), limits);
        WalkVerdict walk =
                WalkHistory.verdict(laidOut, kind, expected, limits.forensics().fewestJars());
        return new SurveyUnderCheck(sheet, takenAt, kind, laidOut, expected, limits, walk);
    }

    /** The last surveys that measured the same kind of value, oldest first. */
    List<EarlierSurvey> sameKind() {
        return expected.recent().stream()
                .filter(earlier -> earlier.kind() == kind)
                .toList();
    }

    SheetFacts facts() {
        return sheet.facts();
    }

    /** Positions 1..N that fulfil a condition on their index 0..N-1. */
    int[] positionsWhere(IntPredicate indexCondition) {
        return IntStream.range(0, laidOut.positions())
                .filter(indexCondition)
                .map(index -> index + 1)
                .toArray();
    }

    Place jars(int[] positions, ColumnKind kind) {
        return place(Words.counted("jar", positions), laidOut.lines()[positions[0]], sheet.columnOf(kind));
    }

    Place links(int[] ordinals) {
        return place(Words.counted("link", ordinals), laidOut.lines()[ordinals[0]], linkColumn());
    }

    /** Where a fact is given in the file; its value stands in the second column. */
    Place fact(String key) {
        return place(key, sheet.lineOfFact(key), 2);
    }

    Place place(String words, int line, int column) {
        return new Place(words, line, line == 0 ? 0 : column);
    }

    int linkColumn() {
        return sheet.columnOf(ColumnKind.LINK);
    }
}
