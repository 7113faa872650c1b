package org.ohmstead.intake.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** A crew's walk along a string of 2 V, 400 Ah jars on 18 November 2026, told as a sentence and written as a sheet. */
final class Walk {

    static final ZoneId ZONE = ZoneId.of("Europe/London");

    private final int positions;
    private final Map<String, String> facts = new TreeMap<>();
    private final List<String[]> rows = new ArrayList<>();
    private String titles = "position,jar mΩ,jar V,link µΩ";
    private ExpectedJar jar = new ExpectedJar(Technology.AGM, 1, 400, Double.NaN, null);
    private EarlierSurvey last;
    private EarlierSurvey baseline;
    private final List<Instant> earlier = new ArrayList<>();
    private final List<EarlierSurvey> recent = new ArrayList<>();
    private final Map<String, List<EarlierSurvey>> neighbours = new TreeMap<>();
    private final int[] straps;

    private Walk(int positions) {
        this.positions = positions;
        this.straps = new int[positions + 1];
        Arrays.fill(straps, 1);
        facts.put("taken at", "2026-11-18T09:42");
        facts.put("ohmic kind", "impedance");
        facts.put("ambient °C", "21");
        rows.add(new String[] {"0", "", "", "12.1"});
        for (int k = 1; k <= positions; k++) {
            String link = k == positions ? "11.9" : String.format(Locale.ROOT, "%.1f", 24 + 0.1 * (k % 5));
            rows.add(new String[] {"" + k, String.format(Locale.ROOT, "%.3f", 0.41 + 0.001 * (k % 7)), "2.25", link});
        }
    }

    static Walk along(int positions) {
        return new Walk(positions);
    }

    Walk with(String key, String value) {
        facts.put(key, value);
        return this;
    }

    Walk without(String key) {
        facts.remove(key);
        return this;
    }

    Walk titled(String titles) {
        this.titles = titles;
        return this;
    }

    Walk row(int position, String... cells) {
        String[] row = new String[cells.length + 1];
        row[0] = "" + position;
        System.arraycopy(cells, 0, row, 1, cells.length);
        rows.add(row);
        return this;
    }

    Walk skipping(int position) {
        rows.removeIf(row -> row[0].equals("" + position));
        return this;
    }

    Walk ohmic(int position, String value) {
        return cell(position, 1, value);
    }

    Walk volts(int position, String value) {
        return cell(position, 2, value);
    }

    Walk link(int ordinal, String value) {
        return cell(ordinal, 3, value);
    }

    Walk everyJar(String ohmic, String volts) {
        for (int k = 1; k <= positions; k++) {
            ohmic(k, ohmic).volts(k, volts);
        }
        return this;
    }

    Walk everyLink(String value) {
        for (int k = 0; k <= positions; k++) {
            link(k, value);
        }
        return this;
    }

    Walk ofJars(Technology technology, int cells, double ampereHours) {
        jar = new ExpectedJar(technology, cells, ampereHours, Double.NaN, null);
        return this;
    }

    Walk registeredStraps(int ordinal, int count) {
        straps[ordinal] = count;
        return this;
    }

    Walk after(String takenAt, OhmicKind kind, double hertz, double celsius, double ohmic, double link) {
        double[] jars = new double[positions];
        Arrays.fill(jars, ohmic);
        double[][] links = new double[positions + 1][];
        Arrays.setAll(links, k -> new double[] {link});
        last = new EarlierSurvey(Instant.parse(takenAt), "", kind, hertz, celsius, jars, new double[] {}, links);
        baseline = last;
        earlier.add(last.takenAt());
        return this;
    }

    Walk recalling(List<EarlierSurvey> surveys) {
        recent.addAll(surveys);
        return this;
    }

    Walk beside(String name, List<EarlierSurvey> surveys) {
        neighbours.put(name, surveys);
        return this;
    }

    CheckedSurvey checked() {
        Expectation expected = new Expectation(
                ZONE,
                positions,
                straps,
                jar,
                LocalDate.parse("2019-03-01"),
                last,
                baseline,
                earlier,
                recent,
                neighbours,
                Instant.parse("2026-11-20T12:00:00Z"));
        return Checks.check(sheet(), expected, Thresholds.defaults());
    }

    List<RemarkCode> remarked() {
        return checked().remarks().stream().map(Remark::code).toList();
    }

    Remark remark(RemarkCode code) {
        return checked().remarks().stream()
                .filter(remark -> remark.code() == code)
                .findFirst()
                .orElseThrow();
    }

    private Walk cell(int position, int cell, String value) {
        rows.stream().filter(row -> row[0].equals("" + position)).forEach(row -> row[cell] = value);
        return this;
    }

    private SurveySheet sheet() {
        StringBuilder text = new StringBuilder("ohmstead survey sheet,1\n");
        facts.forEach((key, value) -> text.append(key).append(',').append(value).append('\n'));
        text.append(titles).append('\n');
        rows.forEach(row -> text.append(String.join(",", row)).append('\n'));
        List<SurveySheet> sheets = new ArrayList<>();
        try {
            SheetReader.read(ByteSource.of(text.toString().getBytes(StandardCharsets.UTF_8)), sheets::add);
        } catch (IOException unexpected) {
            throw new UncheckedIOException(unexpected);
        }
        return sheets.get(0);
    }
}
