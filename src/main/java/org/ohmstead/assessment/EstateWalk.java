package org.ohmstead.assessment;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.StringView;
import org.ohmstead.ledger.StringSurveys;
import org.ohmstead.ledger.SurveyLedger;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * One walk over the estate: all surveys in one ordered stream, some strings at a time. While some are being stored, the next
 * are judged and those after them are read; no more than these are held at once.
 */
@Component
class EstateWalk {

    private static final int CHUNK = 25;

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final AssessmentWriter writer;
    private final Runs runs;
    private final Access access;
    private final ApplicationEventPublisher events;
    private final TransactionTemplate ownTransaction;
    private final Clock clock;
    private final Judging judging;

    EstateWalk(
            FleetRegister register,
            SurveyLedger ledger,
            AssessmentWriter writer,
            Runs runs,
            Access access,
            ApplicationEventPublisher events,
            PlatformTransactionManager transactions,
            Clock clock,
            Judging judging) {
        this.register = register;
        this.ledger = ledger;
        this.writer = writer;
        this.runs = runs;
        this.access = access;
        this.events = events;
        this.ownTransaction = new TransactionTemplate(transactions);
        ownTransaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.clock = clock;
        this.judging = judging;
    }

    /** Strings without a survey have none to be judged again; they are judged when the register changes. */
    void through(long runId) {
        List<Long> strings = register.strings().stream().map(StringView::id).toList();
        runs.start(runId, strings.size());
        try (OneAhead judge = new OneAhead();
                OneAhead store = new OneAhead()) {
            Pass pass = new Pass(runId, writer.inForce());
            Chunks chunks = new Chunks(chunk -> judge.submit(() -> access.asSystem(Assessments.ACTOR, () -> {
                List<Judged> news = pass.news(chunk);
                store.submit(() -> access.asSystem(Assessments.ACTOR, () -> pass.store(chunk.size(), news)));
            })));
            ledger.streamAll(chunks::take);
            chunks.finish();
            judge.await();
            store.await();
        }
    }

    /** Gathers strings and hands them on some at a time. */
    private static final class Chunks {

        private final Consumer<List<StringSurveys>> consumer;
        private List<StringSurveys> gathered = new ArrayList<>(CHUNK);

        Chunks(Consumer<List<StringSurveys>> consumer) {
            this.consumer = consumer;
        }

        void take(StringSurveys surveys) {
            gathered.add(surveys);
            if (gathered.size() == CHUNK) {
                finish();
            }
        }

        void finish() {
            consumer.accept(gathered);
            gathered = new ArrayList<>(CHUNK);
        }
    }

    /** The state of one walk; what it counts is counted by one thread after the other, never by two at once. */
    private final class Pass {

        private final long runId;
        private final Map<Long, String> inForceAtStart;
        private int seen;
        private int judged;

        Pass(long runId, Map<Long, String> inForceAtStart) {
            this.runId = runId;
            this.inForceAtStart = inForceAtStart;
        }

        /** Looked at on all processors. Whatever changes from here on is news that keeps it from being stored. */
        List<Judged> news(List<StringSurveys> chunk) {
            judging.refresh();
            Map<Long, StringBlueprint> blueprints = register.blueprints(
                    chunk.stream().map(StringSurveys::stringId).toList());
            return judging.judge(chunk.parallelStream()
                    .filter(surveys -> blueprints.containsKey(surveys.stringId()))
                    .map(surveys -> history(Objects.requireNonNull(blueprints.get(surveys.stringId())), surveys))
                    .map(judging::known)
                    .filter(this::isNew)
                    .toList());
        }

        /** @param looked how many strings the news are from */
        void store(int looked, List<Judged> news) {
            ownTransaction.executeWithoutResult(status -> {
                seen += looked;
                if (!news.isEmpty()) {
                    store(writer.withoutNews(news, inForceAtStart));
                }
                runs.progress(runId, seen, judged);
            });
        }

        private StringHistory history(StringBlueprint blueprint, StringSurveys surveys) {
            LocalDate today =
                    LocalDate.ofInstant(clock.instant(), blueprint.site().timeZone());
            return Histories.of(blueprint, surveys.surveys(), today);
        }

        private boolean isNew(Known known) {
            String word = AssessmentWriter.inForceWord(known.fingerprint());
            return !word.equals(inForceAtStart.get(known.stringId()));
        }

        private void store(List<Judged> news) {
            writer.store(news);
            events.publishEvent(new StringsAssessed(news.stream()
                    .map(one -> Assessments.announcement(one.judgement()))
                    .toList()));
            judged += news.size();
        }
    }
}
