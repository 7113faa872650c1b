package org.ohmstead.assessment.model;

import java.util.List;

/**
 * Everything a judgement may look at, in order of time.
 *
 * @param surveys oldest first; never two with the same id
 */
public record StringHistory(
        StringPlan plan, List<JarSpell> spells, List<LinkRemake> remakes, List<SurveyReadings> surveys) {

    public StringHistory {
        spells = List.copyOf(spells);
        remakes = List.copyOf(remakes);
        surveys = List.copyOf(surveys);
    }

    public StringHistory with(StringPlan other) {
        return new StringHistory(other, spells, remakes, surveys);
    }
}
