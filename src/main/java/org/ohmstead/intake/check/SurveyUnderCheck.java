package org.ohmstead.intake.check;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.file.TakenAt;
import org.ohmstead.kernel.OhmicKind;

/** A readable sheet beside what is known of its string. */
record SurveyUnderCheck(
        SurveySheet sheet, TakenAt takenAt, OhmicKind kind, LaidOut laidOut, Expectation expected, Thresholds limits) {

    /** @throws IllegalArgumentException when the sheet is not readable */
    static SurveyUnderCheck of(SurveySheet sheet, Expectation expected, Thresholds limits) {
        TakenAt takenAt = sheet.facts().takenAt();
        OhmicKind kind = sheet.facts().ohmicKind();
        if (takenAt == null || kind == null) {
            throw new IllegalArgumentException("Only a readable sheet can be checked");
        }
        LaidOut laidOut = LaidOut.of(sheet.rows(), expected.straps(), limits);
        return new SurveyUnderCheck(sheet, takenAt, kind, laidOut, expected, limits);
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
