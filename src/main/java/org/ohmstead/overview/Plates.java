package org.ohmstead.overview;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.StringView;
import org.ohmstead.ledger.SurveyRecord;

/** Who a string is, in a line, and which surveys it has had. */
final class Plates {

    private Plates() {}

    static StringPage.Plate of(StringBlueprint blueprint) {
        StringView string = blueprint.string();
        SiteView site = blueprint.site();
        return new StringPage.Plate(
                string.id(),
                string.name(),
                site.code(),
                site.name(),
                site.areaName(),
                site.timeZone(),
                string.jarTypeCode(),
                build(string, blueprint.jarType()),
                string.tiers(),
                string.inServiceOn(),
                string.retiredOn());
    }

    private static String build(StringView string, JarTypeView type) {
        int tiers = string.tiers().size();
        return Words.counted(string.positions(), "jar") + ", "
                + type.technology().words() + ", "
                + Figures.quantity(type.entry().nominalVolts(), 0, "V") + ", "
                + Figures.quantity(type.entry().ratedAmpereHours(), 0, "Ah")
                + (tiers == 1 ? ", in one tier" : ", in " + Words.number(tiers) + " tiers");
    }

    /** Latest first. */
    static List<StringPage.SurveyLine> surveys(List<SurveyRecord> surveys) {
        List<StringPage.SurveyLine> lines =
                new ArrayList<>(surveys.stream().map(Plates::line).toList());
        Collections.reverse(lines);
        return lines;
    }

    private static StringPage.SurveyLine line(SurveyRecord survey) {
        double[] ohmic = survey.readings().ohmic();
        long read = DoubleStream.of(ohmic).filter(value -> !Double.isNaN(value)).count();
        return new StringPage.SurveyLine(
                survey.id(),
                survey.facts().takenOn(),
                survey.facts().takenBy(),
                survey.facts().instrument(),
                (int) read,
                ohmic.length);
    }
}
