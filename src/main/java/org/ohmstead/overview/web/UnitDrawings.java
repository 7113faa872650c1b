package org.ohmstead.overview.web;

import java.time.LocalDate;
import java.util.List;
import org.ohmstead.chart.Trend;
import org.ohmstead.chart.TrendDrawing;
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

    private static List<Trend.Level> levels(UnitPage unit) {
        return unit.baseline() == null ? List.of() : List.of(new Trend.Level("baseline", unit.baseline(), false));
    }
}
