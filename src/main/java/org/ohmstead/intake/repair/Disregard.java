package org.ohmstead.intake.repair;

import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/** A cell that could not be read is left out knowingly: what it said counts as not measured. */
public record Disregard(int line, int column) implements Step {

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        SurveySheet others = Rows.without(sheet, line, column);
        if (others.findings().size() == sheet.findings().size()) {
            throw new Refused("In line " + line + ", column " + column + " nothing stands that could not be read.");
        }
        return others;
    }

    @Override
    public String words() {
        return "Do without the cell in line " + line + ", column " + column;
    }

    @Override
    public boolean needsJudgement() {
        return true;
    }
}
