package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.OhmicKind;

/** What the register says of values when new, and of jars fitted and links remade since. */
class KnownWorkTest {

    private static final double NAN = Double.NaN;
    private static final LocalDate BEGAN = StringOf.IN_SERVICE;
    private static final LocalDate SURVEYED = BEGAN.plusDays(1461);

    private static JarSpell spell(int position, LocalDate from, double baseline) {
        return new JarSpell(position, "S" + position, DateRange.startingOn(from), baseline);
    }

    /** Jars of the string's first day. */
    private static List<JarSpell> withBaselines(double... values) {
        List<JarSpell> spells = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            spells.add(spell(i + 1, BEGAN, values[i]));
        }
        return spells;
    }

    private static StringPlan plan(int jars, double reference) {
        StringPlan plan = StringOf.jars(jars).plan();
        return plan.with(plan.jarType().learned(reference, OhmicKind.IMPEDANCE, NAN, NAN));
    }

    private static Baselines baselines(double reference, OhmicKind kind, List<JarSpell> spells) {
        return new Baselines(plan(5, reference), spells, kind);
    }

    private static Baselines impedance(double... values) {
        return baselines(.5, OhmicKind.IMPEDANCE, withBaselines(values));
    }

    private static double[] logs(double... values) {
        return Arrays.stream(values).map(Math::log).toArray();
    }

    @Test
    void valuesThatDifferFromJarToJarAreTheJarsOwn() {
        assertThat(impedance(.40, .41, .42, NAN, .43).whenNew())
                .containsExactly(logs(.40, .41, .42, NAN, .43), within(1e-12));
        assertThat(impedance(.40, .41, .42, NAN, .43).reference()).isCloseTo(Math.log(.5), within(1e-12));
    }

    /** One and the same for most jars is the maker's. */
    @Test
    void oneValueForMostJarsIsTheLevelOfTheString() {
        assertThat(impedance(.40, .40, .40, .41, .42).whenNew()).containsOnly(NAN);
        assertThat(impedance(.40, .40, .40, .41, .42).reference()).isCloseTo(Math.log(.40), within(1e-12));
        assertThat(impedance(.40, .40, .41, .42, NAN).whenNew())
                .containsExactly(logs(.40, .40, .41, .42, NAN), within(1e-12));
    }

    @Test
    void twoValuesAreTheJarsOwnAndOneIsThatOfTheString() {
        assertThat(impedance(.40, .42, NAN, NAN, NAN).whenNew())
                .containsExactly(logs(.40, .42, NAN, NAN, NAN), within(1e-12));
        assertThat(impedance(.40, NAN, NAN, NAN, NAN).whenNew()).containsOnly(NAN);
        assertThat(impedance(.40, NAN, NAN, NAN, NAN).reference()).isCloseTo(Math.log(.40), within(1e-12));
        assertThat(impedance(NAN, NAN, NAN, NAN, NAN).reference()).isCloseTo(Math.log(.5), within(1e-12));
    }

    @Test
    void aReferenceOfAnotherKindTellsNothing() {
        assertThat(baselines(.5, OhmicKind.RESISTANCE, List.of()).reference()).isNaN();
        assertThat(baselines(NAN, OhmicKind.IMPEDANCE, List.of()).reference()).isNaN();
    }

    @Test
    void conductanceIsTakenAsItsReciprocal() {
        Baselines known = baselines(NAN, OhmicKind.CONDUCTANCE, withBaselines(2500, 2400, NAN, NAN, NAN));
        assertThat(known.whenNew()).containsExactly(logs(1 / 2500.0, 1 / 2400.0, NAN, NAN, NAN), within(1e-12));
    }

    @Test
    void jarsFittedLaterOrWhereThereIsNoPositionAreLeftOut() {
        List<JarSpell> spells = withBaselines(.40, .41, .42, .43, .44);
        spells.add(spell(2, BEGAN.plusDays(1), .30));
        spells.add(spell(0, BEGAN, .30));
        spells.add(spell(6, BEGAN, .30));
        assertThat(baselines(NAN, OhmicKind.IMPEDANCE, spells).whenNew())
                .containsExactly(logs(.40, .41, .42, .43, .44), within(1e-12));
    }

    private static GroupState surveyedJars(int count) {
        GroupState jars = new GroupState(UnitConstants.jars(), count);
        Arrays.setAll(jars.units, i -> new UnitState(UnitConstants.jars()));
        Arrays.stream(jars.units).forEach(unit -> unit.restart(0));
        jars.common.restart(1, Math.log(.4), .01);
        jars.surveys = 1;
        return jars;
    }

    /**
     * Known is the string's level, ln .4 ± .01, and the jar's among its like, 0 ± .05; the entered .44 counts as a reading with
     * the repeatability .015 and the level's own uncertainty: gain .0025 / (.0025 + .000225 + .0001).
     */
    @Test
    void aJarFittedLaterIsToldItsOwnValueWhenNew() {
        GroupState jars = surveyedJars(5);
        List<JarSpell> spells = withBaselines(.40, .41, .42, .43, .44);
        spells.add(spell(2, SURVEYED, .44));
        baselines(NAN, OhmicKind.IMPEDANCE, spells).applyTo(jars, 1, SURVEYED);
        double gain = .0025 / (.0025 + .000225 + .0001);
        assertThat(jars.units[1].healthy.expected()).isCloseTo(gain * Math.log(1.1), within(1e-9));
        assertThat(jars.units[0].healthy.expected()).isZero();
    }

    @Test
    void beforeAnySurveyOrWithOneValueForAllAJarIsToldNothing() {
        List<JarSpell> spells = withBaselines(.40, .41, .42, .43, .44);
        GroupState unsurveyed = surveyedJars(5);
        unsurveyed.surveys = 0;
        baselines(NAN, OhmicKind.IMPEDANCE, spells).applyTo(unsurveyed, 4, SURVEYED);
        assertThat(unsurveyed.units[4].healthy.expected()).isZero();
        GroupState alike = surveyedJars(5);
        List<JarSpell> one = withBaselines(.40, .40, .40, .40, NAN);
        one.add(spell(2, SURVEYED, .44));
        baselines(NAN, OhmicKind.IMPEDANCE, one).applyTo(alike, 1, SURVEYED);
        assertThat(alike.units[1].healthy.expected()).isZero();
        baselines(NAN, OhmicKind.IMPEDANCE, withBaselines(.40, .41, NAN)).applyTo(alike, 2, SURVEYED);
        assertThat(alike.units[2].healthy.expected()).isZero();
    }

    /** A state of jars that have risen, last surveyed on a day. */
    private static ForecastState risen(int jars, LocalDate last) {
        ForecastState state = StringOf.jars(jars).forecaster().start();
        Arrays.stream(state.jars.units).forEach(unit -> unit.raise(.1));
        Arrays.stream(state.links.units).forEach(unit -> unit.raise(.1));
        state.jars.common.state.mean[CommonState.RISE] = .2;
        return state.after(new LastSurvey(last, OhmicKind.IMPEDANCE, 1, false, false));
    }

    private static ForecastState applied(int jars, LocalDate last, List<JarSpell> spells, List<LinkRemake> remakes) {
        ForecastState state = risen(jars, last);
        StringPlan plan = StringOf.jars(jars).plan();
        new RecordedWork(plan, spells, remakes)
                .apply(state, SURVEYED, new Baselines(plan, spells, OhmicKind.IMPEDANCE));
        return state;
    }

    private static List<Integer> restarted(GroupState group) {
        List<Integer> anew = new ArrayList<>();
        for (int i = 0; i < group.units.length; i++) {
            if (group.units[i].healthy.rise == 0) {
                anew.add(i);
            }
        }
        return anew;
    }

    /** After the last survey, up to and with the day of the next. */
    @ParameterizedTest
    @CsvSource({"-366, false", "-365, false", "-364, true", "0, true", "1, false"})
    void workBetweenTwoSurveysStartsItsUnitAnew(int daysFromSurvey, boolean anew) {
        LocalDate day = SURVEYED.plusDays(daysFromSurvey);
        List<JarSpell> spells = List.of(spell(1, BEGAN, NAN), spell(3, day, NAN), spell(6, day, NAN));
        List<LinkRemake> remakes = List.of(new LinkRemake(2, day), new LinkRemake(7, day), new LinkRemake(5, day));
        ForecastState state = applied(6, SURVEYED.minusDays(365), spells, remakes);
        assertThat(restarted(state.jars)).isEqualTo(anew ? List.of(2, 5) : List.of());
        assertThat(restarted(state.links)).isEqualTo(anew ? List.of(2, 5) : List.of());
        if (anew) {
            assertThat(state.jars.units[2].startYears).isCloseTo((1461 + daysFromSurvey) / 365.25, within(1e-12));
            assertThat(state.links.units[2].startYears).isCloseTo((1461 + daysFromSurvey) / 365.25, within(1e-12));
        }
    }

    @Test
    void jarsOfTheFirstDayAndWorkOutsideTheStringAreNoWork() {
        List<JarSpell> spells = List.of(spell(1, BEGAN, NAN), spell(0, SURVEYED, NAN), spell(7, SURVEYED, NAN));
        ForecastState state = applied(6, SURVEYED.minusDays(365), spells, List.of(new LinkRemake(-1, SURVEYED)));
        assertThat(restarted(state.jars)).isEmpty();
        assertThat(restarted(state.links)).isEmpty();
    }

    @Test
    void theTerminalLinksAreRemadeToo() {
        List<LinkRemake> remakes = List.of(new LinkRemake(0, SURVEYED), new LinkRemake(6, SURVEYED));
        assertThat(restarted(applied(6, SURVEYED.minusDays(365), List.of(), remakes).links))
                .containsExactly(0, 6);
    }

    @Test
    void ofTwoJarsFittedAtOnePositionTheLaterCounts() {
        LocalDate later = SURVEYED.minusDays(30);
        List<JarSpell> spells = List.of(spell(3, later, NAN), spell(3, later.minusDays(60), NAN));
        ForecastState state = applied(6, SURVEYED.minusDays(365), spells, List.of());
        assertThat(state.jars.units[2].startYears).isCloseTo(1431 / 365.25, within(1e-12));
    }

    /** More than half: the string's age starts again, and an old jar keeps what the string had risen as its own. */
    @Test
    void halfOfTheJarsRenewedIsWorkOnJarsAndMoreIsARenewedString() {
        List<JarSpell> spells = new ArrayList<>();
        for (int position = 1; position <= 3; position++) {
            spells.add(spell(position, SURVEYED.minusDays(10L * position), NAN));
        }
        ForecastState half = applied(6, SURVEYED.minusDays(365), spells, List.of());
        assertThat(half.jars.startYears).isZero();
        assertThat(half.jars.units[5].healthy.rise).isCloseTo(.1, within(1e-12));
        assertThat(half.jars.common.rise()).isCloseTo(.2, within(1e-12));
        spells.add(spell(4, SURVEYED.minusDays(40), NAN));
        ForecastState most = applied(6, SURVEYED.minusDays(365), spells, List.of());
        assertThat(most.jars.startYears).isCloseTo(1451 / 365.25, within(1e-12));
        assertThat(most.jars.common.rise()).isZero();
        assertThat(restarted(most.jars)).containsExactly(0, 1, 2, 3);
        assertThat(most.jars.units[5].healthy.rise).isCloseTo(.3, within(1e-12));
    }

    @Test
    void yearsInServiceAreNeverNegative() {
        StringPlan plan = StringOf.jars(6).plan();
        assertThat(RecordedWork.yearsInService(plan, SURVEYED)).isCloseTo(4, within(1e-12));
        assertThat(RecordedWork.yearsInService(plan, BEGAN.minusDays(9))).isZero();
    }

    @Test
    void aJarFittedStartsItsVoltsAnewAndIsToldItsOwnValueWhenNew() {
        ForecastState state = risen(6, SURVEYED.minusDays(365));
        state.jars.common.restart(1, Math.log(.4), .01);
        state.jars.surveys = 1;
        Arrays.fill(state.volts.shortProbability, .9);
        List<JarSpell> spells = withBaselines(.40, .41, .42, .43, .44, .45);
        spells.add(spell(2, SURVEYED, .44));
        StringPlan plan = StringOf.jars(6).plan();
        new RecordedWork(plan, spells, List.of())
                .apply(state, SURVEYED, new Baselines(plan, spells, OhmicKind.IMPEDANCE));
        assertThat(state.volts.shortProbability).containsExactly(.9, 0, .9, .9, .9, .9);
        assertThat(state.jars.units[1].healthy.expected()).isBetween(.5 * Math.log(1.1), Math.log(1.1));
    }
}
