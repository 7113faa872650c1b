package org.ohmstead.replay;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;

/** A string of the register's files, gathering its work and its surveys. */
final class FiledString {
    final String site;
    final String name;
    final ZoneId zone;
    final StringPlan plan;
    final List<JarSpell> spells = new ArrayList<>();
    final List<LinkRemake> remakes = new ArrayList<>();
    final List<SurveyReadings> surveys = new ArrayList<>();

    FiledString(String site, String name, ZoneId zone, StringPlan plan) {
        this.site = site;
        this.name = name;
        this.zone = zone;
        this.plan = plan;
    }

    int[] straps() {
        return plan.links().stream().mapToInt(link -> link.straps()).toArray();
    }

    StringHistory history() {
        return new StringHistory(plan, spells, remakes, surveys);
    }
}
