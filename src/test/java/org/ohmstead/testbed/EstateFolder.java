package org.ohmstead.testbed;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.demo.SheetText;
import org.ohmstead.fleet.csv.AreaEntry;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.SheetWriter;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.fleet.csv.SiteEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;

/** Writes an invented estate as the register's files and survey sheets, as an operator would hand it over. */
final class EstateFolder {
    static final String SITE = "S-1";
    private final Path folder;

    private EstateFolder(Path folder) {
        this.folder = folder;
    }

    /** Strings are called 1, 2, 3 … in order. */
    static void write(List<StringHistory> estate, Path folder) throws IOException {
        EstateFolder files = new EstateFolder(folder);
        files.writeRegister(estate);
        for (int k = 0; k < estate.size(); k++) {
            files.writeSurveys(estate.get(k), Integer.toString(k + 1));
        }
    }

    private void writeRegister(List<StringHistory> estate) throws IOException {
        write(Sheets.AREAS, Stream.of(new AreaEntry("A", "All", null)));
        write(Sheets.SITES, Stream.of(new SiteEntry(SITE, "One", "A", ZoneId.of("UTC"), null, null, "", "", "", null)));
        write(
                Sheets.JAR_TYPES,
                estate.stream()
                        .map(history -> history.plan().jarType())
                        .distinct()
                        .map(EstateFolder::jarType));
        write(Sheets.STRINGS, numbered(estate).map(k -> string(estate.get(k), name(k))));
        write(Sheets.LINKS, numbered(estate).flatMap(k -> links(estate.get(k), name(k))));
        write(Sheets.OCCUPANCIES, numbered(estate).flatMap(k -> occupancies(estate.get(k), name(k))));
        write(Sheets.REMAKES, numbered(estate).flatMap(k -> remakes(estate.get(k), name(k))));
    }

    private static Stream<Integer> numbered(List<StringHistory> estate) {
        return Stream.iterate(0, k -> k + 1).limit(estate.size());
    }

    private static String name(int k) {
        return Integer.toString(k + 1);
    }

    private <E> void write(Sheet<E> sheet, Stream<E> entries) throws IOException {
        Files.createDirectories(folder);
        try (OutputStream out = Files.newOutputStream(folder.resolve(sheet.name() + ".csv"));
                SheetWriter<E> writer = new SheetWriter<>(sheet, out)) {
            entries.forEach(writer::write);
        }
    }

    private static JarTypeEntry jarType(JarTypeFacts type) {
        return new JarTypeEntry(
                type.code(),
                "",
                type.technology(),
                type.cellsPerJar(),
                type.nominalVolts(),
                type.ratedAmpereHours(),
                8,
                null,
                null,
                type.designLifeYears(),
                type.designLifeCelsius(),
                type.floatVoltsPerCell(),
                "invented",
                type.referenceOhmic(),
                type.referenceKind(),
                null,
                "invented",
                orNull(type.ohmicPerKelvin()),
                Double.isNaN(type.ohmicPerKelvin()) ? null : "invented",
                null,
                null);
    }

    private static @Nullable Double orNull(double value) {
        return Double.isNaN(value) ? null : value;
    }

    private static StringEntry string(StringHistory history, String name) {
        var plan = history.plan();
        return new StringEntry(
                SITE,
                name,
                plan.jarType().code(),
                List.of(plan.positions()),
                1,
                plan.floatSetpointVoltsPerCell(),
                plan.designLoadAmps(),
                plan.designMinutes(),
                null,
                1,
                plan.inServiceOn(),
                12,
                null);
    }

    private static Stream<LinkEntry> links(StringHistory history, String name) {
        return history.plan().links().stream()
                .map(link -> new LinkEntry(SITE, name, link.ordinal(), link.kind(), link.straps(), null));
    }

    private static Stream<OccupancyEntry> occupancies(StringHistory history, String name) {
        String type = history.plan().jarType().code();
        return history.spells().stream()
                .map(spell -> new OccupancyEntry(
                        SITE,
                        name,
                        spell.position(),
                        type,
                        null,
                        spell.during().from(),
                        spell.during().until(),
                        "",
                        "",
                        null,
                        null));
    }

    private static Stream<RemakeEntry> remakes(StringHistory history, String name) {
        return history.remakes().stream()
                .map(remake -> new RemakeEntry(SITE, name, remake.ordinal(), remake.remadeOn(), null, null, ""));
    }

    private void writeSurveys(StringHistory history, String name) throws IOException {
        for (SurveyReadings survey : history.surveys()) {
            Path year = folder.resolve("surveys")
                    .resolve(Integer.toString(survey.takenOn().getYear()));
            Files.createDirectories(year);
            String file = String.format(Locale.ROOT, "string-%s-%s.csv", name, survey.takenOn());
            Files.writeString(year.resolve(file), sheet(survey, name));
        }
    }

    private static String sheet(SurveyReadings survey, String name) {
        double none = Double.NaN;
        double[] gravity = new double[survey.ohmic().length];
        Arrays.fill(gravity, none);
        SurveyFacts facts = new SurveyFacts(
                1,
                survey.takenAt(),
                survey.takenOn(),
                "",
                survey.instrument(),
                null,
                survey.ohmicKind(),
                none,
                survey.ambientCelsius(),
                survey.stringVolts(),
                none,
                survey.rippleAmps(),
                none,
                none,
                none,
                survey.onFloat(),
                "");
        Readings readings =
                new Readings(survey.ohmic(), survey.volts(), survey.celsius(), gravity, survey.linkMicroohms());
        return SheetText.of(
                NewSurvey.of(facts, readings),
                SITE,
                name,
                survey.takenAt().atZone(ZoneOffset.UTC).toLocalDateTime());
    }

    /** Writes an estate to a folder: laws, seed, folder; for instance {@code ordinary 7 estate}. */
    public static void main(String[] arguments) throws IOException {
        List<SimulatedString> estate =
                new EstateGenerator(Contest.laws(arguments[0]), Long.parseLong(arguments[1])).estate();
        write(estate.stream().map(SimulatedString::history).toList(), Path.of(arguments[2]));
    }
}
