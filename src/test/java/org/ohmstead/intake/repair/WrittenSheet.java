package org.ohmstead.intake.repair;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.check.Thresholds;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;

/** Sheets of invented readings, no two alike, so that a value out of its place shows. */
final class WrittenSheet {

    private final List<String> rows = new ArrayList<>();
    final int jars;

    private WrittenSheet(int jars) {
        this.jars = jars;
    }

    static WrittenSheet ofJars(int jars, SplittableRandom random) {
        WrittenSheet sheet = new WrittenSheet(jars);
        sheet.rows.add(line("0,,,%.1f", 12 + random.nextDouble()));
        for (int k = 1; k <= jars; k++) {
            sheet.rows.add(line(
                    "%d,%.4f,%.4f,%.2f",
                    k,
                    0.4 + 0.05 * random.nextDouble(),
                    2.2 + 0.1 * random.nextDouble(),
                    20 + 8 * random.nextDouble()));
        }
        return sheet;
    }

    WrittenSheet row(int position, String row) {
        rows.removeIf(other -> other.startsWith(position + ","));
        rows.add(row);
        return this;
    }

    WrittenSheet without(int position) {
        rows.removeIf(other -> other.startsWith(position + ","));
        return this;
    }

    WrittenSheet andRow(String row) {
        rows.add(row);
        return this;
    }

    SurveySheet read() {
        String text = "ohmstead survey sheet,1\ntaken at,2026-03-01T10:00\nohmic kind,impedance\n"
                + "position,jar mΩ,jar V,link µΩ\n" + String.join("\n", rows) + "\n";
        List<SurveySheet> sheets = new ArrayList<>();
        try {
            SheetReader.read(ByteSource.of(text.getBytes(StandardCharsets.UTF_8)), sheets::add);
        } catch (IOException unexpected) {
            throw new UncheckedIOException(unexpected);
        }
        return sheets.get(0);
    }

    Ground ground() {
        int[] straps = IntStream.range(0, jars + 1).map(k -> 1).toArray();
        return new Ground(straps);
    }

    /** Everything a ledger would take of it. */
    String told(SurveySheet sheet) {
        LaidOut laidOut = LaidOut.of(sheet.rows(), ground().straps(), Thresholds.defaults());
        return Arrays.toString(laidOut.ohmic()) + Arrays.toString(laidOut.volts())
                + Arrays.deepToString(laidOut.linkMicroohms())
                + laidOut.doubled().size() + "/" + laidOut.foreign().size() + "/" + (laidOut.closing() != null);
    }

    LaidOut laidOut(SurveySheet sheet) {
        return LaidOut.of(sheet.rows(), ground().straps(), Thresholds.defaults());
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
