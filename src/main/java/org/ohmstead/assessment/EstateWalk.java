package org.ohmstead.assessment;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

/** One walk over the estate: all surveys in one ordered stream, judgements stored some strings at a time. */
@Component
class EstateWalk {

    private static final int CHUNK = 50;

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final AssessmentWriter writer;
    private final Runs runs;
    private final ApplicationEventPublisher events;
    private final TransactionTemplate ownTransaction;
    private final Clock clock;
    private final Judging judging;

    EstateWalk(
            FleetRegister register,
            SurveyLedger ledger,
            AssessmentWriter writer,
            Runs runs,
            ApplicationEventPublisher events,
            PlatformTransactionManager transactions,
            Clock clock,
            Judging judging) {
        this.register = register;
        this.ledger = ledger;
        this.writer = writer;
        this.runs = runs;
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
        new Pass(runId, writer.inForce()).run();
    }

    /** The state of one walk. */
    private final class Pass {

        private final long runId;
        private final Map<Long, String> inForceAtStart;
        private final List<StringSurveys> chunk = new ArrayList<>(CHUNK);
        private int seen;
        private int judged;

        Pass(long runId, Map<Long, String> inForceAtStart) {
            this.runId = runId;
            this.inForceAtStart = inForceAtStart;
        }

        void run() {
            ledger.streamAll(this::take);
            finishChunk();
        }

        private void take(StringSurveys surveys) {
            chunk.add(surveys);
            if (chunk.size() == CHUNK) {
                finishChunk();
            }
        }

        private void finishChunk() {
            ownTransaction.executeWithoutResult(status -> {
                List<Judged> news = news();
                seen += chunk.size();
                if (!news.isEmpty()) {
                    store(writer.withoutNews(news, inForceAtStart));
                }
                runs.progress(runId, seen, judged);
            });
            chunk.clear();
        }

        private List<Judged> news() {
            Map<Long, StringBlueprint> blueprints = register.blueprints(
                    chunk.stream().map(StringSurveys::stringId).toList());
            List<StringHistory> news = new ArrayList<>();
            for (StringSurveys surveys : chunk) {
                StringBlueprint blueprint = blueprints.get(surveys.stringId());
                if (blueprint != null) {
                    addIfNew(news, blueprint, surveys);
                }
            }
            return judging.judge(news);
        }

        private void addIfNew(List<StringHistory> news, StringBlueprint blueprint, StringSurveys surveys) {
            LocalDate today =
                    LocalDate.ofInstant(clock.instant(), blueprint.site().timeZone());
            StringHistory history = Histories.of(blueprint, surveys.surveys(), today);
            String word = AssessmentWriter.inForceWord(judging.fingerprint(history));
            if (!word.equals(inForceAtStart.get(surveys.stringId()))) {
                news.add(history);
            }
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
