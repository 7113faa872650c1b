package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.AssessmentView;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.programme.NextDateView;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.StringDuties;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.ohmstead.reports.render.Section;
import org.springframework.stereotype.Component;

/** All that is known of one string: as built, what it asks and why, jars, links, surveys, changes, duties. */
@Component
class StringReport implements ReportMaker {

    private final Scene scene;
    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final Assessments assessments;
    private final Overruling overruling;
    private final Programme programme;

    StringReport(
            Scene scene,
            FleetRegister register,
            SurveyLedger ledger,
            Assessments assessments,
            Overruling overruling,
            Programme programme) {
        this.scene = scene;
        this.register = register;
        this.ledger = ledger;
        this.assessments = assessments;
        this.overruling = overruling;
        this.programme = programme;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.STRING;
    }

    @Override
    public MadeReport make(ReportWish wish) {
        long id = wish.requireSubject();
        StringBlueprint blueprint = register.blueprint(id);
        LocalDate today = scene.today(blueprint.site());
        Optional<AssessmentView> assessment = assessments.find(id);
        List<Section> sections = new ArrayList<>();
        List<Fact> facts = facts(blueprint, today);
        if (assessment.isPresent()) {
            StringJudgement judgement = assessment.get().judgement();
            Asked asked = overruling.asked(judgement);
            facts.add(new Fact("Asks", asked.urgency().word() + " as of " + judgement.asOf()));
            String headline = asked.inForce().isEmpty()
                    ? judgement.headline()
                    : asked.headline(judgement.urgency(), judgement.headline());
            facts.add(new Fact("In short", headline));
            StringJudgementTables tables = new StringJudgementTables(blueprint, judgement, asked);
            sections.addAll(List.of(tables.reasons(), tables.shortlist(), tables.jars(), tables.links()));
        }
        programme.findNextDate(id).ifPresent(next -> facts.add(next(next)));
        StringDuties duties = programme.duties(id, null);
        sections.add(StringHistoryTables.surveys(ledger.allSurveysOf(id)));
        sections.add(StringHistoryTables.changes(blueprint));
        sections.add(StringHistoryTables.duties(duties));
        Report report = new Report("String " + blueprint.string().title(), today, facts, sections, Phrases.NO_PROOF);
        String name = "string-" + blueprint.string().siteCode() + "-"
                + blueprint.string().name().replaceAll("[^A-Za-z0-9]+", "_") + "-" + today + "-"
                + Scene.zoneWord(List.of(blueprint.site()));
        return new MadeReport(report, assessment.isPresent() ? "Jars" : "Surveys", name);
    }

    private static Fact next(NextDateView next) {
        return new Fact("Next survey or visit", next.dueOn() + ". " + next.reason());
    }

    private static List<Fact> facts(StringBlueprint blueprint, LocalDate today) {
        StringEntry string = blueprint.string().entry();
        String type = blueprint.jarType().code() + ", "
                + blueprint.jarType().technology().words() + ", "
                + plain(blueprint.jarType().entry().ratedAmpereHours()) + " Ah at "
                + plain(blueprint.jarType().entry().ratedHours()) + " h";
        String tiers = string.tiers().size() + (string.tiers().size() == 1 ? " tier" : " tiers") + " of "
                + String.join(", ", string.tiers().stream().map(String::valueOf).toList());
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact(
                        "Site",
                        blueprint.site().name() + " (" + blueprint.site().code() + "), area "
                                + blueprint.site().areaCode()),
                new Fact("As of", today.toString()),
                Scene.zoneFact(List.of(blueprint.site())),
                new Fact(
                        "Built", string.positions() + " jars, " + tiers + ", in service since " + string.inServiceOn()),
                new Fact("Jar type", type)));
        if (string.floatSetpointVoltsPerCell() != null) {
            facts.add(new Fact(
                    "Charger set to",
                    String.format(Locale.ROOT, "%.3f V per cell at 25 °C", string.floatSetpointVoltsPerCell())));
        }
        if (string.designLoadAmps() != null) {
            facts.add(new Fact(
                    "Design duty",
                    plain(string.designLoadAmps()) + " A"
                            + (string.designMinutes() == null ? "" : " for " + plain(string.designMinutes()) + " min")
                            + (string.endVolts() == null ? "" : " down to " + plain(string.endVolts()) + " V")));
        }
        return facts;
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }
}
