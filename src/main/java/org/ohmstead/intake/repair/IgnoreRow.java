package org.ohmstead.intake.repair;

import java.util.List;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/** One row of the file is left out, and nothing else moves: a double trigger, or a row beyond the end of the string. */
public record IgnoreRow(int line) implements Step {

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        List<ReadingRow> others =
                sheet.rows().stream().filter(row -> row.line() != line).toList();
        if (others.size() == sheet.rows().size()) {
            throw new Refused("No row of readings stands in line " + line + ".");
        }
        return Rows.with(sheet, others);
    }

    @Override
    public String words() {
        return "Leave out the row in line " + line;
    }
}
