package org.ohmstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.check.Expectation;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.repair.Beside;

/** Lays a survey beside what its string's last surveys let expect, and beside itself after a repair. */
final class BenchLines {

    private static final int PERCENT = 100;

    private BenchLines() {}

    static List<BenchLine> of(Passage passage) {
        LaidOut now = passage.readings();
        if (now == null) {
            return List.of();
        }
        Beside expected = beside(passage, now);
        double[] links = Beside.means(now.linkMicroohms());
        return IntStream.rangeClosed(0, now.positions())
                .mapToObj(position -> new BenchLine(
                        position,
                        now.lines()[position],
                        at(now.ohmic(), position - 1),
                        at(expected.ohmic(), position - 1),
                        at(now.volts(), position - 1),
                        at(now.celsius(), position - 1),
                        at(links, position),
                        at(expected.linkMicroohms(), position)))
                .toList();
    }

    static @Nullable Double misfitPercent(Passage passage) {
        LaidOut now = passage.readings();
        if (now == null) {
            return null;
        }
        double misfit = beside(passage, now).misfit(now);
        return Double.isFinite(misfit) ? PERCENT * misfit : null;
    }

    /** Places whose readings differ; none where the two are laid out along different strings. */
    static List<MovedPlace> moved(Passage before, Passage after) {
        LaidOut now = before.readings();
        LaidOut then = after.readings();
        if (now == null || then == null || now.positions() != then.positions()) {
            return List.of();
        }
        Beside expected = beside(after, then);
        double[] links = Beside.means(now.linkMicroohms());
        double[] linksThen = Beside.means(then.linkMicroohms());
        List<MovedPlace> moved = new ArrayList<>();
        for (int position = 0; position <= now.positions(); position++) {
            MovedPlace place = new MovedPlace(
                    position,
                    at(now.ohmic(), position - 1),
                    at(then.ohmic(), position - 1),
                    at(expected.ohmic(), position - 1),
                    at(now.volts(), position - 1),
                    at(then.volts(), position - 1),
                    at(links, position),
                    at(linksThen, position));
            if (isMoved(place)) {
                moved.add(place);
            }
        }
        return moved;
    }

    private static boolean isMoved(MovedPlace place) {
        return !Objects.equals(place.ohmic(), place.ohmicThen())
                || !Objects.equals(place.volts(), place.voltsThen())
                || !Objects.equals(place.linkMicroohms(), place.linkMicroohmsThen());
    }

    private static Beside beside(Passage passage, LaidOut survey) {
        Expectation expectation = Objects.requireNonNull(passage.expectation());
        return Beside.of(
                survey,
                Objects.requireNonNull(
                        Objects.requireNonNull(passage.sheet()).facts().ohmicKind()),
                expectation.recent());
    }

    private static @Nullable Double at(double[] values, int index) {
        return index < 0 || index >= values.length || !Double.isFinite(values[index]) ? null : values[index];
    }
}
