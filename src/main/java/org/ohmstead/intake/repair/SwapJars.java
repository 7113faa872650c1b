package org.ohmstead.intake.repair;

import java.util.List;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/** The readings of two jars stand at each other's places; the links between posts stay where they are. */
public record SwapJars(int one, int other) implements Step {

    public SwapJars {
        if (one == other) {
            throw new Refused("A jar can't change places with itself: name two.");
        }
    }

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        ground.requireJar(one);
        ground.requireJar(other);
        ReadingRow first = rowOf(one, sheet);
        ReadingRow second = rowOf(other, sheet);
        List<ReadingRow> swapped = sheet.rows().stream()
                .map(row -> row == first ? put(second, first) : row == second ? put(first, second) : row)
                .toList();
        return Rows.with(sheet, swapped);
    }

    @Override
    public String words() {
        return "Let jars " + one + " and " + other + " change places";
    }

    private static ReadingRow put(ReadingRow jar, ReadingRow place) {
        return Rows.joined(Rows.at(jar, place.position()), place.linkMicroohms());
    }

    private static ReadingRow rowOf(int position, SurveySheet sheet) {
        return sheet.rows().stream()
                .filter(row -> row.position() == position)
                .findFirst()
                .orElseThrow(() -> new Refused("The sheet has no row for jar " + position + "."));
    }
}
