package org.ohmstead.bench;

import java.util.Arrays;
import javax.sql.DataSource;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.ledger.BulkLedger;
import org.ohmstead.ledger.StringSurveys;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.context.ApplicationContext;

/** The whole estate judged, against merely reading its readings. */
final class AssessmentBench {

    private static final int RUNS = 3;

    private final Assessments assessments;
    private final SurveyLedger ledger;
    private final DataSource dataSource;
    private final BulkLedger bulk;
    private final BenchEstate estate;
    private final int surveysPerString;

    /** @param surveysPerString that are known at the start */
    AssessmentBench(ApplicationContext service, BenchEstate estate, int surveysPerString) {
        this.surveysPerString = surveysPerString;
        this.estate = estate;
        this.bulk = service.getBean(BulkLedger.class);
        this.assessments = service.getBean(Assessments.class);
        this.ledger = service.getBean(SurveyLedger.class);
        this.dataSource = service.getBean(DataSource.class);
    }

    /** Unmeasured. */
    void assess() {
        assessments.reassessEstate();
    }

    void run(Results results) {
        double reading = Stopwatch.median(RUNS, () -> new Sum().over(ledger));
        double raw = Stopwatch.median(
                RUNS,
                () -> new RawCopy(dataSource)
                        .take("select string_id, taken_at, ohmic, volts, celsius, gravity, link_microohms from survey"
                                + " order by string_id, taken_at, id"));
        double judging = Stopwatch.seconds(assessments::reassessEstate);
        results.times("whole estate assessed and stored", "reading every reading", judging, reading, "≤ 3 ×");
        addEarlierSurveys();
        double amended = Stopwatch.seconds(assessments::reassessEstate);
        results.times(
                "all of it anew, an earlier survey having come in late", "reading every reading", amended, reading, "");
        addLaterSurveys();
        double later = Stopwatch.seconds(assessments::reassessEstate);
        results.times("every string one survey further", "reading every reading", later, reading, "");
        double again = Stopwatch.median(RUNS, assessments::reassessEstate);
        results.times("whole estate once more (no news)", "reading every reading", again, reading, "≤ 3 ×");
        results.times("every reading through the ledger's stream", "raw COPY out of the same rows", reading, raw, "");
    }

    /** One each, before all that is known: then every string is followed from its start again, by code that is warm. */
    private void addEarlierSurveys() {
        bulk.copyIn(estate.strings().stream()
                .map(string -> BenchSurveys.survey(string, BenchEstate.IN_SERVICE.plusMonths(3), -1)));
    }

    /** One each, after all that is known. */
    private void addLaterSurveys() {
        bulk.copyIn(estate.strings().stream().map(string -> BenchSurveys.next(string, surveysPerString)));
    }

    /** Touches every reading, so that none of the work can be left out. */
    private static final class Sum {

        private double total;

        double over(SurveyLedger ledger) {
            ledger.streamAll(this::add);
            return total;
        }

        private void add(StringSurveys string) {
            string.surveys().forEach(this::add);
        }

        private void add(SurveyRecord survey) {
            total += Arrays.stream(survey.readings().ohmic()).sum()
                    + Arrays.stream(survey.readings().volts()).sum()
                    + Arrays.stream(survey.readings().celsius()).sum();
            for (double[] straps : survey.readings().linkMicroohms()) {
                total += straps[0];
            }
        }
    }
}
