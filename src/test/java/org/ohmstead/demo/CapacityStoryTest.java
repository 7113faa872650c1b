package org.ohmstead.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.capacity.model.DischargeFile;
import org.ohmstead.capacity.model.DischargeRecord;
import org.ohmstead.kernel.Partial;

class CapacityStoryTest {

    private static final LocalDate TODAY = LocalDate.parse("2026-03-10");

    private final DemoEstate estate = DemoEstate.on(TODAY);

    private double[] shares(int site, String name, LocalDate on) {
        CapacityStory story = CapacityStory.all().stream()
                .filter(one -> one.site() == site && one.string().equals(name))
                .findFirst()
                .orElseThrow();
        return new CapacityTruth(estate.string(site, name), story, TODAY).shares(on);
    }

    @Test
    void everyTestOfAStoryLiesBetweenServiceAndToday() {
        assertThat(CapacityStory.all()).allSatisfy(story -> {
            DemoString string = estate.string(story.site(), story.string());
            List<LocalDate> days = TestDays.of(string, story, TODAY);
            assertThat(days).isNotEmpty().isSorted().doesNotHaveDuplicates();
            assertThat(days)
                    .allMatch(day -> day.isAfter(string.entry().inServiceOn())
                            && day.isBefore(TODAY)
                            && day.getDayOfWeek().getValue() <= 5);
        });
    }

    /** The jar's ohmic value and its capacity have one cause. */
    @Test
    void aJarThatDriesOutLosesCapacityAndItsNeighboursDoNot() {
        double[] then = shares(2, "A", TODAY.minusYears(4));
        double[] now = shares(2, "A", TODAY);
        assertThat(now[6]).isLessThan(0.65);
        assertThat(then[6]).isGreaterThan(0.99);
        assertThat(now[5]).isGreaterThan(0.97);
    }

    @Test
    void aShortedCellLosesCapacityAlthoughItsOhmicValueFalls() {
        assertThat(shares(12, "A", TODAY)[25]).isLessThan(0.6);
        assertThat(shares(12, "A", TODAY.minusYears(1))[25]).isGreaterThan(0.95);
    }

    @Test
    void aReplacedJarHoldsWhatItsNeighboursHoldAgain() {
        assertThat(shares(9, "A", TODAY.minusMonths(21))[5]).isLessThan(0.8);
        assertThat(shares(9, "A", TODAY)[5]).isGreaterThan(0.99);
    }

    @Test
    void aWornStringHoldsLessThanAYoungOne() {
        assertThat(Arrays.stream(shares(37, "A", TODAY)).max().orElseThrow()).isLessThan(0.8);
        assertThat(Arrays.stream(shares(26, "A", TODAY)).min().orElseThrow()).isGreaterThan(0.98);
    }

    @Test
    void aDischargeIsReadAgainFromItsFileAsItWasWritten() {
        double[] shares = {1.02, 0.7, 1.01};
        DischargeRecord written =
                new DischargeSimulation(JarTypes.VENTED_500, 22, shares, new double[3], 7).record(false);
        Partial<DischargeRecord> read =
                DischargeFile.read(DischargeSimulation.csv(written).getBytes(StandardCharsets.UTF_8), 3);
        assertThat(read.isFlawless()).isTrue();
        assertThat(read.rows().get(0).jarVolts()).isDeepEqualTo(written.jarVolts());
        assertThat(read.rows().get(0).minutes()).isEqualTo(written.minutes());
    }
}
