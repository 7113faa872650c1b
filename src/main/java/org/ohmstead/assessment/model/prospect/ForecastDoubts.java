package org.ohmstead.assessment.model.prospect;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.forecast.DataDoubt;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.forecast.UnitForecast;

/** What the forecast asks people about the data; the rest of its doubts the rules have said already. */
final class ForecastDoubts {

    private ForecastDoubts() {}

    static List<Doubt> of(StringForecast forecast) {
        List<Doubt> doubts = new ArrayList<>();
        add(doubts, forecast, DataDoubt.PENDING_READING, Doubt.Kind.READ_APART, "Set aside until read again: ");
        if (forecast.doubts().contains(DataDoubt.STRING_RENEWED_WITHOUT_RECORD)) {
            doubts.add(new Doubt(
                    Doubt.Kind.RENEWED_WITHOUT_RECORD,
                    "The whole string reads like new, but no work is recorded: if it was renewed or its links were remade,"
                            + " enter that in the register."));
        } else {
            add(
                    doubts,
                    forecast,
                    DataDoubt.RENEWED_WITHOUT_RECORD,
                    Doubt.Kind.RENEWED_WITHOUT_RECORD,
                    "Reads like new, but no work is recorded; enter a replacement or remake in the register if there was"
                            + " one: ");
        }
        return doubts;
    }

    private static void add(
            List<Doubt> doubts, StringForecast forecast, DataDoubt about, Doubt.Kind kind, String words) {
        String jars = numbers(forecast.jars(), about);
        String links = numbers(forecast.links(), about);
        if (!jars.isEmpty() || !links.isEmpty()) {
            String both = !jars.isEmpty() && !links.isEmpty() ? "; " : "";
            doubts.add(new Doubt(
                    kind,
                    words + (jars.isEmpty() ? "" : "jar " + jars) + both + (links.isEmpty() ? "" : "link " + links)
                            + "."));
        }
    }

    private static String numbers(List<UnitForecast> units, DataDoubt about) {
        List<UnitForecast> concerned =
                units.stream().filter(unit -> unit.doubts().contains(about)).toList();
        String named = concerned.stream()
                .limit(6)
                .map(unit -> String.valueOf(unit.number()))
                .collect(Collectors.joining(", "));
        return concerned.size() > 6 ? named + " and " + (concerned.size() - 6) + " more" : named;
    }
}
