package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Objects;
import java.util.Random;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** Readings of a string's jars. */
final class JarSimulation {

    private static final double OHMIC_PER_KELVIN = -0.003;
    private static final double SURVEY_ERROR = 0.006;
    private static final double REPEATABILITY = 0.007;
    /** A jar's temperature is taken at every so many positions of cells, at every block. */
    private static final int PILOT_CELLS = 6;

    private final DemoString string;
    private final JarTypeEntry type;
    private final Units units;
    private final LocalDate today;

    JarSimulation(DemoString string, Units units, LocalDate today) {
        this.string = string;
        this.type = string.design().jarType();
        this.units = units;
        this.today = today;
    }

    double[] ohmic(LocalDate on, double yearsAgo, Room room, Instrument instrument, Random random) {
        double age = Math.max(0, string.ageYears(on));
        double common =
                Math.log1p(worn(age)) + OHMIC_PER_KELVIN * (room.celsius() - 25) + SURVEY_ERROR * random.nextGaussian();
        double[] values = new double[string.positions()];
        for (int i = 0; i < values.length; i++) {
            double own = units.jarLevel()[i] + units.jarDrift()[i] * age + REPEATABILITY * random.nextGaussian();
            values[i] = Objects.requireNonNull(type.referenceOhmic()) * Math.exp(common + own) * instrument.reads();
        }
        renew(values, yearsAgo);
        string.story()
                .jars()
                .forEach(jar -> values[jar.place() - 1] *= jar.ohmic().at(yearsAgo));
        return shown(values);
    }

    /** How far each jar stands above its value when new by wear and trouble, as a share; below zero where a cell is shorted. */
    double[] rise(LocalDate on) {
        double yearsAgo = (today.toEpochDay() - on.toEpochDay()) / 365.25;
        double[] rises = new double[string.positions()];
        Arrays.fill(rises, worn(Math.max(0, string.ageYears(on))));
        for (Story.Work work : string.story().replaced()) {
            double before = yearsAgo - work.yearsAgo();
            rises[work.place() - 1] = before < 0 ? 0 : 0.4 * Math.max(0, (3 - before) / 3);
        }
        for (Trouble jar : string.story().jars()) {
            double factor = jar.ohmic().at(yearsAgo);
            rises[jar.place() - 1] = factor < 1 ? factor - 1 : (1 + rises[jar.place() - 1]) * factor - 1;
        }
        return rises;
    }

    private double worn(double age) {
        return string.story().wear() * Math.pow(age / string.ageYears(today), 1.9);
    }

    /** Before its replacement the old jar rose steeply; the new one begins below its neighbours. */
    private void renew(double[] values, double yearsAgo) {
        for (Story.Work work : string.story().replaced()) {
            double before = yearsAgo - work.yearsAgo();
            values[work.place() - 1] *= before < 0 ? 0.94 : 1 + 0.4 * Math.max(0, (3 - before) / 3);
        }
    }

    private double[] shown(double[] milliohms) {
        return string.ohmicKind() == OhmicKind.CONDUCTANCE
                ? Arrays.stream(milliohms)
                        .map(value -> Rounded.to(1000 / value, 1))
                        .toArray()
                : Arrays.stream(milliohms).map(value -> Rounded.to(value, 3)).toArray();
    }

    double[] volts(double yearsAgo, Room room, Random random) {
        boolean lead = type.technology().isLeadAcid();
        double perCell = Objects.requireNonNull(type.floatVoltsPerCell()) - (lead ? 0.003 * (room.celsius() - 25) : 0);
        double[] values = new double[string.positions()];
        for (int i = 0; i < values.length; i++) {
            double cell = perCell + units.jarVolts()[i] + 0.002 * random.nextGaussian();
            values[i] = cell * type.cellsPerJar();
        }
        string.story()
                .jars()
                .forEach(jar -> values[jar.place() - 1] += jar.volts().at(yearsAgo));
        int decimals = type.cellsPerJar() == 1 ? 3 : 2;
        return Arrays.stream(values).map(value -> Rounded.to(value, decimals)).toArray();
    }

    double[] celsius(Room room, Random random) {
        int step = type.cellsPerJar() == 1 ? PILOT_CELLS : 1;
        double[] values = new double[string.positions()];
        for (int i = 0; i < values.length; i++) {
            double warm = room.celsius() + 0.6 + 0.3 * random.nextGaussian();
            values[i] = i % step == 0 ? Rounded.to(warm, 1) : Double.NaN;
        }
        return values;
    }

    /** Vented lead-acid only, at every other survey. */
    double[] gravity(int back, Random random) {
        if (type.technology() != Technology.VENTED_LEAD_ACID || back % 2 == 0) {
            return new double[0];
        }
        double[] values = new double[string.positions()];
        Arrays.setAll(values, i -> Rounded.to(1.215 + 0.0015 * random.nextGaussian(), 3));
        return values;
    }
}
