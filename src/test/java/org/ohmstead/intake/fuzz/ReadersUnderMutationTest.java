package org.ohmstead.intake.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A few thousand of the mutants that {@code ops/bench/fuzz} breeds by the million. */
class ReadersUnderMutationTest {

    private static final int RUNS = 2_000;

    @TempDir
    private Path failures;

    static List<Reader> readers() {
        return Reader.all();
    }

    @ParameterizedTest
    @MethodSource("readers")
    void noFileMakesAReaderCrashOrRunOverASecond(Reader reader) throws IOException {
        FuzzRun.Result result = new FuzzRun(reader, 7, failures).run(RUNS);

        assertThat(failures).isEmptyDirectory();
        assertThat(result.failures()).isZero();
        assertThat(result.counts().values().stream().mapToLong(Long::longValue).sum())
                .isEqualTo(RUNS);
    }

    @ParameterizedTest
    @MethodSource("readers")
    void mutantsAreOfManyKinds(Reader reader) throws IOException {
        FuzzRun.Result result = new FuzzRun(reader, 11, failures).run(RUNS);

        assertThat(result.counts()).hasSizeGreaterThan(1);
        assertThat(result.bred()).isGreaterThan(5);
    }
}
