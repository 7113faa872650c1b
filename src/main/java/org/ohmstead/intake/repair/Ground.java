package org.ohmstead.intake.repair;

import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.check.Thresholds;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/**
 * The string that a survey is put right for.
 *
 * @param straps registered straps per link, ordinals 0..N
 */
public record Ground(int[] straps) {

    public int positions() {
        return straps.length - 1;
    }

    @Nullable
    ReadingRow closingOf(SurveySheet sheet) {
        return LaidOut.of(sheet.rows(), straps, Thresholds.defaults()).closing();
    }

    void requireJar(int position) {
        if (position < 1 || position > positions()) {
            throw new Refused("The string has jars 1 to " + positions() + "; there is no jar " + position + ".");
        }
    }
}
