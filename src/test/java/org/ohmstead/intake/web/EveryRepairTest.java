package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.IntakeEstate;
import org.ohmstead.intake.PatternedWalk;
import org.ohmstead.intake.repair.StepKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/**
 * Every kind of repair from end to end: a file that is held for that reason alone, the repair, its undo, the repair again, the
 * survey stored, all of it on record, and the file as it came.
 */
@ServiceTest
@Import(IntakeEstate.class)
class EveryRepairTest {

    private static final String WALK = "2026-03-01T10:00";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private IntakeEstate estate;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    private StringView string;

    @BeforeEach
    void aStringThatIsKnown() {
        string = estate.twoWithHistory().get(0);
    }

    /**
     * @param sheet as it is handed in
     * @param held the remarks that hold it
     * @param step what puts it right, as JSON without its kind
     * @param left the remarks that still hold it then, for an engineer to accept
     * @param stored what the survey must be
     */
    private record Fault(
            String sheet, List<String> held, String step, List<String> left, Consumer<SurveyRecord> stored) {

        Fault(String sheet, String held, String step, Consumer<SurveyRecord> stored) {
            this(sheet, List.of(held), step, List.of(), stored);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsHeldIsRepairedUndoneRepairedAgainAndStoredAndTheFileStaysAsItCame(StepKind kind) throws Exception {
        Fault fault = faultFor(kind);
        UUID id = UUID.randomUUID();
        String upload = "/api/uploads/" + id;
        String step = "{\"kind\": \"" + kind + "\"" + (fault.step.isEmpty() ? "" : ", " + fault.step) + "}";

        answer(put(upload + "?file=walk.csv").content(bytes(fault.sheet)));
        assertThat(holding(upload)).containsExactlyInAnyOrderElementsOf(fault.held);

        answer(json(post(upload + "/repairs"), step));
        assertThat(holding(upload)).isEqualTo(fault.left);
        answer(delete(upload + "/repairs/last"));
        assertThat(holding(upload)).containsExactlyInAnyOrderElementsOf(fault.held);
        if (fault.left.isEmpty()) {
            refused(post(upload + "/store"));
        }
        answer(json(post(upload + "/repairs"), step));
        String receipt = answer(
                fault.left.isEmpty()
                        ? post(upload + "/store")
                        : json(post(upload + "/accept"), "{\"reason\": \"the rest is read next time\"}"));

        assertThat(JsonPath.<String>read(receipt, "$.state")).isEqualTo("ACCEPTED");
        assertThat(JsonPath.<List<String>>read(receipt, "$.repairs[*].kind")).containsExactly(kind.name(), kind.name());
        assertThat(JsonPath.<List<Boolean>>read(receipt, "$.repairs[*].takenBack"))
                .containsExactly(true, false);
        assertThat(actsOn(id))
                .containsSubsequence("repaired", "repair taken back", "repaired")
                .endsWith(fault.left.isEmpty() ? "stored as repaired" : "accepted as measured");
        int survey = JsonPath.read(receipt, "$.surveyId");
        fault.stored.accept(access.asSystem("test", () -> ledger.survey(survey)));
        assertThat(answer(get(upload + "/raw"))).isEqualTo(fault.sheet);
    }

    private Fault faultFor(StepKind kind) throws Exception {
        return switch (kind) {
            case REVERSE -> new Fault(walk().fromTheOtherEnd().sheet(), "ORDER_REVERSED", "", this::asWalked);
            case INSERT_GAP ->
                new Fault(
                        walk().skipping(12).sheet(),
                        List.of("ORDER_SKIPPED"),
                        "\"position\": 12",
                        List.of("POSITION_MISSING"),
                        survey -> asWalkedBut(survey, 12, Double.NaN));
            case LEAVE_OUT ->
                new Fault(
                        walk().readingTwice(12).sheet() + lastRowOneFurther(),
                        List.of("POSITION_FOREIGN", "ORDER_READ_TWICE"),
                        "\"position\": 13",
                        List.of(),
                        this::asWalked);
            case SWAP_JARS -> swapped();
            case IGNORE_ROW ->
                new Fault(walk().sheet() + "7,0.9999,2.250,24\n", "POSITION_DOUBLED", "\"line\": 40", this::asWalked);
            case SCALE_COLUMN ->
                new Fault(
                        walk().titled("position,jar Ω,jar V,link µΩ").sheet(),
                        "UNIT_SLIP",
                        "\"column\": \"JAR_OHMIC\", \"powerOfTen\": -3",
                        this::asWalked);
            case SET_KIND -> siemensCalledMilliohms();
            case ASSIGN_TO ->
                new Fault(
                        walk().sheetNaming("NOWHERE", "Z"),
                        "STRING_UNKNOWN",
                        "\"site\": \"" + string.siteCode() + "\", \"string\": \"" + string.name() + "\"",
                        this::asWalked);
            case USE_MAP -> readByTheWrongMap();
            case FIX_READING ->
                new Fault(
                        walk().sheet().replace("\n5," + cell(5, 1), "\n5,-" + cell(5, 1)),
                        "OHMIC_IMPOSSIBLE",
                        "\"what\": \"JAR_OHMIC\", \"position\": 5, \"to\": " + cell(5, 1)
                                + ", \"reason\": \"the minus is a smudge\"",
                        this::asWalked);
            case FIX_TIME ->
                new Fault(
                        walk().sheet().replace(WALK, "2062-03-01T10:00"),
                        "TIME_FUTURE",
                        "\"takenAt\": \"" + WALK + "\", \"reason\": \"digits turned\"",
                        survey -> {
                            asWalked(survey);
                            assertThat(survey.facts().takenOn()).hasToString("2026-03-01");
                        });
            case DISREGARD -> cellWithAUnitInIt();
        };
    }

    /** The two jars of the string that differ most, so that it shows. */
    private Fault swapped() {
        int least = 1;
        int most = 1;
        for (int jar = 2; jar <= string.positions(); jar++) {
            least = number(jar, 1) < number(least, 1) ? jar : least;
            most = number(jar, 1) > number(most, 1) ? jar : most;
        }
        return new Fault(
                walk().swapping(least, most).sheet(),
                "ORDER_SWAPPED",
                "\"one\": " + least + ", \"other\": " + most,
                this::asWalked);
    }

    private Fault siemensCalledMilliohms() {
        string = estate.stringOfSix();
        String sheet = IntakeEstate.sheetOf(string, WALK).replaceAll("(?m)^([1-6]),0\\.(\\d+)", "$1,2$2");
        return new Fault(sheet, "RECIPROCAL_SLIP", "\"ohmicKind\": \"CONDUCTANCE\"", survey -> {
            assertThat(survey.facts().ohmicKind()).isEqualTo(OhmicKind.CONDUCTANCE);
            assertThat(survey.readings().ohmic()).containsExactly(2411, 2412, 2413, 2414, 2415, 2416);
        });
    }

    /** The latest version of the map takes milliohms for ohms; the one before read them as they are. */
    private Fault readByTheWrongMap() throws Exception {
        string = estate.stringOfSix();
        String map = "log of " + string.siteCode();
        String title = "Jar of " + string.siteCode();
        saveMap(map, title, "mΩ");
        saveMap(map, title, "Ω");
        StringBuilder table = new StringBuilder(title + ";Z;U\n");
        for (int k = 1; k <= 6; k++) {
            table.append(String.format(Locale.ROOT, "%d;0.%d;2.23%n", k, 410 + k));
        }
        return new Fault(
                table.toString(),
                "UNIT_SLIP",
                "\"name\": \"" + map + "\", \"version\": 1",
                survey -> assertThat(survey.readings().ohmic())
                        .containsExactly(0.411, 0.412, 0.413, 0.414, 0.415, 0.416));
    }

    private void saveMap(String name, String title, String unit) throws Exception {
        answer(json(put("/api/column-maps/" + name), """
                {"delimiter": ";", "facts": [{"fact": "site", "value": "%s"}, {"fact": "string", "value": "A"},
                  {"fact": "taken at", "value": "%s"}, {"fact": "ohmic kind", "value": "impedance"}],
                 "columns": [{"title": "%s", "holds": "position"}, {"title": "Z", "holds": "jar ohmic", "unit": "%s"},
                  {"title": "U", "holds": "jar volts"}]}
                """.formatted(string.siteCode(), WALK, title, unit)));
    }

    private Fault cellWithAUnitInIt() {
        String row = String.join(",", row(5));
        String sheet = walk().sheet().replace("\n" + row, "\n" + row.replace(cell(5, 2), cell(5, 2) + " V"));
        int line = sheet.lines().toList().indexOf(row.replace(cell(5, 2), cell(5, 2) + " V")) + 1;
        return new Fault(
                sheet, "VALUE_LOST", "\"line\": " + line + ", \"column\": 3, \"reason\": \"smudged\"", survey -> {
                    asWalked(survey);
                    assertThat(survey.readings().volts()[4]).isNaN();
                });
    }

    private PatternedWalk walk() {
        return PatternedWalk.of(string, WALK);
    }

    private String[] row(int jar) {
        return walk().sheet()
                .lines()
                .filter(line -> line.startsWith(jar + ","))
                .findFirst()
                .orElseThrow()
                .split(",");
    }

    private String cell(int jar, int cell) {
        return row(jar)[cell];
    }

    private double number(int jar, int cell) {
        return Double.parseDouble(cell(jar, cell));
    }

    private String lastRowOneFurther() {
        int last = string.positions();
        String[] row = row(last);
        row[0] = String.valueOf(last + 1);
        return String.join(",", row) + "\n";
    }

    private void asWalked(SurveyRecord survey) {
        asWalkedBut(survey, 0, Double.NaN);
    }

    private void asWalkedBut(SurveyRecord survey, int exceptJar, Double ohmic) {
        for (int jar = 1; jar <= string.positions(); jar++) {
            assertThat(survey.readings().ohmic()[jar - 1])
                    .as("jar " + jar)
                    .isEqualTo(jar == exceptJar ? ohmic : (Double) number(jar, 1));
        }
    }

    private List<String> holding(String upload) throws Exception {
        String receipt = answer(get(upload));
        assertThat(JsonPath.<String>read(receipt, "$.state")).isEqualTo("HELD");
        return JsonPath.read(receipt, "$.remarks[?(@.severity == 'HOLD')].code");
    }

    private List<String> actsOn(UUID id) {
        return jdbc.sql("select action from audit_entry where subject_kind = 'upload' and subject_id = ? order by id")
                .param(id.toString())
                .query(String.class)
                .list();
    }

    private String answer(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(engineer()).with(csrf().asHeader()))
                .andExpect(status().is2xxSuccessful())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
    }

    private void refused(MockHttpServletRequestBuilder request) throws Exception {
        mvc.perform(request.with(engineer()).with(csrf().asHeader())).andExpect(status().isUnprocessableContent());
    }

    private static MockHttpServletRequestBuilder json(MockHttpServletRequestBuilder request, String body) {
        return request.contentType(MediaType.APPLICATION_JSON).content(bytes(body));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private RequestPostProcessor engineer() {
        return SecurityMockMvcRequestPostProcessors.authentication(new PersonAuthentication(
                new Person(7, "engineer.of-repairs", "Test", Role.ENGINEER, IntakeEstate.only(string))));
    }
}
