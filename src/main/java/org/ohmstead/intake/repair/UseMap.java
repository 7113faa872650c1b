package org.ohmstead.intake.repair;

import java.util.List;
import java.util.Optional;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/** The file is read by another column map. The last word on it counts, before the rows are moved. */
public record UseMap(String name, int version) implements Step {

    public UseMap {
        if (name == null || name.isBlank() || version < 1) {
            throw new Refused("Name the column map and its version.");
        }
    }

    public static Optional<UseMap> lastOf(List<Step> steps) {
        return steps.stream()
                .filter(UseMap.class::isInstance)
                .map(UseMap.class::cast)
                .reduce((first, second) -> second);
    }

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        return sheet;
    }

    @Override
    public String words() {
        return "Read the file by the column map " + name + ", version " + version;
    }
}
