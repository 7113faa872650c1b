package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.assessment.StringStanding;
import org.ohmstead.assessment.model.Baseline;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;
import org.springframework.stereotype.Component;

/** Jars that ask for action or a plan while their jar type's warranty runs, with what shows it. */
@Component
class WarrantyReport implements ReportMaker {

    private static final int MONTHS_PER_YEAR = 12;
    private static final Set<Urgency> FAILING = Set.of(Urgency.ACT, Urgency.PLAN);

    private final Scene scene;
    private final FleetRegister register;
    private final Assessments assessments;
    private final Overruling overruling;

    WarrantyReport(Scene scene, FleetRegister register, Assessments assessments, Overruling overruling) {
        this.scene = scene;
        this.register = register;
        this.assessments = assessments;
        this.overruling = overruling;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.WARRANTY;
    }

    /** A failing jar and until when its warranty runs. */
    private record Claim(
            StringView string,
            String area,
            OccupancyView jar,
            LocalDate until,
            Urgency urgency,
            JarJudgement judgement,
            @Nullable Long surveyId) {}

    @Override
    public MadeReport make(ReportWish wish) {
        Scene.Scope scope = scene.of(wish.area());
        Map<String, JarTypeView> types =
                register.jarTypes().stream().collect(Collectors.toMap(JarTypeView::code, type -> type));
        List<Claim> claims = claims(scope, types);
        long without = types.values().stream()
                .filter(type -> type.entry().warrantyYears() == null && type.retiredOn() == null)
                .count();
        Report report = new Report(
                kind().title() + (wish.area() == null ? "" : " of area " + wish.area()),
                scope.asOf(),
                List.of(
                        scope.scopeFact(),
                        new Fact("As of", scope.asOf().toString()),
                        scope.zoneFact(),
                        new Fact("Jars", String.valueOf(claims.size())),
                        new Fact(
                                "Counted",
                                "the jar type's warranty years from the day the jar was placed; compare with the"
                                        + " contract, which may count from delivery"),
                        new Fact("Jar types without warranty years in the register", String.valueOf(without))),
                List.of(section(claims)),
                Phrases.NO_PROOF + " A claim rests on the maker's own criteria; this list says where to look.");
        return new MadeReport(report, "Jars", scope.fileName(kind()));
    }

    private List<Claim> claims(Scene.Scope scope, Map<String, JarTypeView> types) {
        Set<Long> pressing = assessments.standings().stream()
                .filter(standing -> FAILING.contains(standing.urgency()))
                .map(StringStanding::stringId)
                .collect(Collectors.toSet());
        List<StringView> strings = scope.strings().stream()
                .filter(string -> pressing.contains(string.id()))
                .toList();
        Map<Long, StringBlueprint> blueprints =
                register.blueprints(strings.stream().map(StringView::id).toList());
        List<Claim> claims = new ArrayList<>();
        for (StringView string : strings) {
            StringBlueprint blueprint = Objects.requireNonNull(blueprints.get(string.id()));
            assessments
                    .find(string.id())
                    .ifPresent(view -> claims.addAll(claims(scope, blueprint, view.judgement(), types)));
        }
        claims.sort(Comparator.comparing(Claim::area)
                .thenComparing(claim -> claim.string().title())
                .thenComparing(claim -> claim.jar().position()));
        return claims;
    }

    private List<Claim> claims(
            Scene.Scope scope, StringBlueprint blueprint, StringJudgement judgement, Map<String, JarTypeView> types) {
        LocalDate today = scene.today(blueprint.site());
        Asked asked = overruling.asked(judgement);
        List<Claim> claims = new ArrayList<>();
        for (JarJudgement jar : judgement.jars()) {
            Urgency urgency = asked.urgency(jar);
            OccupancyView sits = sitting(blueprint, jar.position(), today);
            LocalDate until = sits == null ? null : until(sits, types);
            if (FAILING.contains(urgency) && sits != null && until != null && !today.isAfter(until)) {
                claims.add(new Claim(
                        blueprint.string(),
                        scope.site(blueprint.string()).areaCode(),
                        sits,
                        until,
                        urgency,
                        jar,
                        judgement.surveyId()));
            }
        }
        return claims;
    }

    private static @Nullable OccupancyView sitting(StringBlueprint blueprint, int position, LocalDate today) {
        return blueprint.occupancies().stream()
                .filter(one -> one.position() == position && one.during().contains(today))
                .findFirst()
                .orElse(null);
    }

    /** The last day under warranty; null when the register knows of none. */
    private static @Nullable LocalDate until(OccupancyView jar, Map<String, JarTypeView> types) {
        JarTypeView type = types.get(jar.jarTypeCode());
        Double years = type == null ? null : type.entry().warrantyYears();
        return years == null
                ? null
                : jar.during()
                        .from()
                        .plusMonths(Math.round(years * MONTHS_PER_YEAR))
                        .minusDays(1);
    }

    private static Section section(List<Claim> claims) {
        return new Section(
                "Jars",
                claims.isEmpty()
                        ? "None: no jar under warranty asks for action or a plan."
                        : "Jars that ask for action or a plan while their warranty runs, with what shows it.",
                List.of(
                        Column.words("Area", 11),
                        Column.words("String", 12),
                        Column.number("Position", 10),
                        Column.words("Serial", 12),
                        Column.words("Jar type", 13),
                        Column.words("Placed", 10),
                        Column.words("Warranty until", 10),
                        Column.words("Urgency", 8),
                        Column.words("Read on", 10),
                        Column.number("Survey", 9),
                        Column.number("Ohmic value", 8),
                        Column.words("Unit", 5),
                        Column.number("Baseline", 10),
                        Column.number("Over baseline %", 10),
                        Column.number("Chance of failing within a year %", 10),
                        Column.words("What shows it", 40)),
                claims.stream().map(WarrantyReport::row).toList());
    }

    private static List<Cell> row(Claim claim) {
        JarJudgement jar = claim.judgement();
        Baseline baseline = jar.baseline();
        return List.of(
                Cell.of(claim.area()),
                Cell.of(claim.string().title()),
                Cell.of(jar.position()),
                Cell.of(claim.jar().serial()),
                Cell.of(claim.jar().jarTypeCode()),
                Cell.of(claim.jar().during().from()),
                Cell.of(claim.until()),
                Cell.of(claim.urgency().word()),
                Cell.of(jar.readOn()),
                claim.surveyId() == null ? Cell.NONE : Cell.of(claim.surveyId()),
                Cell.of(jar.ohmic(), 3),
                Cell.of(jar.ohmicKind() == null ? "" : jar.ohmicKind().unit()),
                Cell.of(baseline == null ? null : baseline.value(), 3),
                Phrases.percent(jar.changeOnBaseline(), 0),
                jar.forecast() == null
                        ? Cell.NONE
                        : Phrases.percent(jar.forecast().chanceWithinYear(), 0),
                Cell.of(Phrases.asked(jar.reasons())));
    }
}
