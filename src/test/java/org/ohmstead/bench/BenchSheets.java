package org.ohmstead.bench;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SheetFacts;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.ledger.BulkLedger;
import org.ohmstead.ledger.BulkOutcome;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;

/** A file of many survey sheets on its way through the product's reader into the ledger; the reader runs ahead. */
final class BenchSheets {

    private static final int AHEAD = 2_000;

    private final Map<String, StringView> strings = new HashMap<>();

    BenchSheets(List<StringView> strings) {
        strings.forEach(string -> this.strings.put(string.title(), string));
    }

    BulkOutcome load(byte[] file, BulkLedger ledger) {
        BlockingQueue<List<NewSurvey>> queue = new ArrayBlockingQueue<>(AHEAD);
        CompletableFuture<Void> reading = CompletableFuture.runAsync(() -> read(file, queue));
        BulkOutcome outcome = ledger.copyIn(Stream.generate(() -> take(queue))
                .takeWhile(batch -> !batch.isEmpty())
                .flatMap(List::stream));
        reading.join();
        return outcome;
    }

    private void read(byte[] file, BlockingQueue<List<NewSurvey>> queue) {
        try {
            SheetReader.read(ByteSource.of(file), sheet -> put(queue, List.of(survey(sheet))));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } finally {
            put(queue, List.of());
        }
    }

    private NewSurvey survey(SurveySheet sheet) {
        SheetFacts facts = sheet.facts();
        StringView string = Objects.requireNonNull(strings.get(facts.site() + " / " + facts.string()));
        return NewSurvey.of(facts(string.id(), facts), readings(sheet.rows(), string.positions()));
    }

    private static SurveyFacts facts(long stringId, SheetFacts facts) {
        var takenAt = Objects.requireNonNull(facts.takenAt());
        return new SurveyFacts(
                stringId,
                takenAt.instant(BenchEstate.ZONE),
                takenAt.date(BenchEstate.ZONE),
                facts.takenBy(),
                facts.instrument(),
                facts.calibrationDue(),
                Objects.requireNonNull(facts.ohmicKind()),
                facts.ohmicHertz(),
                facts.ambientCelsius(),
                facts.stringVolts(),
                facts.floatAmps(),
                facts.rippleAmps(),
                facts.rippleVolts(),
                facts.injectedAmps(),
                facts.clampedAmps(),
                facts.onFloat(),
                facts.note());
    }

    private static Readings readings(List<ReadingRow> rows, int jars) {
        double[] ohmic = new double[jars];
        double[] volts = new double[jars];
        double[] celsius = new double[jars];
        double[] gravity = new double[jars];
        double[][] links = new double[jars + 1][];
        for (ReadingRow row : rows) {
            links[row.position()] = row.linkMicroohms();
            if (row.position() > 0) {
                ohmic[row.position() - 1] = row.ohmic();
                volts[row.position() - 1] = row.volts();
                celsius[row.position() - 1] = row.celsius();
                gravity[row.position() - 1] = row.gravity();
            }
        }
        return new Readings(ohmic, volts, celsius, gravity, links);
    }

    private static <T> void put(BlockingQueue<T> queue, T value) {
        try {
            queue.put(value);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static <T> T take(BlockingQueue<T> queue) {
        try {
            return queue.take();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
