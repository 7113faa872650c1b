package org.ohmstead.intake.repair;

import java.util.ArrayList;
import java.util.List;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;

/** The walk began at the other end: jar k was jar N + 1 − k, and link k was link N − k. */
public record Reverse() implements Step {

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        Walked walked = Walked.of(sheet, ground);
        List<ReadingRow> jars = new ArrayList<>();
        List<ReadingRow> links = new ArrayList<>();
        int positions = ground.positions();
        for (ReadingRow row : walked.rows()) {
            if (row.position() > positions) {
                jars.add(row);
                continue;
            }
            if (row.position() > 0 || row.hasJarValue()) {
                int mirrored = row.position() == 0 ? 0 : positions + 1 - row.position();
                jars.add(Rows.jarOnly(row, mirrored));
            }
            if (Rows.hasLink(row)) {
                links.add(Rows.linkOnly(row, positions - row.position()));
            }
        }
        return walked.movedTo(Walked.joined(jars, links), sheet);
    }

    @Override
    public String words() {
        return "Turn the walk round: it began at the other end";
    }
}
