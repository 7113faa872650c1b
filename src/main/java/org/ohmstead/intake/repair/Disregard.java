package org.ohmstead.intake.repair;

import org.ohmstead.intake.file.SurveySheet;

/** A cell that could not be read is left out knowingly: what it said counts as not measured. */
public record Disregard(int line, int column) implements Step {

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        return Rows.without(sheet, line, column);
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
