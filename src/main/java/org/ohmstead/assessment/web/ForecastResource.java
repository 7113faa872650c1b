package org.ohmstead.assessment.web;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.EstateForecast;
import org.ohmstead.assessment.model.estate.Expected;
import org.ohmstead.assessment.model.estate.ForecastLine;
import org.ohmstead.assessment.model.estate.LifeCurve;
import org.ohmstead.assessment.model.estate.ReplacementForecast;
import org.ohmstead.kernel.FormulaGuard;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Replacements and life curves for programs and spreadsheets. */
@RestController
class ForecastResource {

    private final EstateForecast forecast;

    ForecastResource(EstateForecast forecast) {
        this.forecast = forecast;
    }

    @GetMapping("/api/forecast/replacements")
    ReplacementForecast replacements(@RequestParam(defaultValue = "8") int quarters) {
        return forecast.replacements(quarters);
    }

    @GetMapping("/api/forecast/lives")
    List<LifeCurve> lives() {
        return forecast.lifeCurves();
    }

    /** One row for each group of jars and quarter; the first is what is due already. RFC 4180, UTF-8. */
    @GetMapping("/api/forecast/replacements.csv")
    void file(@RequestParam(defaultValue = "8") int quarters, HttpServletResponse response) throws IOException {
        ReplacementForecast all = forecast.replacements(quarters);
        response.setContentType("text/csv;charset=UTF-8;header=present");
        response.setHeader("Content-Disposition", "attachment; filename=\"replacements-" + all.asOf() + ".csv\"");
        CsvWriter csv = CsvWriter.builder()
                .lineDelimiter(LineDelimiter.CRLF)
                .build(new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8));
        csv.writeRecord(
                "as_of", "area", "jar_type", "jars", "not_foreseen", "quarter", "expected", "low_80", "high_80");
        Stream.of(List.of(all.total()), all.byJarType(), all.byArea(), all.byAreaAndJarType())
                .flatMap(List::stream)
                .forEach(line -> write(csv, all, line));
        csv.flush();
    }

    private static void write(CsvWriter csv, ReplacementForecast all, ForecastLine line) {
        csv.writeRecord(row(all, line, "already", line.already()));
        for (int q = 0; q < line.byQuarter().size(); q++) {
            csv.writeRecord(row(
                    all, line, all.quarters().get(q).title(), line.byQuarter().get(q)));
        }
    }

    private static List<String> row(ReplacementForecast all, ForecastLine line, String quarter, Expected expected) {
        List<String> cells = new ArrayList<>();
        cells.add(all.asOf().toString());
        cells.add(group(line.area()));
        cells.add(group(line.jarType()));
        cells.add(Integer.toString(line.jars()));
        cells.add(Integer.toString(line.unforeseen()));
        cells.add(quarter);
        cells.add(String.format(Locale.ROOT, "%.2f", expected.expected()));
        cells.add(Integer.toString(expected.low()));
        cells.add(Integer.toString(expected.high()));
        return cells;
    }

    private static String group(@Nullable String code) {
        return code == null ? "all" : FormulaGuard.guarded(code);
    }
}
