package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.Random;

/** A battery room on a day. */
record Room(double celsius) {

    private static final double SEASON_KELVIN = 1.8;
    private static final int WARMEST_DAY = 205;

    static Room on(DemoString string, LocalDate day, Random random) {
        double season = Math.cos(2 * Math.PI * (day.getDayOfYear() - WARMEST_DAY) / 365.25);
        return new Room(string.roomCelsius() + SEASON_KELVIN * season + 0.5 * random.nextGaussian());
    }
}
