package org.ohmstead.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.ohmstead.demo.SheetText;
import org.ohmstead.fleet.StringView;
import org.ohmstead.ledger.BulkLedger;
import org.ohmstead.ledger.BulkOutcome;
import org.ohmstead.ledger.NewSurvey;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Half of the estate's history goes in as surveys, the other half as survey sheets. */
final class IngestBench {

    private static final String TARGET = "≥ 50 %";
    private static final String PLAIN = "create table bench_copy (like survey)";
    private static final String KEYED = "create table bench_copy (like survey including all)";

    private final BulkLedger ledger;
    private final DataSource dataSource;
    private final JdbcClient jdbc;
    private final BenchEstate estate;

    IngestBench(ApplicationContext service, BenchEstate estate) {
        this.ledger = service.getBean(BulkLedger.class);
        this.dataSource = service.getBean(DataSource.class);
        this.jdbc = service.getBean(JdbcClient.class);
        this.estate = estate;
    }

    void run(Results results) {
        List<StringView> strings = estate.strings();
        int tenth = Math.max(1, strings.size() / 10);
        // a tenth of the strings warms the machine up, by both ways
        load(strings.subList(0, tenth / 2));
        loadSheets(strings.subList(tenth / 2, tenth));
        int middle = (tenth + strings.size()) / 2;
        double parsed = load(strings.subList(tenth, middle));
        double floor = floor(strings.subList(tenth, middle), PLAIN);
        results.share("history of parsed surveys", "raw COPY of the rows, bare table", parsed, floor, TARGET);
        double keyed = floor(strings.subList(tenth, middle), KEYED);
        results.share("the same", "raw COPY, same key, indexes and checks", parsed, keyed, "");
        double sheets = loadSheets(strings.subList(middle, strings.size()));
        double sheetsFloor = floor(strings.subList(middle, strings.size()), PLAIN);
        results.share(
                "history of survey sheets (CSV)", "raw COPY of the rows, bare table", sheets, sheetsFloor, TARGET);
        double again =
                Stopwatch.seconds(() -> requireNothingStored(ledger.copyIn(history(strings.subList(tenth, middle)))));
        results.times("the same history once more (nothing is stored)", "its first load", again, parsed, "");
        jdbc.sql("vacuum analyze survey").update();
    }

    /** The whole history, unmeasured. */
    void loadAll() {
        ledger.copyIn(history(estate.strings()));
        jdbc.sql("vacuum analyze survey").update();
    }

    private Stream<NewSurvey> history(List<StringView> strings) {
        return strings.stream()
                .flatMap(string -> BenchSurveys.history(string, estate.scale().surveys()));
    }

    private double load(List<StringView> strings) {
        List<NewSurvey> surveys = history(strings).toList();
        return Stopwatch.seconds(() -> requireStored(ledger.copyIn(surveys.stream()), surveys.size()));
    }

    private double loadSheets(List<StringView> strings) {
        byte[] file = file(strings);
        BenchSheets sheets = new BenchSheets(strings);
        int surveys = strings.size() * estate.scale().surveys();
        return Stopwatch.seconds(() -> requireStored(sheets.load(file, ledger), surveys));
    }

    private byte[] file(List<StringView> strings) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        for (StringView string : strings) {
            BenchSurveys.history(string, estate.scale().surveys()).forEach(survey -> append(file, string, survey));
        }
        return file.toByteArray();
    }

    private static void append(ByteArrayOutputStream file, StringView string, NewSurvey survey) {
        var siteTime = survey.facts().takenAt().atZone(BenchEstate.ZONE).toLocalDateTime();
        String text = SheetText.of(survey, string.siteCode(), string.name(), siteTime);
        file.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }

    private double floor(List<StringView> strings, String table) {
        Long[] ids = strings.stream().map(StringView::id).toArray(Long[]::new);
        String list = Arrays.toString(ids).replace('[', '{').replace(']', '}');
        try {
            RawCopy copy = new RawCopy(dataSource);
            copy.take("select * from survey where string_id = any ('" + list + "'::bigint[]) order by id");
            double[] runs = {copy.seconds(table), copy.seconds(table), copy.seconds(table)};
            Arrays.sort(runs);
            return runs[1];
        } catch (SQLException e) {
            throw new IllegalStateException("The raw COPY failed", e);
        }
    }

    private static void requireStored(BulkOutcome outcome, int surveys) throws IOException {
        if (outcome.stored() != surveys) {
            throw new IOException("Of " + surveys + " surveys this became: " + outcome);
        }
    }

    private static void requireNothingStored(BulkOutcome outcome) throws IOException {
        requireStored(outcome, 0);
    }
}
