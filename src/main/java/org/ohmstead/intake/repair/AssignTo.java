package org.ohmstead.intake.repair;

import java.util.List;
import java.util.Optional;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/** Another string was measured than the sheet says. The last word on it counts, before the rows are moved. */
public record AssignTo(String site, String string) implements Step {

    public AssignTo {
        site = site == null ? "" : site.strip();
        string = string == null ? "" : string.strip();
        if (site.isEmpty() || string.isEmpty()) {
            throw new Refused("Name the string by its site's code and its own name.");
        }
    }

    public static Optional<AssignTo> lastOf(List<Step> steps) {
        return steps.stream()
                .filter(AssignTo.class::isInstance)
                .map(AssignTo.class::cast)
                .reduce((first, second) -> second);
    }

    @Override
    public SurveySheet on(SurveySheet sheet, Ground ground) {
        return sheet;
    }

    @Override
    public String words() {
        return "It is a survey of " + site + " / " + string;
    }
}
