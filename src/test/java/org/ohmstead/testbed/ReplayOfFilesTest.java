package org.ohmstead.testbed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.forecast.EstateReplay;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.UnitForecast;
import org.ohmstead.replay.ReplayCommand;

/** An estate written to files and replayed by the command gives the rows that it gives in memory. */
class ReplayOfFilesTest {
    @TempDir
    Path folder;

    private static List<StringHistory> estate() {
        return new EstateGenerator(Laws.drifting(), 14)
                .estate().subList(0, 4).stream().map(SimulatedString::history).toList();
    }

    private static List<String> inMemory(List<StringHistory> estate) {
        List<String> rows = new ArrayList<>();
        new EstateReplay(estate, ForecastParameters.standard()).run((string, survey, forecast) -> {
            String of = EstateFolder.SITE + "," + (string + 1) + ",";
            String next = "," + forecast.next().on();
            forecast.jars().forEach(jar -> rows.add(of + row(jar, "jar", forecast.asOf()) + next));
            forecast.links().forEach(link -> rows.add(of + row(link, "link", forecast.asOf()) + next));
        });
        return rows;
    }

    private static String row(UnitForecast unit, String kind, LocalDate asOf) {
        return String.join(
                ",",
                Integer.toString(unit.number()),
                kind,
                asOf.toString(),
                String.format(Locale.ROOT, "%.6f", unit.probability()),
                unit.flagged() ? "1" : "0",
                day(unit.early()),
                day(unit.median()),
                day(unit.late()));
    }

    private static String day(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }

    private static String firstCells(String line, int count) {
        return String.join(",", List.of(line.split(",", -1)).subList(0, count));
    }

    @Test
    void filesAndMemoryGiveTheSameRows() throws IOException {
        List<StringHistory> estate = estate();
        EstateFolder.write(estate, folder);
        Path out = folder.resolve("predictions.csv");
        PrintStream silent = new PrintStream(OutputStream.nullOutputStream());
        assertThat(ReplayCommand.run(List.of(folder.toString(), out.toString()), silent))
                .isZero();
        List<String> lines = Files.readAllLines(out);
        assertThat(lines.get(0))
                .startsWith("site,string,position,kind,as_of,probability,flag,q10,q50,q90,next_date,score");
        assertThat(lines.subList(1, lines.size()).stream()
                        .map(line -> firstCells(line, 11))
                        .toList())
                .isEqualTo(inMemory(estate));
        // a second run finds its own output in the folder and passes it over
        assertThat(ReplayCommand.run(List.of(folder.toString(), out.toString()), silent))
                .isZero();
        assertThat(Files.readAllLines(out)).isEqualTo(lines);
    }
}
