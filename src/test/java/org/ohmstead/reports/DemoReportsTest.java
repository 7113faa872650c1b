package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Section;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.test.context.ActiveProfiles;

/** The demo estate's reports, checked against the tables they come from; today is 10 March 2026. */
@ServiceTest
@ActiveProfiles({"test", "demo"})
class DemoReportsTest {

    @Autowired
    private ReportDesk desk;

    @Autowired
    private JarPrices prices;

    @Autowired
    private Programme programme;

    @Autowired
    private Compliance compliance;

    @Autowired
    private EvidencePack pack;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    private MadeReport made(ReportWish wish) {
        return access.asSystem("demo test", () -> desk.make(wish));
    }

    private static String text(MadeReport made) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        made.write(ReportForm.PDF, pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
            return new PDFTextStripper().getText(document);
        }
    }

    private long number(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }

    private static List<String> column(Section section, String title) {
        int at = section.columns().stream().map(Section.Column::title).toList().indexOf(title);
        return section.rows().stream().map(row -> row.get(at).shown()).toList();
    }

    @Test
    void everyReportComesInEveryFormAndNamesItsTimeZone() throws IOException {
        long survey = number("select max(id) from standing_survey");
        long string = number("select string_id from standing_survey order by id desc limit 1");
        for (ReportKind kind : access.asSystem("demo test", () -> desk.kinds())) {
            Long subject = kind.scope() == ReportKind.Scope.STRING
                    ? Long.valueOf(string)
                    : kind.scope() == ReportKind.Scope.SURVEY ? Long.valueOf(survey) : null;
            MadeReport made = made(new ReportWish(kind, null, subject, null));
            assertThat(made.name()).contains("Europe-London");
            assertThat(text(made)).contains("Europe/London", made.full().title());
            for (ReportForm form : List.of(ReportForm.CSV, ReportForm.XLSX)) {
                ByteArrayOutputStream file = new ByteArrayOutputStream();
                made.write(form, file);
                assertThat(file.size()).as(kind + " " + form).isGreaterThan(50);
            }
        }
    }

    @Test
    void theEstateStatusCountsEveryStringInServiceOnce() {
        Section strings =
                made(ReportWish.ofEstate(ReportKind.ESTATE, null)).full().section("Strings");
        assertThat(strings.rows())
                .hasSize((int) number("select count(*) from battery_string where retired_on is null"));
        assertThat(column(strings, "String")).doesNotHaveDuplicates();
        Section upland =
                made(ReportWish.ofEstate(ReportKind.ESTATE, "UPLAND")).full().section("Strings");
        assertThat(column(upland, "Area")).isNotEmpty().containsOnly("UPLAND");
    }

    /** The same jars, asked for in SQL; nobody has overruled anything in the demo. */
    @Test
    void theWarrantyListHoldsTheFailingJarsWhoseWarrantyRuns() {
        Section jars =
                made(ReportWish.ofEstate(ReportKind.WARRANTY, null)).full().section("Jars");
        List<String> expected = jdbc.sql("""
                        select s.code || ' / ' || b.name || ' ' || j.position
                        from jar_assessment j join battery_string b on b.id = j.string_id join site s on s.id = b.site_id
                        join occupancy o on o.string_id = j.string_id and o.position = j.position
                          and o.from_on <= date '2026-03-10' and (o.until_on is null or o.until_on > date '2026-03-10')
                        join jar_type t on t.id = o.jar_type_id
                        where j.urgency in ('ACT', 'PLAN') and b.retired_on is null
                          and date '2026-03-10' < o.from_on + make_interval(months => round(t.warranty_years * 12)::integer)
                        """).query(String.class).list();
        List<String> strings = column(jars, "String");
        List<String> positions = column(jars, "Position");
        assertThat(java.util.stream.IntStream.range(0, strings.size())
                        .mapToObj(i -> strings.get(i) + " " + positions.get(i))
                        .toList())
                .containsExactlyInAnyOrderElementsOf(expected);
        assertThat(column(jars, "What shows it")).isNotEmpty().noneMatch(String::isEmpty);
    }

    /** The same items, asked for in SQL; every missed duty is among them. */
    @Test
    void theWorkListHoldsWhatIsOpenAndEveryMissedDuty() {
        Section work = made(ReportWish.ofEstate(ReportKind.WORK, null)).full().section("Work");
        List<String> strings = column(work, "String");
        List<String> kinds = column(work, "Work");
        List<String> states = column(work, "State");
        assertThat(java.util.stream.IntStream.range(0, strings.size())
                        .mapToObj(i -> strings.get(i) + " " + kinds.get(i).toUpperCase(java.util.Locale.ROOT) + " "
                                + states.get(i))
                        .toList())
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(
                        jdbc.sql("""
                                select s.code || ' / ' || b.name || ' ' || replace(w.kind, '_', ' ') || ' ' || lower(w.state)
                                from work_item w join battery_string b on b.id = w.string_id join site s on s.id = b.site_id
                                where w.state in ('RAISED', 'PLANNED', 'DONE')""").query(String.class).list());
        long missed = access.asSystem("demo test", () -> programme.dutiesOfEstate(null)).stream()
                .flatMap(string -> string.duties().stream())
                .filter(duty -> duty.state() == DutyState.MISSED)
                .count();
        assertThat(kinds.stream().filter("Overdue duty"::equals).count()).isGreaterThanOrEqualTo(missed);
        assertThat(missed).isPositive();
    }

    /** A unit that asks for work has an item at it, unless so many do that the whole string has one. */
    @Test
    void everyJarAndLinkThatAsksToActIsOnTheList() {
        assertThat(jdbc.sql("""
                        with asking as (select string_id, 'JAR' as subject, position as unit from jar_assessment
                                        where urgency = 'ACT'
                                        union all
                                        select string_id, 'LINK', ordinal from link_assessment where urgency = 'ACT')
                        select count(*) from asking a join battery_string b on b.id = a.string_id
                        where b.retired_on is null
                          and not exists (select from work_item w where w.string_id = a.string_id
                                          and (w.subject = a.subject and w.unit = a.unit or w.kind = 'EQUALISE')
                                          and (w.state <> 'DISMISSED' or not w.closed_by_service))""").query(Long.class).single()).isZero();
    }

    /** One remark on a survey of this week, one doubt of a crew: no date of their strings is later than either. */
    @Test
    void aRemarkAndAPersonDemandReadingsThatReachTheNextDates() {
        assertThat(jdbc.sql("""
                        select w.source from work_item w join next_date d on d.string_id = w.string_id
                        where w.kind = 'MEASURE_AGAIN' and w.state = 'RAISED' and w.source in ('REMARK', 'PERSON')
                          and d.demanded_by = w.by_on and d.due_on <= w.by_on and w.by_on < d.interval_due_on""").query(String.class).list()).containsExactlyInAnyOrder("REMARK", "PERSON");
    }

    @Test
    void theDemosWorkIsInEveryState() {
        List<String> states = jdbc.sql("select distinct state from work_item")
                .query(String.class)
                .list();
        assertThat(states).containsExactlyInAnyOrder("RAISED", "PLANNED", "DONE", "PROVEN", "DISMISSED");
        Section unresolved =
                made(ReportWish.ofEstate(ReportKind.WORK, null)).full().section(UnresolvedTable.TITLE);
        assertThat(unresolved.sentence()).contains("2025-12-31");
    }

    @Test
    void aForecastCostsWhatTheUsersOwnPricesSayAndSaysWhatHasNone() throws IOException {
        access.asSystem("demo test", () -> {
            prices.set("VL-200", LocalDate.parse("2026-01-01"), "100", "GBP");
            prices.set("VL-200", LocalDate.parse("2026-07-01"), "250,50", "gbp");
            return null;
        });
        MadeReport made = made(ReportWish.ofEstate(ReportKind.REPLACEMENT, null));
        Section types = made.full().section("By jar type");
        double sum = 0;
        for (List<Cell> row : types.rows()) {
            if (row.get(0).shown().equals("VL-200")) {
                boolean later = row.get(1).shown().matches("Q[34] 2026|Q\\d 202[7-9]");
                double price = ((Cell.Figure) row.get(5)).number();
                assertThat(price).as(row.get(1).shown()).isEqualTo(later ? 250.5 : 100);
                double expected = ((Cell.Figure) row.get(2)).number();
                assertThat(((Cell.Figure) row.get(7)).number()).isCloseTo(expected * price, within(1e-9));
                sum += expected * price;
            } else {
                assertThat(row.get(7)).isEqualTo(Cell.NONE);
            }
        }
        List<List<Cell>> costs = made.full().section("Costs").rows();
        assertThat(((Cell.Figure) costs.get(costs.size() - 1).get(3)).number()).isCloseTo(sum, within(1e-6));
        assertThat(text(made)).contains("NONE for", "VL-1000");
    }

    @Test
    void aReportOfWhatLiesOutOfReachDoesNotExist() {
        Person crew = new Person(9, "crew", "Crew", Role.CREW, new Reach(false, Set.of(-1L)));
        Supplier<MadeReport> area = () -> desk.make(ReportWish.ofEstate(ReportKind.ESTATE, "UPLAND"));
        assertThatThrownBy(() -> access.as(crew, area)).isInstanceOf(NotFound.class);
        Supplier<MadeReport> string = () -> desk.make(new ReportWish(ReportKind.STRING, null, 1L, null));
        assertThatThrownBy(() -> access.as(crew, string)).isInstanceOf(NotFound.class);
        Supplier<JarPrice> price = () -> prices.set("VL-200", LocalDate.parse("2026-01-01"), "1", "GBP");
        assertThatThrownBy(() -> access.as(crew, price)).isInstanceOf(AccessDeniedException.class);
        assertThat(access.as(crew, () -> desk.make(ReportWish.ofEstate(ReportKind.ESTATE, null)))
                        .full()
                        .section("Strings")
                        .rows())
                .isEmpty();
    }

    @Test
    void theEvidencePackOfThePastQuarterHoldsTheFilesThatSurveysCameInBy() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        access.asSystem("demo test", () -> {
            ComplianceSummary summary = compliance.summary(compliance.latestFinished(), null);
            try {
                pack.write(summary, out);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        List<String> files = new ArrayList<>();
        String sums = "";
        try (ZipInputStream entries = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                byte[] content = entries.readAllBytes();
                if (entry.getName().equals("SHA256SUMS")) {
                    sums = new String(content, StandardCharsets.UTF_8);
                } else {
                    files.add(HexFormat.of().formatHex(Sha256.of(content)) + "  " + entry.getName());
                }
            }
        }
        assertThat(sums.lines()).containsExactlyInAnyOrderElementsOf(files);
        assertThat(files.stream().filter(file -> file.contains("  surveys/"))).hasSize(8);
    }
}
