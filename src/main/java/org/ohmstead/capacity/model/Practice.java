package org.ohmstead.capacity.model;

import static org.ohmstead.capacity.model.Words.percent;
import static org.ohmstead.capacity.model.Words.plain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Technology;

/**
 * When to test again, by the recommended practices as makers and utilities apply them.
 *
 * <ul>
 *   <li>Vented lead-acid: within 25 % of the expected life, at most 5 years; valve-regulated: 25 %, at most 2 years (IEEE 450
 *       and 1188, recalled from memory). Nickel-cadmium: 5 years (US Bureau of Reclamation FIST 3-6).
 *   <li>Yearly once the capacity is under 90 % (FIST 3-6), has dropped by 10 % of rated or more since the test before
 *       (recalled from memory), or 85 % of the service life are used (nuclear technical specification SR 3.8.4.8, as cited
 *       in a plant order).
 *   <li>Under 80 %: replace as soon as possible (FIST 3-6).
 * </ul>
 */
public final class Practice {

    /** Percent of rated capacity under which a string is tested yearly. */
    public static final double YEARLY_UNDER = 90;

    private static final double DROP = 10;
    private static final double LATE_LIFE = 0.85;
    private static final double SHARE_OF_LIFE = 0.25;

    private Practice() {}

    /**
     * A test that stands and shows capacity.
     *
     * @param atLeast whether the string holds that much or more
     */
    public record Tested(LocalDate on, double percent, boolean atLeast) {}

    /**
     * @param expectedYears null when nobody knows how long such jars last
     * @param tests oldest first, one at least
     */
    public static NextTest next(
            List<Tested> tests, Technology technology, LocalDate inServiceOn, @Nullable Double expectedYears) {
        Tested last = tests.get(tests.size() - 1);
        Tested before = tests.size() < 2 ? null : tests.get(tests.size() - 2);
        LocalDate usual = last.on().plusDays(days(usualYears(technology, expectedYears)));
        LocalDate inAYear = last.on().plusYears(1);
        boolean replace = last.percent() < JarResults.REPLACE_UNDER && !last.atLeast();
        List<String> why = yearlyReasons(last, before, inServiceOn, expectedYears);
        if (!why.isEmpty()) {
            String words = "Yearly, because " + String.join(" and ", why) + "." + (replace ? " " + REPLACE : "");
            return new NextTest(earlier(usual, inAYear), true, replace, words);
        }
        if (expectedYears != null) {
            LocalDate late = inServiceOn.plusDays(days(expectedYears * LATE_LIFE));
            if (late.isBefore(usual)) {
                LocalDate on = earlier(usual, late.isAfter(inAYear) ? late : inAYear);
                return new NextTest(
                        on,
                        false,
                        replace,
                        "On " + late + " 85 % of an expected life of " + plain(expectedYears)
                                + " years are used; from then on the practice tests yearly.");
            }
        }
        return new NextTest(usual, false, replace, usualWords(technology, expectedYears));
    }

    private static final String REPLACE =
            "Under 80 % of rated capacity the practice replaces the battery as soon as possible.";

    private static List<String> yearlyReasons(
            Tested last, @Nullable Tested before, LocalDate inServiceOn, @Nullable Double expectedYears) {
        List<String> why = new ArrayList<>();
        if (last.percent() < YEARLY_UNDER && !last.atLeast()) {
            why.add("the last test gave " + percent(last.percent()) + ", under 90 %");
        }
        if (before != null && !last.atLeast() && before.percent() - last.percent() >= DROP) {
            why.add("capacity dropped by " + percent(before.percent() - last.percent()) + " of rated since "
                    + before.on());
        }
        if (expectedYears != null && age(inServiceOn, last.on()) >= LATE_LIFE * expectedYears) {
            why.add("the string had used 85 % of an expected life of " + plain(expectedYears) + " years");
        }
        return why;
    }

    private static double usualYears(Technology technology, @Nullable Double expectedYears) {
        double most = technology.isValveRegulated() ? 2 : 5;
        return expectedYears == null || !technology.isLeadAcid() ? most : Math.min(most, SHARE_OF_LIFE * expectedYears);
    }

    private static String usualWords(Technology technology, @Nullable Double expectedYears) {
        double years = usualYears(technology, expectedYears);
        boolean byLife = years < (technology.isValveRegulated() ? 2 : 5);
        return plain(years) + " years after the last test, "
                + (byLife
                        ? "a quarter of the expected life"
                        : "the longest that the practice allows " + technology.words())
                + ".";
    }

    private static double age(LocalDate from, LocalDate on) {
        return (on.toEpochDay() - from.toEpochDay()) / 365.25;
    }

    private static long days(double years) {
        return Math.round(years * 365.25);
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }
}
