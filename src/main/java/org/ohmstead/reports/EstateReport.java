package org.ohmstead.reports;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.StringStanding;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.NextDateView;
import org.ohmstead.programme.Programme;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;
import org.springframework.stereotype.Component;

/** How every string stands, the most urgent first, and when it is due. */
@Component
class EstateReport implements ReportMaker {

    private static final List<Urgency> MOST_FIRST = List.of(Urgency.ACT, Urgency.PLAN, Urgency.RECHECK, Urgency.CLEAR);

    private final Scene scene;
    private final Assessments assessments;
    private final Programme programme;

    EstateReport(Scene scene, Assessments assessments, Programme programme) {
        this.scene = scene;
        this.assessments = assessments;
        this.programme = programme;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.ESTATE;
    }

    private record Line(
            StringView string,
            String area,
            @Nullable StringStanding standing,
            @Nullable NextDateView next) {

        /** Never judged comes last. */
        int rank() {
            return standing == null ? MOST_FIRST.size() : MOST_FIRST.indexOf(standing.urgency());
        }
    }

    @Override
    public MadeReport make(ReportWish wish) {
        Scene.Scope scope = scene.of(wish.area());
        List<Line> lines = lines(scope);
        Report report = new Report(
                kind().title() + (wish.area() == null ? "" : " of area " + wish.area()),
                scope.asOf(),
                List.of(
                        scope.scopeFact(),
                        new Fact("As of", scope.asOf().toString()),
                        scope.zoneFact(),
                        new Fact("Strings in service", lines.size() + ": " + counts(lines))),
                List.of(byArea(lines), strings(scope, lines)),
                Phrases.NO_PROOF);
        return new MadeReport(report, "Strings", scope.fileName(kind()));
    }

    private List<Line> lines(Scene.Scope scope) {
        Map<Long, StringStanding> standings = assessments.standings().stream()
                .collect(Collectors.toMap(StringStanding::stringId, Function.identity()));
        Map<Long, NextDateView> dates =
                programme.nextDates().stream().collect(Collectors.toMap(NextDateView::stringId, Function.identity()));
        List<Line> lines = new ArrayList<>();
        scope.strings()
                .forEach(string -> lines.add(new Line(
                        string, scope.site(string).areaCode(), standings.get(string.id()), dates.get(string.id()))));
        lines.sort(java.util.Comparator.comparingInt(Line::rank)
                .thenComparing(Line::area)
                .thenComparing(line -> line.string().title()));
        return lines;
    }

    private static String counts(List<Line> lines) {
        String counted = MOST_FIRST.stream()
                .map(urgency -> count(lines, urgency) + " " + urgency.word())
                .collect(Collectors.joining(", "));
        long unjudged = lines.stream().filter(line -> line.standing() == null).count();
        return counted + (unjudged == 0 ? "" : ", " + unjudged + " not judged yet");
    }

    private static long count(List<Line> lines, Urgency urgency) {
        return lines.stream()
                .filter(line -> line.standing() != null && line.standing().urgency() == urgency)
                .count();
    }

    private static Section byArea(List<Line> lines) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("Area", 30)));
        MOST_FIRST.forEach(urgency -> columns.add(Column.number(urgency.word(), 8)));
        columns.add(Column.number("Strings", 8));
        Map<String, List<Line>> areas =
                lines.stream().collect(Collectors.groupingBy(Line::area, TreeMap::new, Collectors.toList()));
        List<List<Cell>> rows = new ArrayList<>();
        areas.forEach((area, some) -> {
            List<Cell> row = new ArrayList<>(List.of(Cell.of(area)));
            MOST_FIRST.forEach(urgency -> row.add(Cell.of(count(some, urgency))));
            row.add(Cell.of(some.size()));
            rows.add(row);
        });
        return new Section("By area", "How many strings ask what.", columns, rows);
    }

    private static Section strings(Scene.Scope scope, List<Line> lines) {
        return new Section(
                "Strings",
                "The most urgent first. Due is the earliest of programme, own interval, re-measure and risk.",
                List.of(
                        Column.words("Area", 9),
                        Column.words("String", 12),
                        Column.words("Site", 18),
                        Column.words("Jar type", 12),
                        Column.number("Jars", 5),
                        Column.words("Urgency", 8),
                        Column.words("Judged as of", 10),
                        Column.words("Why", 44),
                        Column.words("Due", 10),
                        Column.words("Governed by", 12)),
                lines.stream().map(line -> row(scope, line)).toList());
    }

    private static List<Cell> row(Scene.Scope scope, Line line) {
        StringStanding standing = line.standing();
        NextDateView next = line.next();
        return Arrays.asList(
                Cell.of(line.area()),
                Cell.of(line.string().title()),
                Cell.of(scope.site(line.string()).name()),
                Cell.of(line.string().jarTypeCode()),
                Cell.of(line.string().positions()),
                Cell.of(standing == null ? "not judged" : standing.urgency().word()),
                standing == null ? Cell.NONE : Cell.of(standing.asOf()),
                Cell.of(standing == null ? "" : standing.headline()),
                next == null ? Cell.NONE : Cell.of(next.dueOn()),
                Cell.of(next == null ? "" : next.governs().name().toLowerCase(java.util.Locale.ROOT)));
    }
}
