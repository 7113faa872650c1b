package org.ohmstead.demo;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.ohmstead.capacity.CapacityTests;
import org.ohmstead.capacity.Drawn;
import org.ohmstead.capacity.NewCapacityTest;
import org.ohmstead.capacity.model.DischargeFigures;
import org.ohmstead.capacity.model.DischargeRecord;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Enters the demo's past capacity tests: some typed, some with a recorder's file. */
@Component
@Profile("demo")
class CapacityLoading {

    private final CapacityTests tests;

    CapacityLoading(CapacityTests tests) {
        this.tests = tests;
    }

    /** @param stringId of the string as entered */
    void load(DemoString string, long stringId, CapacityStory story, LocalDate today) {
        if (story.accepted()) {
            enter(string, stringId, story, string.entry().inServiceOn().plusDays(12), today, -1);
        }
        List<LocalDate> days = TestDays.of(string, story, today);
        for (int i = 0; i < days.size(); i++) {
            enter(string, stringId, story, days.get(i), today, days.size() - i);
        }
    }

    /** @param back its number counted from the last one, which is 1; −1 for the acceptance */
    private void enter(DemoString string, long stringId, CapacityStory story, LocalDate on, LocalDate today, int back) {
        JarTypeEntry type = string.design().jarType();
        double celsius = Rounded.to(
                Room.on(string, on, new Random(string.seed() + on.toEpochDay())).celsius() + 0.6, 1);
        boolean stopped = back == 1 && story.stopped();
        DischargeRecord all = new DischargeSimulation(
                        type,
                        celsius,
                        new CapacityTruth(string, story, today).shares(on),
                        voltsMore(string, on, today),
                        string.seed() + back)
                .record(stopped);
        NewCapacityTest test = test(string, stringId, on, back, celsius, stopped);
        if (back > 0 && back <= story.records()) {
            String name =
                    "discharge-" + string.entry().site() + "-" + string.entry().name() + "-" + on + ".csv";
            tests.recordFrom(test, name, DischargeSimulation.csv(all).getBytes(StandardCharsets.UTF_8));
        } else {
            tests.record(test, typed(all, test.ratings(), type.cellsPerJar(), back == 1));
        }
    }

    private static NewCapacityTest test(
            DemoString string, long stringId, LocalDate on, int back, double celsius, boolean stopped) {
        CapacityRating rating = CapacityRating.of(string.design().jarType());
        return new NewCapacityTest(
                stringId,
                on,
                "Test team " + Places.areaName(string.site()),
                back < 0 ? TestKind.ACCEPTANCE : TestKind.PERFORMANCE,
                rating.method(),
                rating.ratings(),
                celsius,
                rating.coefficient(),
                stopped ? "Stopped at the rated time to spare the recharge" : "");
    }

    /** What somebody noted at the end. */
    private static Drawn typed(DischargeRecord all, Ratings ratings, int cellsPerJar, boolean jarsRead) {
        double line = ratings.endVoltsPerCell() * cellsPerJar;
        DischargeFigures figures = DischargeFigures.of(all, line * all.positions(), line);
        double[] jars = figures.jarEndVolts();
        for (int i = 0; i < jars.length; i++) {
            jars[i] = Rounded.to(jars[i], 2);
        }
        return new Drawn(
                Rounded.to(figures.amps(), 1),
                Math.rint(figures.minutes()),
                figures.stoppedEarly(),
                (@Nullable Double) Rounded.to(figures.stringEndVolts(), 1),
                jarsRead ? jars : new double[0],
                new double[0]);
    }

    private static double[] voltsMore(DemoString string, LocalDate on, LocalDate today) {
        double yearsAgo = (today.toEpochDay() - on.toEpochDay()) / 365.25;
        double[] more = new double[string.positions()];
        string.story()
                .jars()
                .forEach(jar -> more[jar.place() - 1] += jar.volts().at(yearsAgo));
        return more;
    }
}
