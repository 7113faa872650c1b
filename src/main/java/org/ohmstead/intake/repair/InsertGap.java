package org.ohmstead.intake.repair;

import java.util.List;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;

/**
 * A jar was left out: its place stays empty, and every row from there on belongs to the next jar, together with its link. A
 * row that gets past the end had been read a second time to fill the count; it is left out.
 */
public record InsertGap(int position) implements Step {

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        ground.requireJar(position);
        Walked walked = Walked.of(sheet, ground);
        List<ReadingRow> moved = walked.rows().stream()
                .map(row -> row.position() < position ? row : Rows.at(row, row.position() + 1))
                .filter(row -> row.position() <= ground.positions() || !row.hasJarValue())
                .toList();
        return walked.movedTo(moved, sheet);
    }

    @Override
    public String words() {
        return "Leave a gap at jar " + position + ", which was left out, and move the rows after it up by one";
    }
}
