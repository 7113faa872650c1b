package org.ohmstead.intake.fuzz;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Feeds a reader with mutants, run after run. A mutant with an answer that was not given before is bred from, too. The same
 * seed gives the same mutants; what fails is saved.
 */
final class FuzzRun {

    private static final int LARGEST = 300_000;
    private static final int MOST_BRED_FROM = 400;
    private static final int LARGEST_BRED_FROM = 20_000;
    private static final int MOST_ANSWERS = 20_000;
    private static final double LONGEST_SECONDS = 1;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final Reader reader;
    private final SplittableRandom random;
    private final Path failuresTo;
    private final List<byte[]> corpus = new ArrayList<>();
    private final List<List<Zip.Part>> parts = new ArrayList<>();
    private final Set<String> answers = new HashSet<>();
    private final Map<Outcome.Kind, Long> counts = new EnumMap<>(Outcome.Kind.class);
    private long runs;
    private long failures;
    private double slowest;
    private byte[] slowestMutant = {};
    private long mostAllocated;

    FuzzRun(Reader reader, long seed, Path failuresTo) {
        this.reader = reader;
        this.random = new SplittableRandom(seed);
        this.failuresTo = failuresTo;
        reader.seeds().forEach(this::breedFrom);
    }

    /**
     * What the runs came to.
     *
     * @param allocated bytes that the hungriest run asked for
     * @param bred how many mutants joined the corpus
     */
    record Result(
            String reader,
            long runs,
            Map<Outcome.Kind, Long> counts,
            long failures,
            double slowestSeconds,
            long allocated,
            int bred,
            double seconds) {}

    Result run(long wanted) throws IOException {
        long start = System.nanoTime();
        for (byte[] seed : reader.seeds()) {
            take(seed);
        }
        while (runs < wanted) {
            take(mutant());
        }
        int bred = corpus.size() - reader.seeds().size();
        return new Result(
                reader.name(), runs, counts, failures, slowest, mostAllocated, bred, (System.nanoTime() - start) / 1e9);
    }

    private byte[] mutant() {
        int chosen = random.nextInt(corpus.size());
        byte[] bytes = corpus.get(chosen);
        byte[] other = corpus.get(random.nextInt(corpus.size()));
        for (int n = reader.archive() ? random.nextInt(5) / 4 + 1 : random.nextInt(1, 4); n > 0; n--) {
            bytes = changed(bytes, chosen, other);
            chosen = -1;
        }
        return bytes.length > LARGEST ? java.util.Arrays.copyOf(bytes, LARGEST) : bytes;
    }

    private byte[] changed(byte[] bytes, int chosen, byte[] other) {
        if (reader.archive()) {
            boolean sound =
                    chosen >= 0 && chosen < parts.size() && !parts.get(chosen).isEmpty();
            return sound
                    ? ArchiveMutations.mutate(bytes, parts.get(chosen), parts.get(0), random)
                    : ByteMutations.mutate(bytes, other, random.split());
        }
        if (random.nextInt(3) == 0) {
            return ByteMutations.mutate(bytes, other, random);
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return TextMutations.mutate(text, new String(other, StandardCharsets.UTF_8), random)
                .getBytes(StandardCharsets.UTF_8);
    }

    private void take(byte[] mutant) throws IOException {
        runs++;
        try {
            long allocatedBefore = THREADS.getCurrentThreadAllocatedBytes();
            Outcome outcome = timed(mutant);
            mostAllocated = Math.max(mostAllocated, THREADS.getCurrentThreadAllocatedBytes() - allocatedBefore);
            counts.merge(outcome.kind(), 1L, Long::sum);
            boolean room = mutant.length < LARGEST_BRED_FROM
                    && corpus.size() < MOST_BRED_FROM + reader.seeds().size();
            if (answers.size() < MOST_ANSWERS && answers.add(outcome.sentences()) && room) {
                breedFrom(mutant);
            }
        } catch (Throwable crash) {
            save(mutant, crash);
        }
    }

    /** By the processor's time of this thread: a machine at work on something else is no fault of the reader. */
    private Outcome timed(byte[] mutant) throws IOException {
        long start = THREADS.getCurrentThreadCpuTime();
        Outcome outcome = reader.reading().of(mutant);
        double seconds = (THREADS.getCurrentThreadCpuTime() - start) / 1e9;
        if (seconds > LONGEST_SECONDS) {
            start = THREADS.getCurrentThreadCpuTime();
            reader.reading().of(mutant);
            seconds = (THREADS.getCurrentThreadCpuTime() - start) / 1e9;
        }
        if (seconds > slowest) {
            slowest = seconds;
            slowestMutant = mutant;
        }
        if (seconds > LONGEST_SECONDS) {
            throw new IllegalStateException("Read twice, it took " + seconds + " s");
        }
        return outcome;
    }

    private void breedFrom(byte[] bytes) {
        corpus.add(bytes);
        if (reader.archive()) {
            parts.add(partsOf(bytes));
        }
    }

    /** None for an archive that is not sound: it is changed byte by byte. */
    private static List<Zip.Part> partsOf(byte[] archive) {
        try {
            return Zip.parts(archive);
        } catch (RuntimeException unsound) {
            return List.of();
        }
    }

    byte[] slowestMutant() {
        return slowestMutant;
    }

    private void save(byte[] mutant, Throwable crash) throws IOException {
        failures++;
        Files.createDirectories(failuresTo);
        String name = reader.name() + "-" + runs;
        Files.write(failuresTo.resolve(name + ".bin"), mutant);
        StringWriter trace = new StringWriter();
        crash.printStackTrace(new PrintWriter(trace));
        Files.writeString(failuresTo.resolve(name + ".txt"), trace.toString());
    }
}
