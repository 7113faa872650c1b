package org.ohmstead.assessment.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.assessment.InstrumentSurvey;
import org.ohmstead.assessment.InstrumentView;
import org.ohmstead.assessment.Instruments;
import org.ohmstead.chart.Deviations;
import org.ohmstead.chart.DeviationsDrawing;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The instruments, and the evidence for what each seems to read off. */
@Controller
class InstrumentPages {

    private final Instruments instruments;
    private final Access access;
    private final Clock clock;

    InstrumentPages(Instruments instruments, Access access, Clock clock) {
        this.instruments = instruments;
        this.access = access;
        this.clock = clock;
    }

    @GetMapping("/instruments")
    String list(Model model) {
        common(model);
        List<InstrumentView> all = instruments.all();
        model.addAttribute("instruments", all);
        model.addAttribute("off", all.stream().filter(InstrumentView::off).toList());
        model.addAttribute("mayLook", access.current().may(Permission.SETTLE_SURVEYS));
        return "assessment/instruments";
    }

    @PostMapping("/instruments")
    String look(RedirectAttributes redirect) {
        instruments.lookAgain();
        redirect.addFlashAttribute("notice", "The surveys of the whole estate were looked through.");
        return "redirect:/instruments";
    }

    @GetMapping("/instruments/evidence")
    String evidence(@RequestParam String serial, Model model) {
        common(model);
        InstrumentView instrument = instruments.instrument(serial);
        List<InstrumentSurvey> surveys = instruments.surveys(serial);
        model.addAttribute("instrument", instrument);
        model.addAttribute("surveys", surveys);
        model.addAttribute("most", Instruments.MOST_SURVEYS);
        model.addAttribute("chart", DeviationsDrawing.of("errors", deviations(instrument, surveys)));
        return "assessment/instrument";
    }

    private void common(Model model) {
        model.addAttribute("shown", Shown.FOR_PAGES);
        model.addAttribute("threshold", instruments.threshold());
        model.addAttribute("today", LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
    }

    private static Deviations deviations(InstrumentView instrument, List<InstrumentSurvey> surveys) {
        List<Deviations.Dot> dots = new ArrayList<>();
        for (InstrumentSurvey survey : surveys) {
            Double off = survey.off();
            if (off != null) {
                dots.add(new Deviations.Dot(survey.on(), off * 100, survey.evidence()));
            }
        }
        return new Deviations("How far its surveys lay from what was expected", dots, level(instrument.finding()));
    }

    private static Deviations.@Nullable Level level(InstrumentView.@Nullable Finding finding) {
        return finding == null
                ? null
                : new Deviations.Level(
                        finding.since(), finding.offset() * 100, finding.low() * 100, finding.high() * 100);
    }
}
