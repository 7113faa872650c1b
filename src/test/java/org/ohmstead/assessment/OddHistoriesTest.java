package org.ohmstead.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.Doubt.Kind;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.BulkLedger;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/** Histories as no one would wish them: judged sensibly, marked, and shown on every page without a number that is none. */
@ServiceTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OddHistoriesTest {

    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static final int JARS = 6;
    private static final double NAN = Double.NaN;
    private static final Pattern NO_NUMBER =
            Pattern.compile("\\bNaN\\b|\\bInfinity\\b|∞|>null<|\\bnull (mΩ|S|V|µΩ|%)|Optional\\[|@[0-9a-f]{6,8}\\b");

    private enum Odd {
        NEVER_SURVEYED,
        ONE_SURVEY,
        ALL_MISSING,
        ONE_JAR_NEVER_MEASURED,
        TWO_ON_ONE_DAY,
        A_THOUSAND,
        CONDUCTANCE,
        KIND_CHANGED,
        INSTRUMENT_CHANGED,
        NO_TEMPERATURES
    }

    private final Map<Odd, StringView> strings = new EnumMap<>(Odd.class);
    private final Random random = new Random(42);
    private LocalDate today;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jars;

    @Autowired
    private BulkLedger ledger;

    @Autowired
    private Assessments assessments;

    @Autowired
    private Instruments instruments;

    @Autowired
    private Access access;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc mvc;

    @BeforeAll
    void oneStringOfEach() {
        signIn();
        today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        access.asSystem("test", () -> {
            register.createArea(Entries.area("ODD"));
            register.createSite(Entries.site("ODD", "ODD"));
            register.createJarType(Entries.jarType("ODD"));
            for (Odd odd : Odd.values()) {
                StringView string = register.createString(Entries.string("ODD", odd.name(), "ODD", 3, 3));
                jars.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
                strings.put(odd, string);
                ledger.copyIn(history(odd, string.id()).stream());
                assessments.assess(string.id());
            }
        });
        instruments.lookAgain();
    }

    @AfterAll
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    private static PersonAuthentication signIn() {
        PersonAuthentication known =
                new PersonAuthentication(new Person(9, "odd", "Test", Role.ENGINEER, Reach.EVERYWHERE));
        SecurityContextHolder.getContext().setAuthentication(known);
        return known;
    }

    private List<NewSurvey> history(Odd odd, long string) {
        int surveys = switch (odd) {
            case NEVER_SURVEYED -> 0;
            case ONE_SURVEY -> 1;
            case A_THOUSAND -> 1000;
            default -> 6;
        };
        List<NewSurvey> history = new ArrayList<>();
        for (int n = 0; n < surveys; n++) {
            int back = surveys - 1 - n;
            LocalDate day = odd == Odd.A_THOUSAND ? today.minusDays(2L * back + 1) : today.minusMonths(6L * back + 1);
            history.add(survey(odd, string, day, 9, back == 0));
            if (odd == Odd.TWO_ON_ONE_DAY) {
                history.add(survey(odd, string, day, 14, back == 0));
            }
        }
        return history;
    }

    private NewSurvey survey(Odd odd, long string, LocalDate day, int hour, boolean last) {
        boolean conductance = odd == Odd.CONDUCTANCE || (odd == Odd.KIND_CHANGED && last);
        OhmicKind kind = conductance ? OhmicKind.CONDUCTANCE : OhmicKind.IMPEDANCE;
        double[] ohmic = random.doubles(JARS, .405, .415)
                .map(r -> conductance ? 1000 / r : r)
                .toArray();
        double[] volts = random.doubles(JARS, 2.22, 2.24).toArray();
        double[] celsius = new double[JARS];
        Arrays.fill(celsius, 21);
        double[][] links = new double[JARS + 1][1];
        Arrays.fill(links, new double[] {36});
        if (odd == Odd.ALL_MISSING) {
            Arrays.fill(ohmic, NAN);
            Arrays.fill(volts, NAN);
            Arrays.fill(links, new double[] {NAN});
        }
        if (odd == Odd.ONE_JAR_NEVER_MEASURED) {
            ohmic[3] = NAN;
            volts[3] = NAN;
        }
        boolean cold = odd == Odd.NO_TEMPERATURES || odd == Odd.ALL_MISSING;
        Readings readings = new Readings(ohmic, volts, cold ? new double[0] : celsius, new double[0], links);
        String instrument = odd == Odd.INSTRUMENT_CHANGED && last ? "ODD-2" : "ODD-1";
        return NewSurvey.of(
                new SurveyFacts(
                        string,
                        day.atTime(hour, 0).atZone(OSLO).toInstant(),
                        day,
                        "",
                        instrument,
                        null,
                        kind,
                        NAN,
                        cold ? NAN : 21,
                        NAN,
                        NAN,
                        NAN,
                        NAN,
                        NAN,
                        NAN,
                        true,
                        ""),
                readings);
    }

    private void isSound(String address) throws Exception {
        MockHttpServletResponse response = mvc.perform(get(address).with(authentication(signIn())))
                .andReturn()
                .getResponse();
        assertThat(response.getStatus()).as(address).isEqualTo(200);
        assertThat(response.getContentAsString()).as(address).doesNotContainPattern(NO_NUMBER);
    }

    @ParameterizedTest
    @EnumSource(Odd.class)
    void everyPageOfTheStringIsSound(Odd odd) throws Exception {
        String string = "/strings/" + strings.get(odd).id();
        for (String page :
                List.of("", "/jars/1", "/jars/4", "/jars/6", "/links/0", "/links/3", "/links/6", "/replay")) {
            isSound(string + page);
        }
        isSound("/api/strings/" + strings.get(odd).id() + "/replay");
        isSound("/api/strings/" + strings.get(odd).id() + "/assessment");
    }

    @Test
    void thePagesOfTheEstateAreSound() throws Exception {
        for (String page : List.of(
                "/",
                "/line",
                "/sites/ODD",
                "/forecast",
                "/forecast?area=ODD&quarters=12",
                "/instruments",
                "/instruments/evidence?serial=ODD-1",
                "/instruments/evidence?serial=ODD-2",
                "/library/lessons",
                "/api/forecast/replacements",
                "/api/forecast/replacements.csv",
                "/api/forecast/lives",
                "/api/instruments",
                "/api/lessons")) {
            isSound(page);
        }
    }

    private StringJudgement judgement(Odd odd) {
        signIn();
        return assessments.latest(strings.get(odd).id()).judgement();
    }

    private List<Kind> doubts(Odd odd) {
        return judgement(odd).doubts().stream().map(Doubt::kind).toList();
    }

    @Test
    void whatIsMissingIsSaid() {
        assertThat(doubts(Odd.NEVER_SURVEYED)).contains(Kind.NO_SURVEY);
        assertThat(doubts(Odd.NO_TEMPERATURES)).contains(Kind.TEMPERATURE_UNKNOWN);
        assertThat(doubts(Odd.KIND_CHANGED)).contains(Kind.OTHER_OHMIC_KIND);
        assertThat(doubts(Odd.INSTRUMENT_CHANGED)).contains(Kind.OTHER_INSTRUMENT);
        assertThat(judgement(Odd.ONE_JAR_NEVER_MEASURED).jars().get(3).reasons())
                .extracting(reason -> reason.rule())
                .contains(Rule.JAR_NOT_READ);
        assertThat(judgement(Odd.ALL_MISSING).jars())
                .allSatisfy(jar -> assertThat(jar.reasons())
                        .extracting(reason -> reason.rule())
                        .contains(Rule.JAR_NOT_READ));
    }

    @Test
    void nothingIsSentOutForSoundJars() {
        for (Odd odd : List.of(
                Odd.ONE_SURVEY,
                Odd.TWO_ON_ONE_DAY,
                Odd.A_THOUSAND,
                Odd.CONDUCTANCE,
                Odd.INSTRUMENT_CHANGED,
                Odd.NO_TEMPERATURES)) {
            assertThat(judgement(odd).urgency().name()).as(odd.name()).isIn("CLEAR", "RECHECK");
        }
    }
}
