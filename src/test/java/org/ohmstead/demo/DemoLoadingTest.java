package org.ohmstead.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.StringStanding;
import org.ohmstead.capacity.Agreements;
import org.ohmstead.capacity.CapacityOutcomes;
import org.ohmstead.capacity.CapacityTestView;
import org.ohmstead.capacity.model.TwoByTwo;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.UploadState;
import org.ohmstead.intake.UploadView;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.ledger.StringSurveys;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.programme.DutyLine;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;

@ServiceTest
@ActiveProfiles({"test", "demo"})
class DemoLoadingTest {

    @Autowired
    private DemoLoading loading;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Intake intake;

    @Autowired
    private Assessments assessments;

    @Autowired
    private Programme programme;

    @Autowired
    private CapacityOutcomes outcomes;

    @Autowired
    private Agreements agreements;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void theFirstStartLoadsTheEstateAndTheSecondLeavesItAsItIs() {
        List<Long> before = counts();
        assertThat(before.get(0)).isEqualTo(40);
        assertThat(before.get(1)).isBetween(95L, 105L);
        assertThat(before.get(2)).isGreaterThan(900);
        loading.run(new DefaultApplicationArguments());
        assertThat(counts()).isEqualTo(before);
    }

    @Test
    void everyStringHasAHistoryOfItsOwnLength() {
        java.util.ArrayList<StringSurveys> strings = new java.util.ArrayList<>();
        access.asSystem("demo test", () -> ledger.streamAll(strings::add));
        assertThat(strings).hasSize(counts().get(1).intValue());
        assertThat(strings).allSatisfy(string -> assertThat(string.surveys()).hasSizeGreaterThanOrEqualTo(2));
    }

    @Test
    void theFourPeopleOfTheSignInPageAreThere() {
        assertThat(jdbc.sql("select username from app_user where password_hash is not null order by username")
                        .query(String.class)
                        .list())
                .containsExactly("administrator", "crew", "engineer", "manager");
    }

    @Test
    void threeOfThisWeeksSheetsAreHeldForTheReasonsOfTheStory() {
        List<UploadView> held = access.asSystem("demo test", () -> intake.recent(UploadState.HELD, 20));
        assertThat(held)
                .extracting(UploadView::fileName)
                .containsExactlyInAnyOrder(
                        "survey-skipped-jar.csv", "survey-no-closing-reading.csv", "survey-wrong-string.csv");
        assertThat(codes("survey-skipped-jar.csv")).contains("POSITION_MISSING");
        assertThat(codes("survey-no-closing-reading.csv")).contains("LAST_JAR_MISSING");
        List<UploadView> accepted = access.asSystem("demo test", () -> intake.recent(UploadState.ACCEPTED, 20));
        assertThat(accepted)
                .extracting(UploadView::fileName)
                .filteredOn(name -> !name.matches("survey-[A-Z]{3}-\\d\\d-[A-C]-2025-1[0-2]-\\d\\d\\.csv"))
                .containsExactlyInAnyOrder(
                        "survey-nickel-cadmium.csv", "survey-loose-link.csv", "survey-current-past-clamp.csv");
        assertThat(accepted).as("with two of the past quarter in each area").hasSize(3 + 8);
        assertThat(codes("survey-current-past-clamp.csv")).contains("CURRENT_PAST_CLAMP");
    }

    @Test
    void mostOfTheEstateIsWellAndEveryUrgencyOccurs() {
        Map<Urgency, Long> strings = access.asSystem("demo test", assessments::standings).stream()
                .collect(Collectors.groupingBy(StringStanding::urgency, Collectors.counting()));
        assertThat(strings).containsOnlyKeys(Urgency.values());
        assertThat(strings.get(Urgency.CLEAR)).isGreaterThan(counts().get(1) / 2);
    }

    /** Some late, one site missed, one waived, and nothing else overdue by the checklist. */
    @Test
    void theProgrammeHasSomethingToShow() {
        LocalDate today = LocalDate.parse("2026-03-10");
        List<DutyLine> lines = new java.util.ArrayList<>();
        access.asSystem("demo test", () -> programme.eachLine(today.minusYears(3), today, null, lines::add));
        Map<DutyState, Long> states =
                lines.stream().collect(Collectors.groupingBy(DutyLine::state, Collectors.counting()));
        assertThat(states).containsOnlyKeys(DutyState.values());
        assertThat(states.get(DutyState.LATE)).isBetween(20L, states.get(DutyState.ON_TIME) / 8);
        assertThat(sites(lines, DutyState.WAIVED)).containsExactly(Places.code(VisitDays.WAIVED_SITE));
        assertThat(sites(
                        lines.stream()
                                .filter(line -> line.requirement().code().equals("grounds"))
                                .toList(),
                        DutyState.MISSED))
                .containsExactly(Places.code(VisitDays.MISSED_SITE));
        assertThat(lines.stream().map(DutyLine::pack).distinct())
                .containsExactlyInAnyOrder(
                        "protection-vented",
                        "protection-valve-regulated",
                        "protection-nickel-cadmium",
                        ProgrammeLoading.TELECOMS,
                        ProgrammeLoading.PRACTICE);
    }

    @Test
    void capacityTestsFoundSoundStringsFadingOnesAndSuchAsAreToBeReplaced() {
        List<CapacityTestView> tests = access.asSystem("demo test", outcomes::tests);
        Map<Long, Double> last = tests.stream()
                .collect(Collectors.toMap(
                        CapacityTestView::stringId, test -> test.capacity().percent(), (later, earlier) -> later));
        assertThat(last).hasSize(CapacityStory.all().size());
        assertThat(last.values().stream().filter(percent -> percent < 80)).hasSizeBetween(1, 3);
        assertThat(last.values().stream().filter(percent -> percent >= 80 && percent < 90))
                .hasSizeGreaterThanOrEqualTo(3);
        assertThat(last.values().stream().filter(percent -> percent >= 95)).hasSizeGreaterThan(15);
        assertThat(tests.stream().filter(test -> test.raw() != null)).hasSizeGreaterThan(8);
        assertThat(tests.stream().filter(test -> test.capacity().atLeast())).hasSize(1);
    }

    /** Both kinds of error occur: weak jars that had asked for nothing, and sound ones that had. */
    @Test
    void ohmicUrgencyAndCapacityMostlyAgreeButNotAlways() {
        TwoByTwo all = access.asSystem(
                "demo test",
                () -> agreements.jarTypes().stream()
                        .map(type -> agreements.of(type).counts())
                        .reduce(
                                TwoByTwo.NONE,
                                (a, b) -> new TwoByTwo(
                                        a.askingWeak() + b.askingWeak(),
                                        a.askingSound() + b.askingSound(),
                                        a.quietWeak() + b.quietWeak(),
                                        a.quietSound() + b.quietSound())));
        assertThat(all.askingWeak()).isGreaterThan(all.quietWeak());
        assertThat(all.quietWeak()).isPositive();
        assertThat(all.askingSound()).isPositive();
        assertThat(all.quietSound()).isGreaterThan(1000);
    }

    private List<String> sites(List<DutyLine> lines, DutyState state) {
        return lines.stream()
                .filter(line -> line.state() == state)
                .map(line -> jdbc.sql(
                                "select s.code from battery_string b join site s on s.id = b.site_id where b.id = ?")
                        .param(line.stringId())
                        .query(String.class)
                        .single())
                .distinct()
                .toList();
    }

    private List<String> codes(String fileName) {
        return jdbc.sql("select r.code from upload_remark r join upload u on u.id = r.upload_id where u.file_name = ?")
                .param(fileName)
                .query(String.class)
                .list();
    }

    private List<Long> counts() {
        return List.of(
                        "site",
                        "battery_string",
                        "survey",
                        "occupancy",
                        "link",
                        "app_user",
                        "visit",
                        "string_programme",
                        "capacity_test",
                        "upload")
                .stream()
                .map(table -> jdbc.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single())
                .toList();
    }
}
