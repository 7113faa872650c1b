package org.ohmstead.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.ledger.NewSurvey;

/**
 * The sample files in docs/examples are what the demo estate's own code writes. After a change of that code run this test
 * with {@code OHMSTEAD_SAMPLES=write} in the environment to write them anew.
 */
class SampleFilesTest {

    /** A Monday: no survey of the demo falls on one, so that a sample never meets a survey of the same day. */
    private static final LocalDate SAMPLE_DAY = LocalDate.parse("2025-11-17");

    private static final Path EXAMPLES = Path.of("docs/examples");

    private final DemoEstate estate = DemoEstate.on(SAMPLE_DAY);

    @ParameterizedTest
    @EnumSource
    void theSampleFileIsWhatTheDemoWrites(SampleSheet sample) throws IOException {
        Path file = EXAMPLES.resolve(sample.fileName());
        String text = sample.text(estate, SAMPLE_DAY);
        if ("write".equals(System.getenv("OHMSTEAD_SAMPLES"))) {
            Files.writeString(file, text);
        }
        assertThat(file).content().isEqualTo(text);
    }

    @ParameterizedTest
    @EnumSource
    void theSampleFileReadsWithoutAFinding(SampleSheet sample) throws IOException {
        SurveySheet sheet = read(sample.text(estate, SAMPLE_DAY));
        assertThat(sheet.findings()).isEmpty();
        assertThat(sheet.isReadable()).isTrue();
    }

    @ParameterizedTest
    @EnumSource
    void theStringOfTheSampleIsOldEnoughForManyYearsOfDemos(SampleSheet sample) throws IOException {
        SurveySheet sheet = read(sample.text(estate, SAMPLE_DAY));
        LocalDate yearsOn = SAMPLE_DAY.plusYears(5);
        assertThat(DemoEstate.on(yearsOn).strings())
                .filteredOn(string -> string.title()
                        .equals(sheet.facts().site() + " / " + sheet.facts().string()))
                .singleElement()
                .satisfies(string -> assertThat(string.entry().inServiceOn()).isBefore(SAMPLE_DAY));
    }

    @Test
    void aSheetReadsBackAsTheSurveyItWasWrittenFrom() throws IOException {
        for (int site : List.of(4, 2, 3, 34)) {
            NewSurvey survey =
                    new Simulation(estate.string(site, "A"), SAMPLE_DAY).survey(1, SAMPLE_DAY, SAMPLE_DAY, 1);
            SurveySheet sheet = read(SheetText.of(survey, "ANY-01", "A", SAMPLE_DAY.atTime(9, 30)));
            assertThat(sheet.findings()).isEmpty();
            assertThat(sheet.facts().clampedAmps()).isEqualTo(survey.facts().clampedAmps());
            assertThat(sheet.facts().instrument()).isEqualTo(survey.facts().instrument());
            assertThat(sheet.rows()).hasSize(survey.readings().positions() + 1);
            sheet.rows().forEach(row -> assertRowReadsBack(row, survey));
        }
    }

    private static void assertRowReadsBack(ReadingRow row, NewSurvey survey) {
        double[] straps = survey.readings().linkMicroohms()[row.position()];
        assertThat(row.linkMicroohms()).startsWith(straps);
        if (row.position() > 0) {
            assertThat(row.ohmic()).isEqualTo(Double.valueOf(survey.readings().ohmic()[row.position() - 1]));
            assertThat(row.volts()).isEqualTo(Double.valueOf(survey.readings().volts()[row.position() - 1]));
            assertThat(row.celsius()).isEqualTo(Double.valueOf(survey.readings().celsius()[row.position() - 1]));
            assertThat(row.gravity()).isEqualTo(Double.valueOf(survey.readings().gravity()[row.position() - 1]));
        }
    }

    private static SurveySheet read(String text) throws IOException {
        List<SurveySheet> sheets = new ArrayList<>();
        SheetReader.read(ByteSource.of(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)), sheets::add);
        assertThat(sheets).hasSize(1);
        return sheets.get(0);
    }
}
