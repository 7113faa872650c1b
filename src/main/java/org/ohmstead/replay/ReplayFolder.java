package org.ohmstead.replay;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.Sheets;

/**
 * The files of a folder and of all folders below it: register files, known by their names, and the rest, which ought to be
 * survey sheets. In order of their names, so that every run meets them alike.
 */
record ReplayFolder(Path folder, List<Path> files) {
    private static final Set<String> ENDINGS = Set.of("csv", "tsv", "txt");

    /** @param except the file that is to be written, not to be read */
    static ReplayFolder open(Path folder, Path except) throws IOException {
        Path left = except.toAbsolutePath().normalize();
        try (Stream<Path> all = Files.walk(folder, FileVisitOption.FOLLOW_LINKS)) {
            return new ReplayFolder(
                    folder,
                    all.filter(Files::isRegularFile)
                            .filter(file -> ENDINGS.contains(ending(file)))
                            .filter(file -> !file.toAbsolutePath().normalize().equals(left))
                            .sorted()
                            .toList());
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT);
    }

    private static String ending(Path file) {
        String name = name(file);
        return name.startsWith(".") ? "" : name.substring(name.lastIndexOf('.') + 1);
    }

    private static boolean isNamed(Path file, String sheet) {
        return name(file).equals(sheet + ".csv");
    }

    List<Path> register(Sheet<?> sheet) {
        return files.stream().filter(file -> isNamed(file, sheet.name())).toList();
    }

    List<Path> surveys() {
        return files.stream()
                .filter(file -> Sheets.ALL.stream().noneMatch(sheet -> isNamed(file, sheet.name())))
                .toList();
    }

    /** As people see it: below the folder. */
    Path shown(Path file) {
        return folder.relativize(file);
    }
}
