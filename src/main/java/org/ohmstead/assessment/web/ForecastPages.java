package org.ohmstead.assessment.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ohmstead.assessment.EstateForecast;
import org.ohmstead.assessment.model.estate.CalendarQuarter;
import org.ohmstead.assessment.model.estate.Expected;
import org.ohmstead.assessment.model.estate.ForecastLine;
import org.ohmstead.assessment.model.estate.LifeCurve;
import org.ohmstead.assessment.model.estate.ReplacementForecast;
import org.ohmstead.assessment.model.estate.WeibullLife;
import org.ohmstead.chart.Bars;
import org.ohmstead.chart.BarsDrawing;
import org.ohmstead.chart.LifeDrawing;
import org.ohmstead.chart.LifePlot;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What will have to be replaced when, and how long jars have lasted. */
@Controller
class ForecastPages {

    static final List<Integer> SPANS = List.of(4, 8, 12);

    private final EstateForecast forecast;
    private final FleetRegister register;

    ForecastPages(EstateForecast forecast, FleetRegister register) {
        this.forecast = forecast;
        this.register = register;
    }

    /** A life curve with its drawing. */
    record Life(LifeCurve curve, String chart) {}

    @GetMapping("/forecast")
    String page(
            @RequestParam(defaultValue = "8") int quarters, @RequestParam(defaultValue = "") String area, Model model) {
        ReplacementForecast all = forecast.replacements(quarters);
        ForecastLine total = area.isEmpty() ? all.total() : ofArea(all, area);
        model.addAttribute("shown", Shown.FOR_PAGES);
        model.addAttribute("forecast", all);
        model.addAttribute("total", total);
        model.addAttribute("lines", lines(all, area));
        model.addAttribute("areas", register.areas());
        model.addAttribute("area", area);
        model.addAttribute("span", quarters);
        model.addAttribute("spans", SPANS);
        model.addAttribute("chart", BarsDrawing.of("replacements", bars(all.quarters(), total)));
        lives(model);
        return "assessment/forecast";
    }

    private void lives(Model model) {
        List<LifeCurve> curves = forecast.lifeCurves();
        model.addAttribute(
                "lives",
                curves.stream()
                        .filter(curve -> curve.failures() > 0)
                        .map(ForecastPages::life)
                        .toList());
        model.addAttribute(
                "lasting",
                curves.stream().filter(curve -> curve.failures() == 0).toList());
    }

    private static ForecastLine ofArea(ReplacementForecast all, String area) {
        return all.byArea().stream()
                .filter(line -> area.equals(line.area()))
                .findFirst()
                .orElseThrow(() -> NotFound.of("jars in area", area));
    }

    private static List<ForecastLine> lines(ReplacementForecast all, String area) {
        return area.isEmpty()
                ? all.byJarType()
                : all.byAreaAndJarType().stream()
                        .filter(line -> area.equals(line.area()))
                        .toList();
    }

    private static Bars bars(List<CalendarQuarter> quarters, ForecastLine line) {
        List<Bars.Bar> bars = new ArrayList<>();
        bars.add(bar("due\nalready", line.already()));
        for (int q = 0; q < quarters.size(); q++) {
            bars.add(bar(
                    quarters.get(q).title().replace(' ', '\n'), line.byQuarter().get(q)));
        }
        return new Bars("Jars that pass their limit, by quarter", "jars", bars);
    }

    private static Bars.Bar bar(String words, Expected expected) {
        return new Bars.Bar(words, expected.expected(), expected.low(), expected.high());
    }

    private static Life life(LifeCurve curve) {
        WeibullLife fit = curve.weibull();
        Stream<WeibullLife.Age> ages = fit == null ? Stream.empty() : fit.curve().stream();
        LifePlot plot = new LifePlot(
                "How long jars of type " + curve.jarType() + " last",
                curve.steps().stream()
                        .map(step -> new LifePlot.Point(step.years(), step.inService(), step.low(), step.high()))
                        .toList(),
                ages.map(age -> new LifePlot.Point(age.years(), age.inService(), age.low(), age.high()))
                        .toList(),
                curve.longestYears());
        return new Life(curve, LifeDrawing.of("life-" + curve.jarType(), plot));
    }
}
