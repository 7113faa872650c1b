package org.ohmstead.intake.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.IntakeEstate;
import org.ohmstead.kernel.Refused;
import org.ohmstead.ledger.HistoryLoaded;
import org.ohmstead.ledger.SurveyAccepted;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

/** A history goes in, is killed, goes on, and comes again. */
@ServiceTest
@Import(IntakeEstate.class)
@RecordApplicationEvents
class HistoryTest {

    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final LocalDate FIRST = LocalDate.of(2019, 3, 10);

    @Autowired
    private Histories histories;

    @Autowired
    private HistoryRun run;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private IntakeEstate estate;

    @Autowired
    private Access access;

    @Autowired
    private People people;

    @Autowired
    private ApplicationEvents events;

    @TempDir
    private Path folder;

    private Person engineer;

    @BeforeEach
    void anEngineer() {
        String name = "history." + COUNT.incrementAndGet();
        engineer = access.asSystem("test", () -> {
            people.open(new NewPerson(name, "Hanna History", Role.ENGINEER, Reach.EVERYWHERE));
            return people.findEnabled(name).orElseThrow();
        });
    }

    @Test
    void fiveHundredFilesBecomeFiveHundredSurveysAndTheirStringsAreAnnouncedOnce() {
        List<StringView> strings =
                java.util.stream.Stream.generate(estate::stringOfSix).limit(25).toList();
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int quarter = 0; quarter < 20; quarter++) {
            for (StringView string : strings) {
                files.put(string.siteCode() + "/" + quarter + ".csv", sheet(string, quarter));
            }
        }

        HistoryView load = receive("estate.zip", zip(files));
        perform(load.id());

        HistoryView done = load(load.id());
        assertThat(done.counts()).isEqualTo(Map.of(FileOutcome.ACCEPTED, 500L));
        assertThat(done.finishedAt()).isNotNull();
        assertThat(strings).allSatisfy(string -> assertThat(surveysOf(string)).isEqualTo(20));
        assertThat(events.stream(SurveyAccepted.class)).isEmpty();
        assertThat(events.stream(HistoryLoaded.class))
                .containsExactly(new HistoryLoaded(java.util.Set.copyOf(
                        strings.stream().map(StringView::id).toList())));
    }

    @Test
    void anEndOnTheWayLosesNothingAndTheNextRunGoesOnWhereItStopped() {
        StringView string = estate.stringOfSix();
        HistoryView load = receive("years.zip", zip(years(string, 6)));
        access.as(engineer, () -> run.takeNext(load.id()) && run.takeNext(load.id()));
        List<UUID> before = receipts(load.id());
        AtomicInteger asked = new AtomicInteger();

        assertThatThrownBy(() -> run.perform(load.id(), () -> asked.incrementAndGet() > 2))
                .hasMessageContaining("goes on after the service has started again");
        assertThat(load(load.id()).done()).isEqualTo(4);
        perform(load.id());

        assertThat(load(load.id()).counts()).isEqualTo(Map.of(FileOutcome.ACCEPTED, 6L));
        assertThat(receipts(load.id())).containsAll(before).hasSize(6);
        assertThat(surveysOf(string)).isEqualTo(6);
    }

    @Test
    void theSameHistoryAgainIsTheFirstLoadAndTheSameFilesInAnotherAreTheirFirstSurveys() {
        StringView string = estate.stringOfSix();
        Map<String, byte[]> files = years(string, 3);
        HistoryView load = receive("one.zip", zip(files));
        perform(load.id());

        HistoryReceipt again = access.as(engineer, () -> sent("renamed.zip", zip(files)));
        files.put("another.csv", sheet(string, 9));
        HistoryView more = receive("more.zip", zip(files));
        perform(more.id());

        assertThat(again.isNew()).isFalse();
        assertThat(again.load().id()).isEqualTo(load.id());
        assertThat(load(more.id()).counts()).isEqualTo(Map.of(FileOutcome.ACCEPTED, 4L));
        assertThat(surveysOf(string)).isEqualTo(4);
    }

    @Test
    void oneLongFileIsTakenSheetBySheetAndKeepsItsBytes() {
        StringView string = estate.stringOfSix();
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        years(string, 5).values().forEach(file::writeBytes);

        HistoryView load = receive("all.csv", file.toByteArray());
        perform(load.id());

        assertThat(load(load.id()).counts()).isEqualTo(Map.of(FileOutcome.ACCEPTED, 5L));
        assertThat(files(load.id()))
                .extracting(HistoryFile::fileName)
                .startsWith("all.csv from line 1", "all.csv from line 17");
    }

    /** The files are named against the order of time; each survey is to be compared with the ones before it. */
    @Test
    void filesAreWorkedThroughInTheOrderOfTime() {
        StringView string = estate.stringOfSix();
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int quarter = 5; quarter >= 0; quarter--) {
            files.put((9 - quarter) + ".csv", sheet(string, quarter));
        }

        HistoryView load = receive("back.zip", zip(files));
        access.as(engineer, () -> run.takeNext(load.id()));

        assertThat(files(load.id()))
                .filteredOn(file -> file.outcome() == FileOutcome.ACCEPTED)
                .extracting(HistoryFile::fileName)
                .containsExactly("9.csv");
    }

    @Test
    void doubtfulFilesAreHeldWithTheirReceiptAndOthersAreRefusedWithAReason() {
        StringView string = estate.stringOfSix();
        Map<String, byte[]> files = years(string, 1);
        files.put(
                "unclosed.csv",
                IntakeEstate.sheetOf(string, "2026-02-10T09:30", 5).getBytes(StandardCharsets.UTF_8));
        files.put("letter.pdf", "%PDF-1.7\u0000".getBytes(StandardCharsets.UTF_8));
        files.put("inner.zip", zip(years(string, 2)));
        files.put("__MACOSX/._unclosed.csv", new byte[] {0, 1});

        HistoryView load = receive("mixed.zip", zip(files));
        perform(load.id());

        assertThat(load(load.id()).counts())
                .isEqualTo(Map.of(FileOutcome.ACCEPTED, 1L, FileOutcome.HELD, 1L, FileOutcome.REFUSED, 2L));
        assertThat(files(load.id())).allSatisfy(file -> {
            assertThat(file.uploadId()).isNotNull();
            assertThat(file.said().isEmpty()).isEqualTo(file.outcome() == FileOutcome.ACCEPTED);
        });
    }

    @Test
    void whatIsNoHistoryIsRefusedAndLeavesNothing() {
        assertThatThrownBy(() -> receive("empty.zip", new byte[0]))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("empty");
        assertThatThrownBy(() -> receive("none.zip", zip(Map.of())))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("holds no file");
        assertThatThrownBy(() -> receive("bomb.zip", zip(Map.of("walk.csv", new byte[8 << 20]))))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("unfolds to more than 200 times");
        byte[] cut = zip(years(estate.stringOfSix(), 2));
        assertThatThrownBy(() -> receive("cut.zip", java.util.Arrays.copyOf(cut, cut.length - 30)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("cut off");
        assertThat(access.as(engineer, histories::recent))
                .extracting(HistoryView::receivedBy)
                .doesNotContain(engineer.username());
    }

    private static Map<String, byte[]> years(StringView string, int surveys) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int quarter = 0; quarter < surveys; quarter++) {
            files.put("folder/" + quarter + ".csv", sheet(string, quarter));
        }
        return files;
    }

    /** Every quarter another walk: no two surveys of a string have the same values. */
    private static byte[] sheet(StringView string, int quarter) {
        String takenAt = FIRST.plusMonths(3L * quarter) + "T09:30";
        String sheet = IntakeEstate.sheetOf(string, takenAt);
        for (int k = 1; k <= 6; k++) {
            String plain = String.format(java.util.Locale.ROOT, "\n%d,%.3f,", k, 0.41 + 0.001 * k);
            double grown = 0.41 + 0.001 * k + 0.0013 * quarter + 0.0007 * ((k * 7 + quarter * 5) % 11);
            sheet = sheet.replace(plain, String.format(java.util.Locale.ROOT, "\n%d,%.3f,", k, grown));
        }
        return sheet.getBytes(StandardCharsets.UTF_8);
    }

    private HistoryView receive(String name, byte[] bytes) {
        return access.as(engineer, () -> sent(name, bytes)).load();
    }

    private HistoryReceipt sent(String name, byte[] bytes) {
        try {
            return histories.receive(name, Files.write(folder.resolve("sent"), bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void perform(UUID id) {
        run.perform(id, () -> false);
    }

    private HistoryView load(UUID id) {
        return access.as(engineer, () -> histories.load(id));
    }

    private List<HistoryFile> files(UUID id) {
        return access.as(engineer, () -> histories.files(id, null, 0, 1_000));
    }

    private List<UUID> receipts(UUID id) {
        return files(id).stream()
                .map(HistoryFile::uploadId)
                .filter(java.util.Objects::nonNull)
                .toList();
    }

    private int surveysOf(StringView string) {
        return access.as(engineer, () -> ledger.surveysOf(string.id())).size();
    }

    /** The same files make the same bytes, however long it takes. */
    static byte[] zip(Map<String, byte[]> files) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(FIRST.atStartOfDay());
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
