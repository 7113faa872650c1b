package org.ohmstead.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.assessment.model.estate.ForecastLine;
import org.ohmstead.assessment.model.estate.LifeCurve;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/** Two areas with a type of its own each: in one a jar climbs fast, in the other no jar was ever read. */
@ServiceTest
class EstateForecastTest {

    private static int count;

    @Autowired
    private EstateForecast forecast;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jarsAndLinks;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Access access;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc mvc;

    private String read;
    private String unread;
    private StringView string;
    private LocalDate today;

    @BeforeEach
    void twoAreas() {
        signIn(Reach.EVERYWHERE);
        read = "FOR-" + ++count;
        unread = "FOU-" + count;
        string = string(read);
        string(unread);
        today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        for (int n = 0; n < 6; n++) {
            ledger.accept(survey(today.minusMonths(32L - 6 * n), .41 * (1 + .06 * n)));
        }
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    private static void signIn(Reach reach) {
        SecurityContextHolder.getContext()
                .setAuthentication(new PersonAuthentication(new Person(9, "f", "Test", Role.ENGINEER, reach)));
    }

    private StringView string(String code) {
        return access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            StringView made = register.createString(Entries.string(code, "A", code, 6, 6));
            jarsAndLinks.fillEmptyPositions(made.id(), Entries.COMMISSIONED);
            return made;
        });
    }

    private NewSurvey survey(LocalDate day, double jarSeven) {
        double[] ohmic = new double[12];
        Arrays.setAll(ohmic, i -> .41 * (1 + .002 * ((i * 7 + day.getMonthValue()) % 5 - 2)));
        ohmic[6] = jarSeven;
        SurveyFacts facts =
                SurveyFacts.of(string.id(), day.atTime(10, 0).toInstant(ZoneOffset.UTC), day, OhmicKind.IMPEDANCE);
        return NewSurvey.of(facts, Readings.ofOhmic(ohmic));
    }

    private void replaced(int position, LocalDate on, String why) {
        access.asSystem(
                "test",
                () -> jarsAndLinks.replaceJar(
                        new OccupancyEntry(read, "A", position, read, null, on, null, why, "", null, null)));
    }

    private ForecastLine ofType(String code) {
        return forecast.replacements(8).byJarType().stream()
                .filter(line -> code.equals(line.jarType()))
                .findFirst()
                .orElseThrow();
    }

    private LifeCurve curve(String code) {
        return forecast.lifeCurves().stream()
                .filter(curve -> curve.jarType().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theClimbingJarIsToBeReplacedAndTheOthersHardly() {
        ForecastLine line = ofType(read);
        assertThat(line.jars()).isEqualTo(12);
        assertThat(line.unforeseen()).isZero();
        assertThat(line.inAll().expected()).isBetween(.5, 2.5);
        assertThat(line.byQuarter()).hasSize(8);
    }

    @Test
    void jarsNeverReadAreSaidToBeUnforeseen() {
        ForecastLine line = ofType(unread);
        assertThat(line.jars()).isEqualTo(12);
        assertThat(line.unforeseen()).isEqualTo(12);
        assertThat(line.inAll().expected()).isZero();
    }

    @Test
    void whatLiesOutOfReachIsNotCounted() {
        signIn(new Reach(false, Set.of(string.areaId())));
        assertThat(forecast.replacements(4).byArea())
                .extracting(ForecastLine::area)
                .containsExactly(read);
        assertThat(forecast.replacements(4).total().jars()).isEqualTo(12);
    }

    @Test
    void aJarReplacedForItsConditionEndsALifeAndAMovedOneDoesNot() {
        replaced(3, Entries.COMMISSIONED.plusYears(4), "High ohmic value");
        replaced(4, Entries.COMMISSIONED.plusYears(5), "Moved to another site");
        LifeCurve curve = curve(read);
        assertThat(curve.jars()).isEqualTo(14);
        assertThat(curve.failures()).isEqualTo(1);
        assertThat(curve.takenOut()).isEqualTo(1);
        assertThat(curve.steps()).hasSize(1);
        assertThat(curve.steps().get(0).years()).isBetween(3.9, 4.05);
        assertThat(curve.steps().get(0).inService()).isBetween(.9, .93);
    }

    @Test
    void aWholeStringRenewedWithoutAReasonIsNoFailure() {
        for (int position = 1; position <= 12; position++) {
            replaced(position, Entries.COMMISSIONED.plusYears(6), "");
        }
        assertThat(curve(read).failures()).isZero();
        assertThat(curve(read).takenOut()).isEqualTo(12);
    }

    @Test
    void pagesAndFiles() throws Exception {
        replaced(3, Entries.COMMISSIONED.plusYears(4), "High ohmic value");
        PersonAuthentication engineer =
                (PersonAuthentication) SecurityContextHolder.getContext().getAuthentication();
        for (String query : List.of("", "?area=" + read, "?quarters=12", "?area=" + unread + "&quarters=4")) {
            mvc.perform(get("/forecast" + query).with(authentication(engineer)))
                    .andExpect(status().isOk())
                    .andExpect(content().string(Matchers.containsString("are likely to pass their limit")))
                    .andExpect(content().string(Matchers.containsString("Too few failures")))
                    .andExpect(content().string(Matchers.not(Matchers.containsString("NaN"))));
        }
        String file = mvc.perform(
                        get("/api/forecast/replacements.csv?quarters=4").with(authentication(engineer)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(file).startsWith("as_of,area,jar_type,jars,not_foreseen,quarter,expected,low_80,high_80\r\n");
        assertThat(file.lines()
                        .filter(line -> line.contains(",all," + read + ","))
                        .toList())
                .hasSize(5)
                .first()
                .asString()
                .startsWith(today + ",all," + read + ",12,0,already,");
        mvc.perform(get("/api/forecast/replacements?quarters=4").with(authentication(engineer)))
                .andExpect(jsonPath("$.quarters.length()").value(4))
                .andExpect(jsonPath("$.total.jars").isNumber());
        mvc.perform(get("/api/forecast/lives").with(authentication(engineer)))
                .andExpect(
                        jsonPath("$[?(@.jarType == '" + read + "')].failures").value(1));
        mvc.perform(get("/api/forecast/replacements?quarters=40").with(authentication(engineer)))
                .andExpect(status().is4xxClientError());
        mvc.perform(get("/forecast?area=NOWHERE").with(authentication(engineer)))
                .andExpect(status().isNotFound());
    }

    @Test
    void moreThanThreeYearsAreNotForeseen() {
        for (int quarters : List.of(0, 13)) {
            assertThatThrownBy(() -> forecast.replacements(quarters))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("1 to 12");
        }
    }
}
