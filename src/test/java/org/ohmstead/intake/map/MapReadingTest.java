package org.ohmstead.intake.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.file.Weight;
import tools.jackson.databind.json.JsonMapper;

/** Six invented tables tell of one and the same walk; each is held against the survey sheet of that walk. */
class MapReadingTest {

    private static final Path MAPS = Path.of("docs/examples/maps");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1-row-per-jar.csv",
                "2-row-per-reading.txt",
                "3-block-per-quantity.txt",
                "4-links-in-rows-of-their-own.csv",
                "5-second-worksheet.xlsx",
                "6-two-surveys.json"
            })
    void aTableOfAnotherShapeBecomesTheSameSurvey(String example) throws IOException {
        MappedFile read = read(example);

        assertThat(read.fits()).isTrue();
        assertThat(read.findings()).isEmpty();
        SurveySheet survey = read.sheets().get(0);
        assertThat(survey.findings()).isEmpty();
        assertThat(survey.facts()).isEqualTo(expected().facts());
        assertThat(values(survey)).isEqualTo(values(expected()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2-row-per-reading.txt", "6-two-surveys.json"})
    void everyStringOfAFileBecomesASurvey(String example) throws IOException {
        List<SurveySheet> surveys = read(example).sheets();

        assertThat(surveys).extracting(survey -> survey.facts().string()).containsExactly("B", "C");
        assertThat(surveys.get(1).rows().get(1).ohmic()).isEqualTo(0.422);
    }

    @Test
    void everyStrapOfALinkIsRead() throws IOException {
        SurveySheet survey = read("5-second-worksheet.xlsx").sheets().get(0);

        assertThat(survey.rows().get(2).linkMicroohms()).containsExactly(24.6, 24.9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1-row-per-jar", "4-links-in-rows-of-their-own", "6-two-surveys"})
    void aMapFitsNoOtherTable(String map) throws IOException {
        byte[] other = "Jar,Ohms\n1,0.4\n".getBytes(StandardCharsets.UTF_8);

        assertThat(MapReading.read(ByteSource.of(other), map(map)).fits()).isFalse();
    }

    @Test
    void aNumberThatIsWrittenOtherwiseIsLostAndItsPlaceNamed() throws IOException {
        String text = Files.readString(MAPS.resolve("4-links-in-rows-of-their-own.csv"))
                .replace("Jar 2,0.415", "Jar 2,\"0,415\"");

        MappedFile read = MapReading.read(
                ByteSource.of(text.getBytes(StandardCharsets.UTF_8)), map("4-links-in-rows-of-their-own"));

        assertThat(read.findings()).extracting(Finding::weight).containsExactly(Weight.VALUE_LOST);
        assertThat(read.findings().get(0).flaw().place()).isEqualTo("line 13, column 2");
        assertThat(read.sheets().get(0).rows().get(2).ohmic()).isNaN();
    }

    @Test
    void aWordThatIsNoPlaceIsLostUnlessItIsPassedOver() throws IOException {
        byte[] bytes = Files.readAllBytes(MAPS.resolve("1-row-per-jar.csv"));
        byte[] other =
                new String(bytes, "windows-1252").replace("Mittel", "Streuung").getBytes("windows-1252");

        assertThat(MapReading.read(ByteSource.of(other), map("1-row-per-jar")).findings())
                .extracting(finding -> finding.flaw().value())
                .containsExactly("Streuung");
    }

    private static MappedFile read(String example) throws IOException {
        return MapReading.read(
                () -> Files.newInputStream(MAPS.resolve(example)), map(example.replaceFirst("\\.[a-z]+$", "")));
    }

    static ColumnMap map(String name) throws IOException {
        return JsonMapper.shared().readValue(Files.readString(MAPS.resolve(name + ".map.json")), ColumnMap.class);
    }

    private static SurveySheet expected() throws IOException {
        List<SurveySheet> sheets = new ArrayList<>();
        SheetReader.read(() -> Files.newInputStream(MAPS.resolve("expected.csv")), sheets::add);
        return sheets.get(0);
    }

    private static List<String> values(SurveySheet survey) {
        return survey.rows().stream().map(MapReadingTest::values).toList();
    }

    private static String values(ReadingRow row) {
        return row.position() + ": " + row.ohmic() + " " + row.volts() + " " + row.linkMicroohms()[0];
    }
}
