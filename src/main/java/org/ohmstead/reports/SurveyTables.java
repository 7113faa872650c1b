package org.ohmstead.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.RemarkView;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;

/** A survey's readings and remarks as tables. */
final class SurveyTables {

    private static final double PERCENT = 100;

    private SurveyTables() {}

    static Section remarks(List<RemarkView> remarks, boolean cameAsFile) {
        String none = cameAsFile ? "Nothing was noticed when it came in." : "It came in by no file, so none were made.";
        return new Section(
                "Remarks",
                remarks.isEmpty() ? none : "What was noticed when it came in.",
                List.of(
                        Column.words("Severity", 9),
                        Column.words("Place", 16),
                        Column.words("What", 34),
                        Column.words("Seen", 18),
                        Column.words("Expected", 18),
                        Column.words("What to do", 34)),
                remarks.stream()
                        .map(remark -> List.of(
                                Cell.of(remark.severity().name().toLowerCase(Locale.ROOT)),
                                Cell.of(remark.place()),
                                Cell.of(remark.message()),
                                Cell.of(remark.seen()),
                                Cell.of(remark.expected()),
                                Cell.of(remark.remedy())))
                        .toList());
    }

    static Section jars(SurveyRecord survey, @Nullable SurveyRecord before) {
        OhmicKind kind = survey.facts().ohmicKind();
        Readings now = survey.readings();
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < now.positions(); i++) {
            double earlier = before == null ? Double.NaN : before.readings().ohmic()[i];
            rows.add(List.of(
                    Cell.of(i + 1),
                    Cell.of(now.ohmic()[i], 3),
                    Cell.of(earlier, 3),
                    Cell.of((now.ohmic()[i] / earlier - 1) * PERCENT, 1),
                    Cell.of(now.volts()[i], 3),
                    Cell.of(now.celsius()[i], 1),
                    Cell.of(now.gravity()[i], 3)));
        }
        return new Section(
                "Jars",
                "An empty cell was not measured. The change is against the survey beside it.",
                List.of(
                        Column.number("Position", 8),
                        Column.number(kind.words() + " " + kind.unit(), 12),
                        Column.number("Before " + kind.unit(), 12),
                        Column.number("Change %", 10),
                        Column.number("V", 10),
                        Column.number("°C", 10),
                        Column.number("Specific gravity", 12)),
                rows);
    }

    static Section links(SurveyRecord survey, @Nullable SurveyRecord before) {
        Readings now = survey.readings();
        int straps = now.widestLink();
        List<Column> columns = new ArrayList<>(List.of(Column.words("Link", 18)));
        IntStream.rangeClosed(1, straps)
                .forEach(strap -> columns.add(Column.number(straps == 1 ? "µΩ" : "Strap " + strap + " µΩ", 10)));
        columns.addAll(List.of(
                Column.number("In parallel µΩ", 10), Column.number("Before µΩ", 10), Column.number("Change %", 10)));
        List<List<Cell>> rows = new ArrayList<>();
        for (int ordinal = 0; ordinal <= now.positions(); ordinal++) {
            rows.add(link(now, before == null ? null : before.readings(), ordinal, straps));
        }
        boolean none = rows.stream().allMatch(row -> row.stream().skip(1).allMatch(Cell.NONE::equals));
        return new Section(
                "Links", none ? "No link was measured." : "From post to post.", columns, none ? List.of() : rows);
    }

    private static List<Cell> link(Readings now, @Nullable Readings before, int ordinal, int straps) {
        double[] read = now.linkMicroohms()[ordinal];
        List<Cell> row = new ArrayList<>(List.of(Cell.of(Phrases.link(ordinal, now.positions()))));
        for (int strap = 0; strap < straps; strap++) {
            row.add(Cell.of(strap < read.length ? read[strap] : Double.NaN, 1));
        }
        double together = together(read);
        double earlier = before == null ? Double.NaN : together(before.linkMicroohms()[ordinal]);
        row.addAll(List.of(Cell.of(together, 1), Cell.of(earlier, 1), Cell.of((together / earlier - 1) * PERCENT, 1)));
        return row;
    }

    /** NaN when nothing was read; straps that were not read are left out. */
    private static double together(double[] straps) {
        List<Double> read = java.util.Arrays.stream(straps)
                .filter(strap -> strap > 0)
                .boxed()
                .collect(Collectors.toList());
        double conductance = read.stream().mapToDouble(strap -> 1 / strap).sum();
        return conductance == 0 ? Double.NaN : 1 / conductance;
    }
}
