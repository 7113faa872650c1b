package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;

/**
 * Follows all strings of an estate together, day by day, so that strings read with one instrument tell each other about
 * its error, of that day and of earlier days. Nothing later than the day is looked at.
 */
public final class EstateReplay {
    private final List<StringHistory> histories;
    private final List<Forecaster> forecasters;
    private final List<ForecastState> states;
    private final ForecastParameters parameters;
    private final InstrumentBook book;

    /** Hears what is to be said as of each survey. */
    public interface Listener {
        /** @param string index of the history */
        void said(int string, SurveyReadings survey, StringForecast forecast);
    }

    private record Reading(int string, SurveyReadings survey) {}

    public EstateReplay(List<StringHistory> histories, ForecastParameters parameters) {
        this.histories = List.copyOf(histories);
        this.parameters = parameters;
        this.book = new InstrumentBook(parameters);
        this.forecasters = histories.stream()
                .map(history -> Forecaster.of(history, parameters))
                .toList();
        this.states =
                new ArrayList<>(forecasters.stream().map(Forecaster::start).toList());
    }

    /** Runs through all surveys in order of their day. */
    public void run(Listener listener) {
        Map<LocalDate, List<Reading>> days = IntStream.range(0, histories.size())
                .boxed()
                .flatMap(string -> histories.get(string).surveys().stream().map(survey -> new Reading(string, survey)))
                .collect(Collectors.groupingBy(
                        reading -> reading.survey().takenOn(), TreeMap::new, Collectors.toList()));
        days.forEach((day, readings) -> take(day, readings, listener));
    }

    private void take(LocalDate day, List<Reading> readings, Listener listener) {
        List<SurveyInnovation> innovations =
                readings.stream().map(this::innovation).toList();
        List<SharedError> shared = IntStream.range(0, readings.size())
                .mapToObj(i -> SharedError.from(
                        companions(readings, innovations, i),
                        book.expected(readings.get(i).survey().instrument(), day),
                        parameters))
                .toList();
        note(day, readings, innovations);
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            int string = reading.string();
            Forecaster forecaster = forecasters.get(string);
            states.set(string, forecaster.advance(states.get(string), reading.survey(), shared.get(i)));
            listener.said(string, reading.survey(), forecaster.forecast(states.get(string)));
        }
    }

    private SurveyInnovation innovation(Reading reading) {
        return forecasters.get(reading.string()).innovation(states.get(reading.string()), reading.survey());
    }

    private static List<SurveyInnovation> companions(
            List<Reading> readings, List<SurveyInnovation> innovations, int one) {
        String instrument = readings.get(one).survey().instrument();
        return IntStream.range(0, readings.size())
                .filter(i -> instrument != null
                        && readings.get(i).string() != readings.get(one).string())
                .filter(i -> instrument != null
                        && instrument.equals(readings.get(i).survey().instrument()))
                .mapToObj(innovations::get)
                .filter(innovation -> Double.isFinite(innovation.value()))
                .toList();
    }

    private void note(LocalDate day, List<Reading> readings, List<SurveyInnovation> innovations) {
        Map<String, List<SurveyInnovation>> byInstrument = new TreeMap<>();
        for (int i = 0; i < readings.size(); i++) {
            String instrument = readings.get(i).survey().instrument();
            if (instrument != null && Double.isFinite(innovations.get(i).value())) {
                byInstrument
                        .computeIfAbsent(instrument, key -> new ArrayList<>())
                        .add(innovations.get(i));
            }
        }
        byInstrument.forEach(
                (instrument, seen) -> book.note(instrument, day, SharedError.seen(seen, parameters), seen.size()));
    }

    /** What the surveys so far tell about each instrument, in order of serial number. */
    public List<InstrumentOffset> instruments() {
        return book.offsets().stream()
                .sorted(Comparator.comparing(InstrumentOffset::instrument))
                .toList();
    }

    /** The state of a string after the surveys so far. */
    public ForecastState state(int string) {
        return states.get(string);
    }
}
