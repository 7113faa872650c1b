package org.ohmstead.testbed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.kernel.DateRange;

/** Lives one string through its surveys: units fail, are found late or never, are renewed, and half of it is written down. */
final class StringStory {
    private static final double NOMINAL_JAR = Math.log(1.33);
    private static final double NOMINAL_LINK = Math.log(1.20);

    private final Laws laws;
    private final Build build;
    private final Dice dice;
    private final Probe probe;
    private final Probe.Fitted[] jars;
    private final Probe.Fitted[] links;
    private final List<Truth> truths = new ArrayList<>();
    private final List<JarSpell> spells = new ArrayList<>();
    private final List<LinkRemake> remakes = new ArrayList<>();
    private final List<SurveyReadings> surveys = new ArrayList<>();
    private final LocalDate[] spellFrom;

    StringStory(Laws laws, Build build, Instruments instruments, Dice dice) {
        this.laws = laws;
        this.build = build;
        this.dice = dice;
        this.probe = new Probe(laws, build, instruments, dice.child());
        int count = build.plan().positions();
        this.jars = new Probe.Fitted[count];
        this.links = new Probe.Fitted[count + 1];
        this.spellFrom = new LocalDate[count];
        Arrays.fill(spellFrom, build.plan().inServiceOn());
        Arrays.setAll(jars, i -> newJar(i, 0));
        Arrays.setAll(links, k -> newLink(k, 0));
    }

    private Probe.Fitted newJar(int i, double from) {
        JarCourse course = new JarCourse(laws, build.ageing(), dice);
        boolean caught = i > 0 && jars[i - 1] != null && dice.happens(laws.neighbours());
        if (caught && jars[i - 1].course() instanceof JarCourse left && left.trouble() != JarCourse.Trouble.NONE) {
            course = new JarCourse(laws, build.ageing(), dice, left.onset() + dice.between(0.0, 1.5));
        }
        return new Probe.Fitted(course, from, dice.normal(.045));
    }

    private Probe.Fitted newLink(int k, double from) {
        return new Probe.Fitted(new LinkCourse(dice, build.jointShare()[k]), from, dice.normal(.06));
    }

    SimulatedString live(List<Depot.Visit> visits) {
        double last = 0;
        for (Depot.Visit visit : visits) {
            double years = years(visit.on());
            if (years < 0) {
                continue;
            }
            work(last, years);
            surveys.add(probe.read(surveys.size() + 1, visit, years, jars, links));
            last = years;
        }
        return finish();
    }

    private double years(LocalDate day) {
        return (day.toEpochDay() - build.plan().inServiceOn().toEpochDay()) / 365.25;
    }

    /** Somebody comes between two surveys and mends some of what has failed, and now and then what has not. */
    private void work(double last, double now) {
        if (isWornOut(last) && dice.happens(.6)) {
            renewString(when(last, now));
        }
        boolean sweep = dice.happens(.015 * (now - last));
        for (int i = 0; i < jars.length; i++) {
            if (isMended(jars[i], .35, .002, last, now)) {
                replace(i, when(last, now), !dice.happens(laws.unrecorded()));
            }
        }
        for (int k = 0; k < links.length; k++) {
            if (sweep || isMended(links[k], .25, .004, last, now)) {
                remake(k, when(last, now), sweep);
            }
        }
    }

    private boolean isWornOut(double now) {
        long failed = Arrays.stream(jars).filter(jar -> jar.failsAt() < now).count();
        return failed > .08 * jars.length;
    }

    /** All jars at once; nearly always written down. */
    private void renewString(double when) {
        boolean written = dice.happens(Math.max(.9, 1 - laws.unrecorded() / 2));
        for (int i = 0; i < jars.length; i++) {
            replace(i, when, written);
        }
    }

    private boolean isMended(Probe.Fitted unit, double ifFailed, double otherwisePerYear, double last, double now) {
        return unit.failsAt() < last ? dice.happens(ifFailed) : dice.happens(otherwisePerYear * (now - last));
    }

    private double when(double last, double now) {
        return last + (now - last) * dice.between(.1, .9);
    }

    private LocalDate day(double years) {
        return build.plan().inServiceOn().plusDays(Math.round(years * 365.25));
    }

    private void replace(int i, double when, boolean written) {
        note(false, i, jars[i], when);
        jars[i] = newJar(i, when);
        LocalDate on = day(when);
        if (written && on.isAfter(spellFrom[i])) {
            spells.add(new JarSpell(i + 1, null, new DateRange(spellFrom[i], on), Double.NaN));
            spellFrom[i] = on;
        }
    }

    private void remake(int k, double when, boolean unrecorded) {
        note(true, k, links[k], when);
        links[k] = newLink(k, when);
        if (!unrecorded && !dice.happens(laws.unrecorded())) {
            remakes.add(new LinkRemake(k, day(when)));
        }
    }

    private void note(boolean link, int index, Probe.Fitted unit, double until) {
        double crosses = unit.from() + unit.course().crossing(link ? NOMINAL_LINK : NOMINAL_JAR);
        truths.add(new Truth(link, index, unit.from(), until, unit.failsAt(), crosses, how(unit), unit.course()));
    }

    private static String how(Probe.Fitted unit) {
        if (unit.course() instanceof JarCourse jar) {
            return jar.trouble().name();
        }
        return unit.course() instanceof LinkCourse link && link.isSudden() ? "LOOSENED" : "GRADUAL";
    }

    private SimulatedString finish() {
        for (int i = 0; i < jars.length; i++) {
            note(false, i, jars[i], Double.POSITIVE_INFINITY);
            spells.add(new JarSpell(i + 1, null, DateRange.startingOn(spellFrom[i]), Double.NaN));
        }
        for (int k = 0; k < links.length; k++) {
            note(true, k, links[k], Double.POSITIVE_INFINITY);
        }
        return new SimulatedString(new StringHistory(build.plan(), spells, remakes, surveys), truths);
    }
}
