package org.ohmstead.reports;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.RemarkView;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.springframework.stereotype.Component;

/** What was read in one survey, beside the comparable one before, and what was noticed when it came in. */
@Component
class SurveyReport implements ReportMaker {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final Intake intake;

    SurveyReport(FleetRegister register, SurveyLedger ledger, Intake intake) {
        this.register = register;
        this.ledger = ledger;
        this.intake = intake;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.SURVEY;
    }

    @Override
    public MadeReport make(ReportWish wish) {
        SurveyRecord survey = ledger.survey(wish.requireSubject());
        StringBlueprint blueprint = register.blueprint(survey.facts().stringId());
        SurveyRecord before = before(survey);
        List<RemarkView> remarks = remarks(survey.uploadId());
        Report report = new Report(
                "Survey " + survey.id() + " of " + blueprint.string().title(),
                survey.facts().takenOn(),
                facts(survey, before, blueprint),
                List.of(
                        SurveyTables.remarks(remarks, survey.uploadId() != null),
                        SurveyTables.jars(survey, before),
                        SurveyTables.links(survey, before)),
                Phrases.NO_PROOF);
        String name = "survey-" + survey.id() + "-" + blueprint.string().siteCode() + "-"
                + blueprint.string().name().replaceAll("[^A-Za-z0-9]+", "_") + "-"
                + survey.facts().takenOn() + "-" + Scene.zoneWord(List.of(blueprint.site()));
        return new MadeReport(report, "Jars", name);
    }

    /** The last standing one of the same ohmic kind that was taken before. */
    private @Nullable SurveyRecord before(SurveyRecord survey) {
        SurveyRecord before = null;
        for (SurveyRecord other : ledger.surveysOf(survey.facts().stringId())) {
            boolean earlier = other.facts().takenAt().isBefore(survey.facts().takenAt());
            boolean comparable = other.facts().ohmicKind() == survey.facts().ohmicKind()
                    && other.readings().positions() == survey.readings().positions();
            before = earlier && comparable ? other : before;
        }
        return before;
    }

    private List<RemarkView> remarks(@Nullable UUID upload) {
        return upload == null ? List.of() : intake.upload(upload).remarks();
    }

    private static List<Fact> facts(SurveyRecord survey, @Nullable SurveyRecord before, StringBlueprint blueprint) {
        SurveyFacts facts = survey.facts();
        ZoneId zone = blueprint.site().timeZone();
        List<Fact> said = new ArrayList<>(List.of(
                new Fact(
                        "Site",
                        blueprint.site().name() + " (" + blueprint.site().code() + "), area "
                                + blueprint.site().areaCode()),
                new Fact("Taken", TIME.format(facts.takenAt().atZone(zone)) + ", by the clock of " + zone.getId()),
                new Fact("Taken by", facts.takenBy().isEmpty() ? "not recorded" : facts.takenBy()),
                new Fact("Instrument", instrument(facts)),
                new Fact(
                        "Read",
                        facts.ohmicKind().words() + " in " + facts.ohmicKind().unit()
                                + (Double.isNaN(facts.ohmicHertz()) ? "" : " at " + number(facts.ohmicHertz()) + " Hz")
                                + (facts.onFloat() ? ", on float" : ", OFF FLOAT: compare with care")),
                new Fact("Whole string", whole(facts)),
                new Fact(
                        "Beside",
                        before == null
                                ? "no comparable survey before"
                                : "survey " + before.id() + " of "
                                        + before.facts().takenOn()),
                new Fact("Recorded", recorded(survey)),
                new Fact("Fingerprint of the file", fingerprint(survey.rawSha256()))));
        if (!facts.note().isEmpty()) {
            said.add(new Fact("Note", facts.note()));
        }
        return said;
    }

    private static String recorded(SurveyRecord survey) {
        String by =
                survey.recordedAt().truncatedTo(java.time.temporal.ChronoUnit.SECONDS) + " by " + survey.recordedBy();
        return survey.withdrawal() == null
                ? by
                : by + ". WITHDRAWN since: " + survey.withdrawal().reason();
    }

    private static String fingerprint(byte @Nullable [] sha256) {
        return sha256 == null
                ? "loaded as history, no file"
                : "SHA-256 " + HexFormat.of().formatHex(sha256);
    }

    private static String instrument(SurveyFacts facts) {
        String due = facts.calibrationDue() == null ? "" : ", calibration due " + facts.calibrationDue();
        return facts.instrument() == null ? "not recorded" : facts.instrument() + due;
    }

    private static String whole(SurveyFacts facts) {
        List<String> parts = new ArrayList<>();
        add(parts, facts.stringVolts(), " V");
        add(parts, facts.floatAmps(), " A float");
        add(parts, facts.rippleAmps(), " A ripple");
        add(parts, facts.rippleVolts(), " V ripple");
        add(parts, facts.injectedAmps(), " A injected");
        add(parts, facts.clampedAmps(), " A clamped");
        add(parts, facts.ambientCelsius(), " °C ambient");
        return parts.isEmpty() ? "nothing was recorded" : String.join(", ", parts);
    }

    private static void add(List<String> parts, double value, String unit) {
        if (!Double.isNaN(value)) {
            parts.add(number(value) + unit);
        }
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }
}
