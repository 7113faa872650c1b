package org.ohmstead.intake.repair;

import java.util.List;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;

/** A row is a jar read once too often: it is left out with its link, and every row after it moves back by one. */
public record LeaveOut(int position) implements Step {

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        ground.requireJar(position);
        Walked walked = Walked.of(sheet, ground);
        List<ReadingRow> moved = walked.rows().stream()
                .filter(row -> row.position() != position)
                .map(row -> row.position() < position ? row : Rows.at(row, row.position() - 1))
                .toList();
        return walked.movedTo(moved, sheet);
    }

    @Override
    public String words() {
        return "Take out row " + position + ", which is jar " + (position - 1)
                + " read a second time, and move the rows after it back by one";
    }
}
