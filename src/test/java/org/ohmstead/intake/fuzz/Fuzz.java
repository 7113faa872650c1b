package org.ohmstead.intake.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Feeds every reader with mutants of the example files and prints what came of them, as a Markdown table. Started by
 * {@code ops/bench/fuzz}; ends with 1 when a reader failed.
 */
public final class Fuzz {

    private static final long SEED = 20_261_125;
    private static final Path FAILURES = Path.of("target/fuzz");

    private Fuzz() {}

    public static void main(String[] args) throws IOException {
        if (args.length == 3 && args[0].equals("again")) {
            again(args[1], Path.of(args[2]));
            return;
        }
        long runs = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
        List<String> chosen = Arrays.asList(args).subList(Math.min(1, args.length), args.length);
        long failures = 0;
        Files.createDirectories(FAILURES);
        System.out.println(
                "| reader | runs | read | with doubts | refused | fits no map | failures | slowest | most allocated"
                        + " | bred from | runs a second |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|---|");
        for (Reader reader : Reader.all()) {
            if (chosen.isEmpty() || chosen.contains(reader.name())) {
                FuzzRun run = new FuzzRun(reader, SEED, FAILURES);
                FuzzRun.Result result = run.run(runs);
                Files.write(FAILURES.resolve("slowest-" + reader.name() + ".bin"), run.slowestMutant());
                System.out.println(row(result));
                failures += result.failures();
            }
        }
        System.out.println(
                "\nSeed " + SEED + ", heap at most " + (Runtime.getRuntime().maxMemory() >> 20)
                        + " MB; failures and the slowest mutants are in " + FAILURES + ".");
        System.exit(failures == 0 ? 0 : 1);
    }

    /** Reads a saved failure once more. */
    private static void again(String name, Path saved) throws IOException {
        Reader reader = Reader.all().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .orElseThrow();
        System.out.println(reader.reading().of(Files.readAllBytes(saved)));
    }

    private static String row(FuzzRun.Result result) {
        String counts = Arrays.stream(Outcome.Kind.values())
                .map(kind -> result.counts().getOrDefault(kind, 0L).toString())
                .collect(Collectors.joining(" | "));
        return String.format(
                Locale.ROOT,
                "| %s | %d | %s | %d | %.0f ms | %.1f MB | %d | %.0f |",
                result.reader(),
                result.runs(),
                counts,
                result.failures(),
                result.slowestSeconds() * 1_000,
                result.allocated() / 1e6,
                result.bred(),
                result.runs() / result.seconds());
    }
}
