package org.ohmstead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.StringView;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;

/** Many hand in at the same moment. */
@ServiceTest
@Import(IntakeEstate.class)
class IntakeTogetherTest {

    private static final int AT_ONCE = 6;

    @Autowired
    private Intake intake;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private IntakeEstate estate;

    @Autowired
    private Access access;

    @Test
    void theSameUploadFromManyMakesOneSurveyAndOneReceipt() throws Exception {
        StringView string = estate.stringOfSix();
        UUID name = UUID.randomUUID();

        List<Receipt> receipts = allAtOnce(n -> new Handover(name, "walk.csv", sheet(string, 10), null));

        assertThat(receipts)
                .extracting(Receipt::upload)
                .containsOnly(receipts.get(0).upload());
        assertThat(receipts).filteredOn(Receipt::isNew).hasSize(1);
        assertThat(surveysOf(string)).isEqualTo(1);
    }

    @Test
    void theSameFileUnderManyNamesMakesOneSurvey() throws Exception {
        StringView string = estate.stringOfSix();

        List<Receipt> receipts = allAtOnce(n -> new Handover(UUID.randomUUID(), "walk.csv", sheet(string, 10), null));

        assertThat(receipts).extracting(receipt -> receipt.upload().surveyId()).doesNotContainNull();
        assertThat(receipts.stream().map(receipt -> receipt.upload().surveyId()).distinct())
                .hasSize(1);
        assertThat(surveysOf(string)).isEqualTo(1);
    }

    @Test
    void differentSurveysOfOneDayAtOnceAreAcceptedOnceAndHeldOtherwise() throws Exception {
        StringView string = estate.stringOfSix();

        List<Receipt> receipts =
                allAtOnce(n -> new Handover(UUID.randomUUID(), "walk.csv", sheet(string, 10 + n), null));

        assertThat(receipts)
                .extracting(receipt -> receipt.upload().state())
                .containsOnlyOnce(UploadState.ACCEPTED)
                .containsOnly(UploadState.ACCEPTED, UploadState.HELD);
        assertThat(surveysOf(string)).isEqualTo(1);
    }

    private List<Receipt> allAtOnce(IntFunction<Handover> handovers) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(AT_ONCE);
        CyclicBarrier start = new CyclicBarrier(AT_ONCE);
        try {
            List<Callable<Receipt>> tasks = new ArrayList<>();
            for (int n = 0; n < AT_ONCE; n++) {
                Handover handover = handovers.apply(n);
                tasks.add(() -> {
                    start.await();
                    return access.asSystem("intake test", () -> intake.receive(handover));
                });
            }
            List<Receipt> receipts = new ArrayList<>();
            for (Future<Receipt> future : threads.invokeAll(tasks)) {
                receipts.add(future.get());
            }
            return receipts;
        } finally {
            threads.shutdownNow();
        }
    }

    private static byte[] sheet(StringView string, int hour) {
        return IntakeEstate.sheetOf(string, "2026-03-01T" + hour + ":00").getBytes(StandardCharsets.UTF_8);
    }

    private int surveysOf(StringView string) {
        return access.asSystem(
                "intake test", () -> ledger.surveysOf(string.id()).size());
    }
}
