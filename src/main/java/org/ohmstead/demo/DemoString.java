package org.ohmstead.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Random;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.OhmicKind;

/**
 * A string of the demo estate as it is built, surveyed and fares.
 *
 * @param site number of its site
 * @param roomCelsius mean temperature of its room
 * @param seed of everything random about it
 */
record DemoString(
        int site, StringEntry entry, Design design, Story story, OhmicKind ohmicKind, double roomCelsius, long seed) {

    private static final long SEED = 20_250_317L;
    /** At these sites jars are measured by conductance. */
    private static final int CONDUCTANCE_SITE = 34;

    private static final double YOUNGEST_SHARE_OF_LIFE = 0.3;
    private static final double OLDEST_SHARE_OF_LIFE = 0.8;

    static DemoString of(int site, int number, LocalDate today) {
        Design design = Design.of(site);
        String name = String.valueOf((char) ('A' + number));
        long seed = SEED + site * 31L + number;
        Random random = new Random(seed);
        int months = ageMonths(design, random);
        LocalDate inService = today.minusMonths(months).minusDays(random.nextInt(28));
        double lifeSpent =
                months / 12.0 / Objects.requireNonNull(design.jarType().designLifeYears());
        Story story = Stories.of(site, name, 0.13 * Math.pow(lifeSpent, 1.9));
        OhmicKind kind = site == CONDUCTANCE_SITE ? OhmicKind.CONDUCTANCE : OhmicKind.IMPEDANCE;
        return new DemoString(
                site, entry(site, name, design, inService), design, story, kind, 20 + 4 * random.nextDouble(), seed);
    }

    DemoString with(Story other) {
        return new DemoString(site, entry, design, other, ohmicKind, roomCelsius, seed);
    }

    String title() {
        return entry.site() + " / " + entry.name();
    }

    int positions() {
        return entry.positions();
    }

    double ageYears(LocalDate on) {
        return ChronoUnit.DAYS.between(entry.inServiceOn(), on) / 365.25;
    }

    private static int ageMonths(Design design, Random random) {
        double lifeMonths = 12 * Objects.requireNonNull(design.jarType().designLifeYears());
        double share = YOUNGEST_SHARE_OF_LIFE + (OLDEST_SHARE_OF_LIFE - YOUNGEST_SHARE_OF_LIFE) * random.nextDouble();
        return (int) (lifeMonths * share);
    }

    private static StringEntry entry(int site, String name, Design design, LocalDate inService) {
        double cells = design.positions() * design.jarType().cellsPerJar();
        double endVolts =
                Math.round(cells * Objects.requireNonNull(design.jarType().endVoltsPerCell()) * 10) / 10.0;
        return new StringEntry(
                Places.code(site),
                name,
                design.jarType().code(),
                design.tiers(),
                design.strapsPerLink(),
                design.jarType().floatVoltsPerCell(),
                design.loadAmps(),
                design.minutes(),
                endVolts,
                design.strings(),
                inService,
                design.intervalMonths(),
                null);
    }
}
