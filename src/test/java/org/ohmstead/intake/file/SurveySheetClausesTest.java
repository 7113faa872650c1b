package org.ohmstead.intake.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every clause of docs/survey-files.md has an example file, and beside it what reading it comes to. */
class SurveySheetClausesTest {

    private static final Path EXAMPLES = Path.of("docs/examples/survey-sheet");

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> !file.toString().endsWith(".txt"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anExampleIsReadAsItsClauseSays(Path example) throws IOException {
        String outcome = Rendition.of(() -> Files.newInputStream(example));

        assertThat(outcome).isEqualTo(Files.readString(outcomeOf(example)));
    }

    @Test
    void everyExampleStandsInTheGuideAndEveryClauseHasItsExample() throws IOException {
        String guide = Files.readString(Path.of("docs/survey-files.md"));

        assertThat(examples())
                .hasSizeGreaterThan(50)
                .allSatisfy(example -> assertThat(guide).contains("examples/survey-sheet/" + example.getFileName()));
    }

    private static Path outcomeOf(Path example) {
        return example.resolveSibling(example.getFileName().toString().replaceFirst("\\.[a-z]+$", ".outcome.txt"));
    }
}
