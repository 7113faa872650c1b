package org.ohmstead.overview.web;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.chart.Fan;
import org.ohmstead.chart.FanDrawing;
import org.ohmstead.chart.Trend;
import org.ohmstead.chart.TrendDrawing;
import org.ohmstead.overview.Prospect;
import org.ohmstead.overview.UnitPage;

/** Draws the life of a jar or link. */
final class UnitDrawings {

    private UnitDrawings() {}

    static String trend(UnitPage unit) {
        List<UnitPage.Reading> readings = unit.readings();
        double[] values = readings.stream()
                .mapToDouble(reading -> reading.value() == null ? Double.NaN : reading.value())
                .toArray();
        List<LocalDate> days = readings.stream().map(UnitPage.Reading::takenOn).toList();
        List<LocalDate> breaks =
                unit.spells().stream().skip(1).map(UnitPage.Spell::from).toList();
        return TrendDrawing.of("trend", new Trend(unit.title(), unit.unit(), days, values, levels(unit), breaks));
    }

    /**
     * Null for links and while nothing is forecast.
     *
     * @param limitRise at which the purpose fails
     */
    static @Nullable String fan(UnitPage unit, double limitRise) {
        Prospect prospect = unit.prospect();
        if (prospect == null || prospect.when() == null) {
            return null;
        }
        List<UnitPage.Spell> spells = unit.spells();
        LocalDate since =
                spells.isEmpty() ? LocalDate.MIN : spells.get(spells.size() - 1).from();
        List<UnitPage.Reading> own = unit.readings().stream()
                .filter(reading -> !reading.takenOn().isBefore(since))
                .toList();
        return FanDrawing.of(
                "fan",
                new Fan(
                        own.stream().map(UnitPage.Reading::takenOn).toList(),
                        own.stream()
                                .mapToDouble(reading -> reading.change() == null ? Double.NaN : reading.change())
                                .toArray(),
                        limitRise,
                        prospect.asOf(),
                        prospect.riseOverNew(),
                        prospect.early(),
                        prospect.middle(),
                        prospect.late()));
    }

    private static List<Trend.Level> levels(UnitPage unit) {
        return unit.baseline() == null ? List.of() : List.of(new Trend.Level("baseline", unit.baseline(), false));
    }
}
