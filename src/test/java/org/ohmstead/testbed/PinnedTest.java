package org.ohmstead.testbed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * No outside check, but one against changing unawares what is said: the same parameters say the same of the same readings.
 * `org.ohmstead.testbed.Pinned` writes the files.
 */
class PinnedTest {
    private static final int FIRST_NUMBER = 6;
    /** Of the value: room for another processor's last digits, far below any change of arithmetic. */
    private static final double TOLERANCE = 1e-8;

    @Test
    void theForecastSaysOfInventedStringsWhatThisVersionSaid() throws IOException {
        List<String> then = Files.readAllLines(Pinned.FORECASTS);
        List<String> now = Pinned.forecasts();
        assertThat(now).hasSameSizeAs(then);
        assertThat(now.get(0)).isEqualTo(then.get(0));
        for (int k = 1; k < now.size(); k++) {
            isTheSame(now.get(k).split(",", -1), then.get(k).split(",", -1), now.get(k));
        }
    }

    private static void isTheSame(String[] now, String[] then, String line) {
        assertThat(now).hasSameSizeAs(then);
        for (int c = 0; c < now.length; c++) {
            if (c < FIRST_NUMBER) {
                assertThat(now[c]).as(line).isEqualTo(then[c]);
            } else {
                double expected = Double.parseDouble(then[c]);
                double room = TOLERANCE * Math.max(1e-3, Math.abs(expected));
                assertThat(Double.parseDouble(now[c])).as(line).isCloseTo(expected, within(room));
            }
        }
    }

    @Test
    void rulesAndForecastTogetherSayOfThemWhatTheySaid() throws IOException {
        assertThat(String.join("\n", Pinned.judgements()))
                .isEqualTo(String.join("\n", Files.readAllLines(Pinned.JUDGEMENTS)));
    }
}
