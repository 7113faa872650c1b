package org.ohmstead.intake.fuzz;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ohmstead.intake.file.Archive;
import org.ohmstead.intake.file.ArchiveEntry;
import org.ohmstead.intake.file.ArchiveLimits;
import org.ohmstead.intake.file.BadArchive;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.FileReading;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.map.ColumnMap;
import org.ohmstead.intake.map.MapGuess;
import org.ohmstead.intake.map.MapReading;
import org.ohmstead.intake.map.MappedFile;
import tools.jackson.databind.json.JsonMapper;

/**
 * A reader of files and the examples from which its mutants are bred.
 *
 * @param archive whether they are archives, to be changed inside
 */
record Reader(String name, List<byte[]> seeds, boolean archive, Reading reading) {

    private static final Path EXAMPLES = Path.of("docs/examples");
    private static final long SMALL = 4_000;

    /** Reads a file of whatever bytes. */
    @FunctionalInterface
    interface Reading {
        Outcome of(byte[] bytes) throws IOException;
    }

    static List<Reader> all() {
        List<Reader> all = new ArrayList<>();
        all.add(new Reader("sheet-csv", seeds(".csv"), false, Reader::sheet));
        all.add(new Reader("sheet-workbook", seeds("workbook.xlsx"), true, Reader::sheet));
        all.add(new Reader("sheet-json", seeds(".json"), false, Reader::sheet));
        all.add(new Reader("history-archive", List.of(history()), true, Reader::archive));
        for (Path map : list(EXAMPLES.resolve("maps"), ".map.json")) {
            all.add(mapped(map));
        }
        all.add(new Reader("map-guess", mapSeeds(), false, Reader::guess));
        return all;
    }

    private static Outcome sheet(byte[] bytes) throws IOException {
        List<Finding> findings = new ArrayList<>();
        FileReading file = SheetReader.read(ByteSource.of(bytes), sheet -> findings.addAll(sheet.findings()));
        findings.addAll(file.findings());
        Outcome outcome = Outcome.of(file.sheets(), findings);
        if (outcome.kind() == Outcome.Kind.UNFIT) {
            throw new IllegalStateException("Neither a sheet nor a reason");
        }
        return outcome;
    }

    private static Reader mapped(Path definition) {
        String name = definition.getFileName().toString().replace(".map.json", "");
        ColumnMap map = JsonMapper.shared().readValue(text(definition), ColumnMap.class);
        List<byte[]> seeds = list(definition.getParent(), "").stream()
                .filter(file -> file.getFileName().toString().startsWith(name + ".") && !file.equals(definition))
                .map(Reader::bytes)
                .toList();
        return new Reader("map-" + name, seeds, isArchive(seeds.get(0)), bytes -> {
            MappedFile file = MapReading.read(ByteSource.of(bytes), map);
            List<Finding> findings = new ArrayList<>(file.findings());
            file.sheets().forEach(sheet -> findings.addAll(sheet.findings()));
            return Outcome.of(file.sheets().size(), findings);
        });
    }

    private static Outcome guess(byte[] bytes) throws IOException {
        int rules = MapGuess.of(ByteSource.of(bytes)).columns().size();
        return new Outcome(rules == 0 ? Outcome.Kind.UNFIT : Outcome.Kind.READ, rules + " columns");
    }

    /** Unpacks everything an archive of a history holds. */
    private static Outcome archive(byte[] bytes) throws IOException {
        try {
            Archive archive = Archive.open(ByteBuffer.wrap(bytes), ArchiveLimits.HISTORY);
            for (ArchiveEntry entry : archive.entries()) {
                try (InputStream unpacked = archive.open(entry)) {
                    unpacked.transferTo(java.io.OutputStream.nullOutputStream());
                }
            }
            return new Outcome(Outcome.Kind.READ, "whole");
        } catch (BadArchive refused) {
            return Outcome.of(0, List.of(Finding.unreadable(refused.flaw())));
        }
    }

    private static byte[] history() {
        Zip zip = new Zip();
        list(EXAMPLES, ".csv").forEach(file -> zip.with("2024/" + file.getFileName(), bytes(file)));
        return zip.bytes();
    }

    private static List<byte[]> seeds(String ending) {
        return Stream.concat(list(EXAMPLES, ending).stream(), list(EXAMPLES.resolve("survey-sheet"), ending).stream())
                .map(Reader::bytes)
                .filter(bytes -> bytes.length > 0 && bytes.length < SMALL)
                .toList();
    }

    private static List<byte[]> mapSeeds() {
        return list(EXAMPLES.resolve("maps"), "").stream()
                .filter(file -> !file.toString().endsWith(".map.json"))
                .map(Reader::bytes)
                .filter(bytes -> !isArchive(bytes))
                .toList();
    }

    private static boolean isArchive(byte[] bytes) {
        return bytes[0] == 'P' && bytes[1] == 'K';
    }

    private static List<Path> list(Path folder, String ending) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(
                            file -> Files.isRegularFile(file) && file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        return new String(bytes(file), java.nio.charset.StandardCharsets.UTF_8);
    }
}
