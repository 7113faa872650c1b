package org.ohmstead.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;

/** The surveys of one string, as its crew would have taken them. */
final class Simulation {

    private static final int FIRST_HOUR = 9;
    private static final int HOURS = 6;

    private final DemoString string;
    private final LocalDate today;
    private final JarSimulation jars;
    private final LinkSimulation links;

    Simulation(DemoString string, LocalDate today) {
        this.string = string;
        this.today = today;
        Units units = Units.of(string);
        this.jars = new JarSimulation(string, units, today);
        this.links = new LinkSimulation(string, units);
    }

    /** Oldest first. */
    List<NewSurvey> history(long stringId) {
        List<LocalDate> days = SurveyDays.of(string, today);
        List<NewSurvey> surveys = new ArrayList<>(days.size());
        for (int i = 0; i < days.size(); i++) {
            surveys.add(survey(stringId, days.get(i), days.get(i), days.size() - i));
        }
        return surveys;
    }

    /**
     * One survey.
     *
     * @param on the date it bears
     * @param as the day whose state of the string it shows
     * @param back its number counted from the last one, which is 1
     */
    NewSurvey survey(long stringId, LocalDate on, LocalDate as, int back) {
        Random random = new Random(string.seed() * 1_000L + back);
        Room room = Room.on(string, on, random);
        Readings readings = readings(as, room, random, back);
        return NewSurvey.of(facts(stringId, on, as, room, readings, back), readings);
    }

    private Readings readings(LocalDate as, Room room, Random random, int back) {
        double yearsAgo = ChronoUnit.DAYS.between(as, today) / 365.25;
        Instrument instrument = Instrument.inUse(Places.areaOf(string.site()), as, today);
        return new Readings(
                jars.ohmic(as, yearsAgo, room, instrument, random),
                jars.volts(yearsAgo, room, random),
                jars.celsius(room, random),
                jars.gravity(back, random),
                links.microohms(yearsAgo, room, random));
    }

    private SurveyFacts facts(long stringId, LocalDate on, LocalDate as, Room room, Readings readings, int back) {
        Random random = new Random(string.seed() * 2_000L + back);
        int area = Places.areaOf(string.site());
        double injected = Rounded.to(10 + 0.05 * random.nextGaussian(), 2);
        double lost = back <= 1 ? string.story().currentLost() : 0;
        double ratedAmps = string.design().jarType().ratedAmpereHours() / 100;
        return new SurveyFacts(
                stringId,
                takenAt(on, back),
                on,
                "Crew " + Places.AREAS.get(area).name(),
                Instrument.inUse(area, as, today).serial(),
                LocalDate.of(on.getYear() + 1, 3, 1),
                string.ohmicKind(),
                60,
                Rounded.to(room.celsius(), 1),
                Rounded.to(sum(readings.volts()) * (1 + 0.0008 * random.nextGaussian()), 1),
                Rounded.to(ratedAmps * 0.06 * (1 + 0.2 * random.nextDouble()), 2),
                Rounded.to(ratedAmps * (0.8 + random.nextDouble()), 1),
                Rounded.to(0.05 + 0.1 * random.nextDouble(), 2),
                injected,
                Rounded.to(injected * (1 - lost) * (1 + 0.006 * random.nextGaussian()), 2),
                true,
                "");
    }

    private Instant takenAt(LocalDate on, int back) {
        int minutes = (int) ((string.seed() + back * 37L) % (HOURS * 60));
        return on.atTime(FIRST_HOUR, 0).plusMinutes(minutes).atZone(Places.ZONE).toInstant();
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
