package org.ohmstead.testbed;

import java.time.ZoneOffset;
import java.util.Arrays;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.kernel.OhmicKind;

/** Reads a string as a crew would: with the errors of instrument, day, temperature, probe and hand. */
final class Probe {
    private final Laws laws;
    private final Build build;
    private final Instruments instruments;
    private final Dice dice;
    private final boolean temperaturesWritten;
    private final double[] jarMemory;
    private final double[] voltOffset;
    private final double[] linkLevel;

    Probe(Laws laws, Build build, Instruments instruments, Dice dice) {
        this.laws = laws;
        this.build = build;
        this.instruments = instruments;
        this.dice = dice;
        int jars = build.plan().positions();
        this.temperaturesWritten = dice.happens(.8);
        this.jarMemory = new double[jars];
        this.voltOffset = new double[jars];
        Arrays.setAll(voltOffset, i -> dice.normal(.009));
        this.linkLevel = new double[jars + 1];
        double strap = dice.between(15.0, 60.0);
        Arrays.setAll(linkLevel, i -> level(i, strap));
    }

    private double level(int ordinal, double strap) {
        double factor = build.plan().links().get(ordinal).kind().isCable() ? dice.between(3.0, 6.0) : 1;
        boolean end = ordinal == 0 || ordinal == linkLevel.length - 1;
        return Math.log(strap * (end ? .5 : factor));
    }

    /** @param years age of the string */
    SurveyReadings read(long id, Depot.Visit visit, double years, Fitted[] jars, Fitted[] links) {
        double own = dice.normal(laws.surveyOwn());
        double error = instruments.error(visit.instrument(), visit.day()) + own;
        double warm = Math.log(Math.max(.5, 1 + build.perKelvin() * (visit.celsius() - 25)));
        double slip = dice.happens(.003) ? Math.log(1000) : 0;
        double[] ohmic = new double[jars.length];
        double[] volts = new double[jars.length];
        double[] celsius = new double[jars.length];
        for (int i = 0; i < jars.length; i++) {
            double log = build.levelWhenNew() + jars[i].level() + jars[i].rise(years) + error + warm + slip;
            ohmic[i] = dice.happens(.004) ? Double.NaN : round(Math.exp(log + jarNoise(i)));
            volts[i] = volts(i, jars[i], years);
            celsius[i] = temperaturesWritten ? Math.round(10 * (visit.celsius() + dice.normal(.5))) / 10.0 : Double.NaN;
        }
        return new SurveyReadings(
                id,
                visit.on().atTime(10, 0).toInstant(ZoneOffset.UTC),
                visit.on(),
                OhmicKind.IMPEDANCE,
                "T-" + visit.instrument(),
                temperaturesWritten ? visit.celsius() : Double.NaN,
                Double.NaN,
                Double.NaN,
                true,
                ohmic,
                volts,
                celsius,
                links(years, links));
    }

    private double jarNoise(int i) {
        jarMemory[i] = laws.memory() * jarMemory[i] + dice.heavyTailed(laws.jarNoise());
        return jarMemory[i] + wrong();
    }

    private double wrong() {
        if (dice.happens(laws.misprobes())) {
            return dice.happens(.8) ? dice.between(.12, .8) : -dice.between(.1, .5);
        }
        return dice.happens(.0008) ? Math.log(10) : 0;
    }

    private double volts(int i, Fitted jar, double years) {
        int cells = build.plan().jarType().cellsPerJar();
        double perCell = 2.23 + voltOffset[i] + dice.heavyTailed(.0025);
        double missing = jar.course().voltsMissing(years - jar.from());
        return Math.round(1000 * (perCell * cells - missing)) / 1000.0;
    }

    private double[][] links(double years, Fitted[] links) {
        double error = dice.normal(.02);
        double[][] readings = new double[links.length][];
        for (int k = 0; k < links.length; k++) {
            double log = linkLevel[k] + links[k].level() + links[k].rise(years) + error;
            readings[k] = new double[build.plan().links().get(k).straps()];
            Arrays.setAll(readings[k], s -> round(Math.exp(log + dice.heavyTailed(laws.linkNoise()) + wrong())));
        }
        return readings;
    }

    private static double round(double value) {
        double step = Math.pow(10, Math.floor(Math.log10(value)) - 2);
        return Math.round(value / step) * step;
    }

    /** A jar or link in place since some day. */
    record Fitted(Course course, double from, double level) {
        double rise(double years) {
            return course.rise(Math.max(0, years - from));
        }

        double failsAt() {
            return from + course.failure();
        }
    }
}
