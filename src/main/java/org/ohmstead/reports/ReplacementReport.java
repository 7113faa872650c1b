package org.ohmstead.reports;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.EstateForecast;
import org.ohmstead.assessment.model.estate.CalendarQuarter;
import org.ohmstead.assessment.model.estate.Expected;
import org.ohmstead.assessment.model.estate.ForecastLine;
import org.ohmstead.assessment.model.estate.ReplacementForecast;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;
import org.springframework.stereotype.Component;

/** How many jars will have to be replaced in which quarter, and what that costs by the user's own prices. */
@Component
class ReplacementReport implements ReportMaker {

    private static final int QUARTERS = 8;
    private static final String ALREADY = "already past";

    private final Scene scene;
    private final EstateForecast estate;
    private final JarPrices prices;

    ReplacementReport(Scene scene, EstateForecast estate, JarPrices prices) {
        this.scene = scene;
        this.estate = estate;
        this.prices = prices;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.REPLACEMENT;
    }

    /** Jars of one type in one period, with the price of a jar; the price is null while there is none. */
    private record Item(
            String jarType,
            String period,
            int order,
            Expected jars,
            @Nullable JarPrice price) {

        double cost() {
            return price == null ? Double.NaN : jars.expected() * price.amount().doubleValue();
        }

        private @Nullable BigDecimal times(int count) {
            return price == null ? null : price.amount().multiply(BigDecimal.valueOf(count));
        }
    }

    @Override
    public MadeReport make(ReportWish wish) {
        Scene.Scope scope = scene.of(wish.area());
        ReplacementForecast forecast = estate.replacements(QUARTERS);
        List<ForecastLine> types = types(forecast, wish.area());
        List<Item> items = items(forecast, types);
        List<String> unpriced = items.stream()
                .filter(item -> item.price() == null)
                .map(Item::jarType)
                .distinct()
                .toList();
        int jars = types.stream().mapToInt(ForecastLine::jars).sum();
        int unforeseen = types.stream().mapToInt(ForecastLine::unforeseen).sum();
        Report report = new Report(
                kind().title() + (wish.area() == null ? "" : " of area " + wish.area()),
                forecast.asOf(),
                List.of(
                        scope.scopeFact(),
                        new Fact("As of", forecast.asOf().toString()),
                        scope.zoneFact(),
                        new Fact("Jars in use", jars + ", of which nothing can be said of " + unforeseen),
                        new Fact(
                                "Prices",
                                unpriced.isEmpty()
                                        ? "the user's own, each as of the quarter's first day"
                                        : "NONE for " + String.join(", ", unpriced)
                                                + ": their jars are counted, but no cost holds them"),
                        new Fact(
                                "Ranges",
                                "hold the number four times in five, widened by a fifth for what jars share;"
                                        + " ranges don't add up, expected numbers do")),
                List.of(costs(items), quarters(forecast, total(forecast, wish.area())), itemSection(items)),
                "What is forecast is that a jar passes its ohmic limit; whether it still holds its load only a capacity"
                        + " test shows.");
        return new MadeReport(report, "By jar type", scope.fileName(kind()));
    }

    private static List<ForecastLine> types(ReplacementForecast forecast, @Nullable String area) {
        return area == null
                ? forecast.byJarType()
                : forecast.byAreaAndJarType().stream()
                        .filter(line -> area.equals(line.area()))
                        .toList();
    }

    private static @Nullable ForecastLine total(ReplacementForecast forecast, @Nullable String area) {
        return area == null
                ? forecast.total()
                : forecast.byArea().stream()
                        .filter(line -> area.equals(line.area()))
                        .findFirst()
                        .orElse(null);
    }

    private List<Item> items(ReplacementForecast forecast, List<ForecastLine> types) {
        List<Map<String, JarPrice>> byQuarter = forecast.quarters().stream()
                .map(quarter -> prices.on(later(quarter.from(), forecast.asOf())))
                .toList();
        List<Item> items = new ArrayList<>();
        for (ForecastLine line : types) {
            String type = String.valueOf(line.jarType());
            items.add(
                    new Item(type, ALREADY, 0, line.already(), byQuarter.get(0).get(type)));
            for (int i = 0; i < forecast.quarters().size(); i++) {
                CalendarQuarter quarter = forecast.quarters().get(i);
                items.add(new Item(
                        type,
                        quarter.title(),
                        i + 1,
                        line.byQuarter().get(i),
                        byQuarter.get(i).get(type)));
            }
        }
        return items;
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static Section costs(List<Item> items) {
        Map<Integer, Map<String, Double>> sums = new TreeMap<>();
        Map<Integer, String> titles =
                items.stream().collect(Collectors.toMap(Item::order, Item::period, (one, same) -> one, TreeMap::new));
        items.stream()
                .filter(item -> item.price() != null)
                .forEach(item -> sums.computeIfAbsent(item.order(), order -> new TreeMap<>())
                        .merge(
                                String.valueOf(
                                        item.price() == null ? "" : item.price().currency()),
                                item.cost(),
                                Double::sum));
        List<List<Cell>> rows = new ArrayList<>();
        Map<String, Double> running = new TreeMap<>();
        sums.forEach((order, byCurrency) -> byCurrency.forEach((currency, cost) -> {
            double soFar = running.merge(currency, cost, Double::sum);
            rows.add(List.of(Cell.of(titles.get(order)), Cell.of(currency), Cell.of(cost, 0), Cell.of(soFar, 0)));
        }));
        return new Section(
                "Costs",
                rows.isEmpty()
                        ? "No price is known: enter them in the Library under Prices."
                        : "Expected number times the price of a jar, summed over the jar types that have a price.",
                List.of(
                        Column.words("When", 20),
                        Column.words("Currency", 10),
                        Column.number("Expected cost", 14),
                        Column.number("From now on in all", 16)),
                rows);
    }

    private static Section quarters(ReplacementForecast forecast, @Nullable ForecastLine total) {
        List<List<Cell>> rows = new ArrayList<>();
        if (total != null) {
            rows.add(numbers(ALREADY, total.already()));
            for (int i = 0; i < forecast.quarters().size(); i++) {
                rows.add(numbers(
                        forecast.quarters().get(i).title(), total.byQuarter().get(i)));
            }
            rows.add(numbers("in all", total.inAll()));
        }
        return new Section(
                "By quarter",
                rows.isEmpty() ? "No jar is in use here." : "Jars of all types.",
                List.of(
                        Column.words("When", 20),
                        Column.number("Expected jars", 12),
                        Column.number("At least", 10),
                        Column.number("At most", 10)),
                rows);
    }

    private static List<Cell> numbers(String when, Expected jars) {
        return List.of(Cell.of(when), Cell.of(jars.expected(), 1), Cell.of(jars.low()), Cell.of(jars.high()));
    }

    private static Section itemSection(List<Item> items) {
        return new Section(
                "By jar type",
                items.isEmpty() ? "No jar is in use here." : "Each jar type in each quarter, with its own range.",
                List.of(
                        Column.words("Jar type", 18),
                        Column.words("When", 14),
                        Column.number("Expected jars", 10),
                        Column.number("At least", 8),
                        Column.number("At most", 8),
                        Column.number("Price of a jar", 10),
                        Column.words("Currency", 8),
                        Column.number("Expected cost", 12),
                        Column.number("Cost at least", 12),
                        Column.number("Cost at most", 12)),
                items.stream().map(ReplacementReport::row).toList());
    }

    private static List<Cell> row(Item item) {
        JarPrice price = item.price();
        return List.of(
                Cell.of(item.jarType()),
                Cell.of(item.period()),
                Cell.of(item.jars().expected(), 1),
                Cell.of(item.jars().low()),
                Cell.of(item.jars().high()),
                Cell.of(price == null ? null : price.amount().doubleValue(), 2),
                Cell.of(price == null ? "" : price.currency()),
                Cell.of(item.cost(), 0),
                money(item.times(item.jars().low())),
                money(item.times(item.jars().high())));
    }

    private static Cell money(@Nullable BigDecimal sum) {
        return Cell.of(sum == null ? null : sum.doubleValue(), 0);
    }
}
