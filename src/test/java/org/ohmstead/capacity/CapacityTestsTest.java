package org.ohmstead.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.capacity.model.JarFinding;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.overview.SurveyedString;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;

/**
 * A string of 24 vented single-cell jars of 300 Ah at 8 h, in service since April 2018; jar 17 has risen to +60 % by the
 * survey of October 2025. Today is 10 March 2026.
 */
@ServiceTest
class CapacityTestsTest {

    private static final LocalDate ON = LocalDate.of(2026, 2, 3);
    private static int count;

    @Autowired
    private SurveyedString surveyed;

    @Autowired
    private CapacityTests tests;

    @Autowired
    private CapacityOutcomes outcomes;

    @Autowired
    private Agreements agreements;

    @Autowired
    private Programme programme;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private SettableClock clock;

    private String code;
    private StringView string;

    @BeforeEach
    void aSurveyedString() {
        code = "CAP-" + ++count;
        string = surveyed.build(code);
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
        clock.set(SettableClock.START);
    }

    private static void signIn(Role role, Reach reach) {
        SecurityContextHolder.getContext()
                .setAuthentication(new PersonAuthentication(new Person(9, "capacity.test", "Test", role, reach)));
    }

    private NewCapacityTest test(LocalDate on, TestKind kind) {
        Ratings ratings = new Ratings(37.5, 480, 25, 1.75);
        return new NewCapacityTest(
                string.id(), on, "A. Crew", kind, Method.RATE_ADJUSTED, ratings, 25, null, "after the winter");
    }

    /** Every jar at 1.80 V but one. */
    private static Drawn drawn(double hours, int position, double volts) {
        double[] jars = new double[24];
        Arrays.fill(jars, 1.80);
        jars[position - 1] = volts;
        return new Drawn(37.5, hours * 60, false, 42.0, jars, new double[0]);
    }

    private long record(LocalDate on, double hours, int position, double volts) {
        return tests.record(test(on, TestKind.PERFORMANCE), drawn(hours, position, volts));
    }

    @Test
    void aTestIsKeptWithItsFiguresAndItsJars() {
        CapacityTestView kept = tests.test(record(ON, 7.6, 17, 1.52));
        assertThat(kept.capacity().percent()).isCloseTo(95, within(1e-9));
        assertThat(kept.capacity().computation()).contains("456.0 / 480 = 95.0 %");
        assertThat(kept.jars()).hasSize(24);
        assertThat(kept.failed()).singleElement().satisfies(jar -> {
            assertThat(jar.position()).isEqualTo(17);
            assertThat(jar.endVolts()).isEqualTo(1.52);
        });
        assertThat(kept.jarLineVolts()).isEqualTo(1.75);
        assertThat(kept.recordedBy()).isEqualTo("capacity.test");
        assertThat(audited("capacity test recorded", kept.id())).isEqualTo(1);
    }

    private long audited(String action, long id) {
        return jdbc.sql("select count(*) from audit_entry where action = ? and subject_id = ?")
                .params(action, String.valueOf(id))
                .query(Long.class)
                .single();
    }

    @Test
    void aRecorderFileIsWorkedOutAndKeptAsItCame() {
        StringBuilder csv = new StringBuilder("minutes,amps,string_volts,jar_17\n");
        for (int minute = 0; minute <= 480; minute += 10) {
            // 2.05 V per cell falling to 1.75 V at 480 min; jar 17 is there at 240 min
            double cell = 2.05 - 0.30 * minute / 480;
            csv.append(minute + ",37.5," + cell * 24 + "," + (2.05 - 0.30 * minute / 240) + "\n");
        }
        byte[] bytes = csv.toString().getBytes(StandardCharsets.UTF_8);
        long id = tests.recordFrom(test(ON, TestKind.PERFORMANCE), "recorder.csv", bytes);
        CapacityTestView kept = tests.test(id);
        assertThat(kept.capacity().percent()).isCloseTo(100, within(0.01));
        assertThat(kept.drawn().amps()).isCloseTo(37.5, within(1e-9));
        assertThat(kept.jars().get(16).finding()).isEqualTo(JarFinding.WEAK);
        assertThat(kept.jars().get(16).ownPercent()).isCloseTo(50, within(0.01));
        assertThat(kept.jars().get(0).finding()).isEqualTo(JarFinding.UNREAD);
        assertThat(kept.raw().sha256()).isEqualTo(HexFormat.of().formatHex(Sha256.of(bytes)));
        assertThat(tests.raw(id)).isEqualTo(bytes);
        assertThat(tests.curve(id))
                .hasValueSatisfying(curve -> assertThat(curve.rows()).isEqualTo(49));
    }

    @Test
    void aFlawedFileLeavesNothingBehind() {
        byte[] bytes = "minutes,amps,string_volts\n0,37.5,49\n10,x,48\n".getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> tests.recordFrom(test(ON, TestKind.PERFORMANCE), "recorder.csv", bytes))
                .isInstanceOfSatisfying(Refused.class, refused -> {
                    assertThat(refused).hasMessageContaining("recorder.csv").hasMessageContaining("line 3, column 2");
                    assertThat(refused.flaws()).hasSize(1);
                });
        assertThat(tests.testsOf(string.id())).isEmpty();
    }

    @Test
    void theSameTestIsNotRecordedTwiceButAgainAfterVoiding() {
        long first = record(ON, 7.6, 1, 1.80);
        assertThatThrownBy(() -> record(ON, 7.7, 1, 1.80))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("as test " + first);
        assertThatThrownBy(() -> tests.voidTest(first, " ")).isInstanceOf(Refused.class);
        tests.voidTest(first, "minutes misread");
        assertThatThrownBy(() -> tests.voidTest(first, "again")).isInstanceOf(Conflict.class);
        long second = record(ON, 7.7, 1, 1.80);
        assertThat(tests.testsOf(string.id())).extracting(CapacityTestView::id).containsExactly(second, first);
        assertThat(tests.standing(string.id()).tests())
                .extracting(CapacityTestView::id)
                .containsExactly(second);
        assertThat(audited("capacity test voided", first)).isEqualTo(1);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> record(LocalDate.of(2026, 3, 11), 8, 1, 1.8)).hasMessageContaining("lies ahead");
        assertThatThrownBy(() -> record(LocalDate.of(2018, 3, 31), 8, 1, 1.8))
                .hasMessageContaining("came into service on 2018-04-01");
        assertThatThrownBy(() -> record(ON, 8, 1, 18)).hasMessageContaining("Jar 1 ended at 18.0 V");
        Drawn two = new Drawn(37.5, 480, false, null, new double[] {1.8, 1.8}, new double[0]);
        assertThatThrownBy(() -> tests.record(test(ON, TestKind.PERFORMANCE), two))
                .hasMessageContaining("The string has 24 jars");
    }

    @Test
    void aTestIsSeenAndRecordedWithinReachOnly() {
        long id = record(ON, 8, 1, 1.8);
        signIn(Role.CREW, new Reach(false, Set.of()));
        assertThatThrownBy(() -> tests.test(id)).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> tests.testsOf(string.id())).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> record(ON.plusDays(1), 8, 1, 1.8)).isInstanceOf(NotFound.class);
        assertThat(outcomes.tests()).isEmpty();
        signIn(Role.MANAGER, Reach.EVERYWHERE);
        assertThatThrownBy(() -> record(ON.plusDays(1), 8, 1, 1.8)).isInstanceOf(AccessDeniedException.class);
        signIn(Role.CREW, Reach.EVERYWHERE);
        assertThatThrownBy(() -> tests.voidTest(id, "no")).isInstanceOf(AccessDeniedException.class);
    }

    private Duty capacityDuty() {
        return programme.duties(string.id(), null).duties().stream()
                .filter(duty -> duty.branch().code().equals("capacity-test"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTestDoesTheCapacityDutyAtOnceAndVoidingUndoesIt() {
        keeping.assign(string.id(), null, LocalDate.of(2019, 1, 1));
        String requirement = programme.duties(string.id(), null).duties().stream()
                .filter(duty -> duty.requirement().branches().stream()
                        .anyMatch(branch -> branch.code().equals("capacity-test")))
                .findFirst()
                .orElseThrow()
                .requirement()
                .code();
        keeping.elect(string.id(), requirement, "capacity-test", LocalDate.of(2019, 1, 1));
        assertThat(capacityDuty().lastDone()).isNull();
        LocalDate before = programme.nextDate(string.id()).dueOn();
        long id = record(ON, 7.6, 1, 1.8);
        assertThat(capacityDuty().lastDone()).satisfies(done -> {
            assertThat(done.doneOn()).isEqualTo(ON);
            assertThat(done.recordId()).isEqualTo(id);
        });
        // six calendar years end with the year
        assertThat(capacityDuty().dueOn()).isEqualTo(LocalDate.of(2032, 12, 31));
        tests.record(test(ON.plusDays(7), TestKind.SERVICE), drawn(8, 1, 1.8));
        assertThat(capacityDuty().lastDone().doneOn())
                .as("a service test shows no capacity")
                .isEqualTo(ON);
        tests.voidTest(id, "wrong string");
        assertThat(capacityDuty().lastDone()).isNull();
        assertThat(programme.nextDate(string.id()).dueOn()).isEqualTo(before);
    }

    @Test
    void theStandingHasTheTrendAndTheNextTestByThePractice() {
        assertThat(tests.standing(string.id()).next()).isNull();
        record(LocalDate.of(2022, 2, 3), 8.2, 1, 1.8);
        record(ON, 7.0, 1, 1.8);
        CapacityStanding standing = tests.standing(string.id());
        assertThat(standing.tests()).hasSize(2);
        // 102.5 % to 87.5 % in four years
        assertThat(standing.pointsPerYear()).isCloseTo(-3.75, within(0.01));
        assertThat(standing.next().on()).isEqualTo(ON.plusYears(1));
        assertThat(standing.next().reason()).contains("under 90 %").contains("dropped by 15.0 % of rated");
    }

    @Test
    void ohmicUrgencyBeforeTheTestIsSetAgainstWhatTheTestFound() {
        record(ON, 7.6, 17, 1.52);
        Agreement agreement = agreements.of(code);
        assertThat(agreement.tests()).isEqualTo(1);
        assertThat(agreement.counts().askingWeak())
                .as("jar 17 asked and was weak")
                .isEqualTo(1);
        assertThat(agreement.counts().quietWeak()).isZero();
        assertThat(agreement.counts().jars() + agreement.unjudged()).isEqualTo(24);
        assertThat(outcomes.of(code))
                .hasSize(24)
                .filteredOn(outcome -> outcome.finding().isFailed())
                .singleElement()
                .satisfies(outcome -> assertThat(outcome.position()).isEqualTo(17));
        assertThat(agreements.jarTypes()).contains(code);
    }

    @Test
    void noLaterSurveyTellsWhatWasAskedBefore() {
        // before the first survey nothing had been asked; the risen readings came years later
        record(LocalDate.of(2019, 6, 1), 7.6, 17, 1.52);
        assertThat(agreements.of(code).counts().jars()).isZero();
        assertThat(agreements.of(code).unjudged()).isEqualTo(24);
        record(LocalDate.of(2020, 12, 1), 7.6, 17, 1.52);
        Agreement agreement = agreements.of(code);
        assertThat(agreement.counts().quietWeak()).isEqualTo(1);
        assertThat(agreement.missed())
                .singleElement()
                .satisfies(jar -> assertThat(jar.position()).isEqualTo(17));
    }
}
