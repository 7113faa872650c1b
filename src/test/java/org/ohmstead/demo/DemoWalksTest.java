package org.ohmstead.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmstead.intake.forensics.Fingerprint;
import org.ohmstead.intake.forensics.Series;
import org.ohmstead.intake.forensics.WalkJudge;
import org.ohmstead.intake.forensics.WalkVerdict;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;

/** Every survey of the demo was walked in order, whatever trouble its jars and links have. */
class DemoWalksTest {

    private static final int RECENT = 6;
    private static final int JUDGED = 6;

    private static final LocalDate TODAY = LocalDate.parse("2026-03-10");

    private final DemoEstate estate = DemoEstate.on(TODAY);
    private final Map<String, List<List<Series>>> histories = new HashMap<>();

    @Test
    void noWalkOfTheDemoIsTakenForAWrongOne() {
        List<String> accused = new ArrayList<>();
        int judged = 0;
        for (DemoString string : estate.strings()) {
            List<List<Series>> history = history(string);
            for (int k = Math.max(2, history.size() - JUDGED); k < history.size(); k++) {
                WalkVerdict verdict = WalkJudge.judge(
                        Fingerprint.of(string.positions(), recent(history, k)), neighbours(string, k), history.get(k));
                judged++;
                if (!verdict.isInOrder()) {
                    accused.add(string.title() + ", survey " + k + ": " + verdict);
                }
            }
        }
        assertThat(judged).isGreaterThan(400);
        assertThat(accused).isEmpty();
    }

    private Map<String, Fingerprint> neighbours(DemoString string, int k) {
        Map<String, Fingerprint> neighbours = new LinkedHashMap<>();
        for (DemoString other : estate.strings()) {
            boolean besides = other.entry().site().equals(string.entry().site())
                    && other.positions() == string.positions()
                    && !other.title().equals(string.title());
            if (besides) {
                List<List<Series>> history = history(other);
                int until = Math.min(k, history.size());
                neighbours.put(other.title(), Fingerprint.of(other.positions(), recent(history, until)));
            }
        }
        return neighbours;
    }

    private static List<List<Series>> recent(List<List<Series>> history, int until) {
        return history.subList(Math.max(0, until - RECENT), until);
    }

    private List<List<Series>> history(DemoString string) {
        return histories.computeIfAbsent(
                string.title(),
                title -> new Simulation(string, TODAY)
                        .history(1).stream()
                                .map(NewSurvey::readings)
                                .map(DemoWalksTest::series)
                                .toList());
    }

    private static List<Series> series(Readings readings) {
        double[] links = Arrays.stream(readings.linkMicroohms())
                .mapToDouble(straps ->
                        1 / Arrays.stream(straps).map(value -> 1 / value).sum())
                .toArray();
        return List.of(Series.ofOhmicValues(readings.ohmic()), Series.ofVolts(readings.volts()), Series.ofLinks(links));
    }
}
