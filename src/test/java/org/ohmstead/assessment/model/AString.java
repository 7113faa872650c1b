package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/**
 * A string told as a sentence: {@code AString.of(24).inServiceSince("2018-01-10").surveyed("2018-07-10").jarReads(7,
 * 0.61)}. Unless told otherwise a jar reads about 0.400 mΩ (4 % between least and most), a link about 25 µΩ.
 */
final class AString {

    static final double NAN = Double.NaN;
    static final double OHMIC = 0.400;
    static final double LINK = 25;

    private final int positions;
    private final List<LinkPlan> links = new ArrayList<>();
    private final List<JarSpell> spells = new ArrayList<>();
    private final List<LinkRemake> remakes = new ArrayList<>();
    private final List<SurveyReadings> surveys = new ArrayList<>();
    private LocalDate began = LocalDate.parse("2018-01-10");
    private Technology technology = Technology.AGM;
    private double floatVolts = 2.25;
    private double reference = NAN;
    private double perKelvin = NAN;
    private double designAmps = NAN;
    private double designLife = NAN;
    private int cells = 1;

    private AString(int positions) {
        this.positions = positions;
        IntStream.rangeClosed(0, positions)
                .mapToObj(k -> new LinkPlan(k, k == 0 || k == positions ? LinkKind.TERMINAL : LinkKind.STRAP, 1, null))
                .forEach(links::add);
    }

    static AString of(int positions) {
        return new AString(positions);
    }

    AString inServiceSince(String day) {
        began = LocalDate.parse(day);
        return this;
    }

    AString ofTechnology(Technology technology, double floatVolts) {
        this.technology = technology;
        this.floatVolts = floatVolts;
        return this;
    }

    AString withReference(double ohmic) {
        reference = ohmic;
        return this;
    }

    AString withCoefficient(double perKelvin) {
        this.perKelvin = perKelvin;
        return this;
    }

    AString carrying(double amps) {
        designAmps = amps;
        return this;
    }

    AString designedForYears(double years) {
        designLife = years;
        return this;
    }

    /** Jars of several cells float at the sum of them. */
    AString ofCells(int perJar) {
        floatVolts = floatVolts / cells * perJar;
        cells = perJar;
        return this;
    }

    AString withLink(int ordinal, LinkKind kind, int straps, @Nullable Conductor conductor) {
        links.set(ordinal, new LinkPlan(ordinal, kind, straps, conductor));
        return this;
    }

    AString withJar(int position, String from, @Nullable String until, double baseline) {
        LocalDate end = until == null ? null : LocalDate.parse(until);
        spells.add(new JarSpell(position, "J" + spells.size(), new DateRange(LocalDate.parse(from), end), baseline));
        return this;
    }

    AString withLinkRemade(int ordinal, String day) {
        remakes.add(new LinkRemake(ordinal, LocalDate.parse(day)));
        return this;
    }

    /** A survey in which everything reads as usual at 25 °C. */
    AString surveyed(String day) {
        double[] ohmic = new double[positions];
        double[] celsius = new double[positions];
        Arrays.fill(celsius, 25);
        for (int i = 0; i < positions; i++) {
            ohmic[i] = OHMIC * usual(i);
        }
        double[] volts = new double[positions];
        Arrays.fill(volts, floatVolts);
        double[][] microohms = new double[positions + 1][];
        for (int k = 0; k <= positions; k++) {
            double[] straps = new double[links.get(k).straps()];
            Arrays.fill(straps, LINK * usual(k));
            microohms[k] = straps;
        }
        LocalDate takenOn = LocalDate.parse(day);
        surveys.add(new SurveyReadings(
                surveys.size() + 1,
                takenOn.atTime(10, 0).toInstant(ZoneOffset.UTC),
                takenOn,
                OhmicKind.IMPEDANCE,
                "TS-1",
                25,
                floatVolts * positions,
                NAN,
                true,
                ohmic,
                volts,
                celsius,
                microohms));
        return this;
    }

    private static double usual(int i) {
        return 1 + 0.01 * (i * 7 % 5 - 2);
    }

    AString jarReads(int position, double ohmic) {
        last().ohmic()[position - 1] = ohmic;
        return this;
    }

    AString jarChanges(int position, double factor) {
        last().ohmic()[position - 1] *= factor;
        return this;
    }

    AString everyJarChanges(double factor) {
        IntStream.rangeClosed(1, positions).forEach(position -> jarChanges(position, factor));
        return this;
    }

    AString jarFloatsAt(int position, double volts) {
        last().volts()[position - 1] = volts;
        return this;
    }

    AString jarIsAt(int position, double celsius) {
        last().celsius()[position - 1] = celsius;
        return this;
    }

    AString linkReads(int ordinal, double... microohms) {
        last().linkMicroohms()[ordinal] = microohms;
        return this;
    }

    AString everyJarReads(double ohmic) {
        Arrays.fill(last().ohmic(), ohmic);
        return this;
    }

    /** All other jars are left out. */
    AString onlyJarReads(int position, double ohmic) {
        return everyJarReads(NAN).jarReads(position, ohmic);
    }

    AString everyLinkReads(double microohms) {
        Arrays.stream(last().linkMicroohms()).forEach(straps -> Arrays.fill(straps, microohms));
        return this;
    }

    /** As a file with fewer columns would have it. */
    AString withoutLinksFrom(int ordinal) {
        double[][] fewer = Arrays.copyOf(last().linkMicroohms(), ordinal);
        SurveyReadings s = surveys.remove(surveys.size() - 1);
        surveys.add(new SurveyReadings(
                s.surveyId(),
                s.takenAt(),
                s.takenOn(),
                s.ohmicKind(),
                s.instrument(),
                s.ambientCelsius(),
                s.stringVolts(),
                s.rippleAmps(),
                s.onFloat(),
                s.ohmic(),
                s.volts(),
                s.celsius(),
                fewer));
        return this;
    }

    AString everythingMissing() {
        Arrays.fill(last().ohmic(), NAN);
        Arrays.fill(last().volts(), NAN);
        Arrays.stream(last().linkMicroohms()).forEach(straps -> Arrays.fill(straps, NAN));
        return without(true, NAN).atCelsius(NAN);
    }

    AString inKind(OhmicKind kind) {
        SurveyReadings s = last();
        return replaceLast(kind, s.instrument(), s.ambientCelsius(), s.stringVolts(), s.rippleAmps(), s.onFloat());
    }

    AString withInstrument(String serial) {
        SurveyReadings s = last();
        return replaceLast(s.ohmicKind(), serial, s.ambientCelsius(), s.stringVolts(), s.rippleAmps(), s.onFloat());
    }

    AString atCelsius(double celsius) {
        SurveyReadings s = last();
        Arrays.fill(s.celsius(), celsius);
        return replaceLast(s.ohmicKind(), s.instrument(), celsius, s.stringVolts(), s.rippleAmps(), s.onFloat());
    }

    AString withStringVolts(double volts) {
        SurveyReadings s = last();
        return replaceLast(s.ohmicKind(), s.instrument(), s.ambientCelsius(), volts, s.rippleAmps(), s.onFloat());
    }

    AString withRipple(double amps) {
        SurveyReadings s = last();
        return replaceLast(s.ohmicKind(), s.instrument(), s.ambientCelsius(), s.stringVolts(), amps, s.onFloat());
    }

    AString offFloat() {
        return without(false, last().stringVolts());
    }

    private AString without(boolean onFloat, double stringVolts) {
        SurveyReadings s = last();
        return replaceLast(s.ohmicKind(), s.instrument(), s.ambientCelsius(), stringVolts, s.rippleAmps(), onFloat);
    }

    private AString replaceLast(
            OhmicKind kind, @Nullable String instrument, double ambient, double volts, double ripple, boolean onFloat) {
        SurveyReadings s = surveys.remove(surveys.size() - 1);
        surveys.add(new SurveyReadings(
                s.surveyId(),
                s.takenAt(),
                s.takenOn(),
                kind,
                instrument,
                ambient,
                volts,
                ripple,
                onFloat,
                s.ohmic(),
                s.volts(),
                s.celsius(),
                s.linkMicroohms()));
        return this;
    }

    private SurveyReadings last() {
        return surveys.get(surveys.size() - 1);
    }

    StringHistory history() {
        JarTypeFacts type = new JarTypeFacts(
                "INVENTED-100",
                technology,
                cells,
                2.0 * cells,
                100,
                floatVolts / cells,
                reference,
                OhmicKind.IMPEDANCE,
                perKelvin,
                designLife,
                25);
        StringPlan plan = new StringPlan(7, type, positions, links, floatVolts / cells, designAmps, 60, began);
        return new StringHistory(plan, spells, remakes, surveys);
    }

    StringJudgement judged() {
        return judged(Limits.standard());
    }

    StringJudgement judged(Limits limits) {
        return new Judge(limits).judge(history());
    }
}
