package org.ohmstead.capacity.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;
import org.ohmstead.kernel.Refused;

/** Records of a string of three single-cell jars with an end voltage of 1.75 V per cell, 5.25 V in all. */
class DischargeFileTest {

    /** The second jar reaches its line half way between 60 and 120 min and goes on falling; the string at 200 min. */
    private static final String RECORD = """
            minutes,amps,string_volts,jar_1,jar_2,jar_3
            0,0,6.69,2.23,2.23,2.23
            10,100,6.15,2.05,2.05,2.05
            60,100,6.00,2.00,2.00,2.00
            120,100,5.50,2.00,1.50,2.00
            180,102,5.45,1.95,1.55,1.95
            230,98,4.95,1.75,,1.75
            240,0,6.00,,,
            """;

    private static Partial<DischargeRecord> read(String text) {
        return DischargeFile.read(text.getBytes(StandardCharsets.UTF_8), 3);
    }

    private static DischargeFigures figures(String text) {
        return DischargeFigures.of(read(text).rows().get(0), 5.25, 1.75);
    }

    @Test
    void timeCountsFromTheFirstCurrentToTheEndVoltage() {
        DischargeFigures figures = figures(RECORD);
        // 5.45 V at 180 min falls to 4.95 V at 230 min: 5.25 V at 200 min, 190 min after current first flows
        assertThat(figures.minutes()).isCloseTo(190, within(1e-9));
        assertThat(figures.stoppedEarly()).isFalse();
        assertThat(figures.stringEndVolts()).isCloseTo(5.25, within(1e-9));
    }

    @Test
    void theMeanCurrentIsTakenOverTime() {
        // 110 min at 100 A, 60 min at 101 A on average, 20 min from 102 A down to 100.4 A
        assertThat(figures(RECORD).amps()).isCloseTo((110 * 100 + 60 * 101 + 20 * 101.2) / 190, within(1e-9));
    }

    @Test
    void eachJarHasItsOwnTimeAndItsVoltsAtTheEnd() {
        DischargeFigures figures = figures(RECORD);
        assertThat(figures.jarMinutes()[1]).isCloseTo(90 - 10, within(1e-9));
        assertThat(figures.jarMinutes()[0]).isNaN();
        assertThat(figures.jarEndVolts()[0]).isCloseTo(1.87, within(1e-9));
        assertThat(figures.jarEndVolts()[1])
                .as("not recorded any more at the end")
                .isNaN();
    }

    @Test
    void aRecordThatEndsAboveTheEndVoltageWasStoppedEarly() {
        DischargeFigures figures = figures("minutes,amps,string_volts\n0,100,6.2\n60,100,6.0\n");
        assertThat(figures.stoppedEarly()).isTrue();
        assertThat(figures.minutes()).isEqualTo(60);
        assertThat(figures.stringEndVolts()).isEqualTo(6.0);
        assertThat(figures.jarEndVolts()).isEmpty();
    }

    @Test
    void semicolonsGoWithDecimalCommas() {
        DischargeRecord record = read("minutes;amps;string_volts\n0;100,5;6,2\n1,5;99.5;6,0\n")
                .rows()
                .get(0);
        assertThat(record.amps()).containsExactly(100.5, 99.5);
        assertThat(record.minutes()).containsExactly(0, 1.5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            minutes,amps\\n0,1\\n1,1                          | line 1             | There is no column string_volts.
            minutes,amps,string_volts,cell\\n0,1,6,2          | line 1, column 4   | There is no such column.
            minutes,amps,string_volts,jar_4\\n0,1,6,2         | line 1, column 4   | The string has 3 jars.
            minutes,amps,string_volts,amps\\n0,1,6,2          | line 1, column 4   | The column stands there twice.
            minutes,amps,string_volts\\n0,1,6\\n1,abc,6       | line 3, column 2   | That is no number
            minutes,amps,string_volts\\n0,1,6\\n1,1,NaN       | line 3, column 3   | That is no number
            minutes,amps,string_volts\\n0,1,6\\n1,1,1e5       | line 3, column 3   | That is no number
            minutes,amps,string_volts\\n5,1,6\\n5,1,6         | line 3, column 1   | Time does not go on
            minutes,amps,string_volts\\n0,1,6\\n,1,6          | line 3             | The row has no minutes.
            minutes,amps,string_volts\\n0,1,6                 | the file           | fewer than two rows
            ''                                                | the file           | The file is empty.
            minutes,amps,string_volts\\n0,"1,6\\n             | the file           | does not fall into rows
            """)
    void eachFlawNamesItsPlaceAndARemedy(String text, String place, String message) {
        Flaw flaw = read(text.replace("\\n", "\n")).flaws().get(0);
        assertThat(flaw.place()).isEqualTo(place);
        assertThat(flaw.message()).contains(message);
        assertThat(flaw.remedy()).isNotBlank();
    }

    @Test
    void whatIsNoTextIsSaidToBeNone() {
        byte[] bytes = {(byte) 0xFF, (byte) 0xFE, 0x00};
        assertThat(DischargeFile.read(bytes, 3).flaws().get(0).message()).contains("not UTF-8");
    }

    @Test
    void aRecordWithoutADischargeIsRefused() {
        assertThatThrownBy(() -> figures("minutes,amps,string_volts\n0,0,6.2\n60,0,6.0\n"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("Current flows in fewer than two rows");
        assertThatThrownBy(() -> figures("minutes,amps,string_volts\n0,100,5.0\n60,100,4.0\n"))
                .hasMessageContaining("do not start above its end voltage");
    }

    @Test
    void noBytesBreakTheReader() {
        java.util.Random random = new java.util.Random(7);
        byte[] sound = RECORD.getBytes(StandardCharsets.UTF_8);
        for (int round = 0; round < 3000; round++) {
            byte[] bytes = Arrays.copyOf(sound, random.nextInt(sound.length) + 1);
            for (int i = 0; i < random.nextInt(6); i++) {
                bytes[random.nextInt(bytes.length)] = (byte) (random.nextInt(96) + 32);
            }
            Partial<DischargeRecord> read = DischargeFile.read(bytes, 3);
            assertThat(read.rows().isEmpty()).isEqualTo(!read.isFlawless());
            read.rows().forEach(record -> {
                try {
                    DischargeFigures figures = DischargeFigures.of(record, 5.25, 1.75);
                    assertThat(figures.minutes()).isPositive();
                } catch (Refused expected) {
                    assertThat(expected.getMessage()).isNotBlank();
                }
            });
        }
    }
}
