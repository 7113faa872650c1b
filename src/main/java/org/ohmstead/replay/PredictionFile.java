package org.ohmstead.replay;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.Writer;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.forecast.DataDoubt;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.forecast.UnitForecast;

/** Writes the predictions, one row per jar and link and survey, as they are made. */
final class PredictionFile implements AutoCloseable {
    static final List<String> TITLES = List.of(
            "site",
            "string",
            "position",
            "kind",
            "as_of",
            "probability",
            "flag",
            "q10",
            "q50",
            "q90",
            "next_date",
            "score",
            "beyond_limit",
            "rise",
            "doubts");

    private final CsvWriter csv;
    private long rows;

    PredictionFile(Writer out) {
        this.csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out);
        csv.writeRecord(TITLES);
    }

    void write(FiledString string, StringForecast forecast) {
        forecast.jars().forEach(jar -> write(string, forecast, jar, "jar"));
        forecast.links().forEach(link -> write(string, forecast, link, "link"));
    }

    private void write(FiledString string, StringForecast forecast, UnitForecast unit, String kind) {
        rows++;
        csv.writeRecord(
                string.site,
                string.name,
                Integer.toString(unit.number()),
                kind,
                forecast.asOf().toString(),
                decimal(unit.probability()),
                unit.flagged() ? "1" : "0",
                day(unit.early()),
                day(unit.median()),
                day(unit.late()),
                forecast.next().on().toString(),
                decimal(unit.score()),
                decimal(unit.beyondLimit()),
                decimal(unit.riseOverNew()),
                unit.doubts().stream().map(DataDoubt::name).sorted().collect(Collectors.joining(" ")));
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    private static String day(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }

    long rows() {
        return rows;
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }
}
