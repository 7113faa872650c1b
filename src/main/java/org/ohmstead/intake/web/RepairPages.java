package org.ohmstead.intake.web;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.intake.Bench;
import org.ohmstead.intake.ColumnMapView;
import org.ohmstead.intake.ColumnMaps;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.RepairBench;
import org.ohmstead.intake.UploadState;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The bench on which a held survey is put right. Every repair is one form; nothing needs a script. */
@Controller
class RepairPages {

    private final RepairBench bench;
    private final Intake intake;
    private final ColumnMaps maps;
    private final StepForm form;
    private final Access access;

    RepairPages(RepairBench bench, Intake intake, ColumnMaps maps, StepForm form, Access access) {
        this.bench = bench;
        this.intake = intake;
        this.maps = maps;
        this.form = form;
        this.access = access;
    }

    /**
     * The bench.
     *
     * @param what with position: the single value that a remark asks about, filled in beforehand
     */
    @GetMapping("/intake/{id}/repair")
    String bench(
            @PathVariable UUID id,
            @RequestParam(required = false) @Nullable ColumnKind what,
            @RequestParam(required = false) @Nullable Integer position,
            Model model) {
        if (intake.upload(id).state() != UploadState.HELD) {
            return "redirect:/intake/" + id;
        }
        Bench held = bench.look(id);
        model.addAttribute("bench", held);
        model.addAttribute("upload", held.upload());
        model.addAttribute("held", HoldingRemark.of(held, form));
        model.addAttribute("others", HoldingRemark.others(held));
        model.addAttribute("rows", BenchTable.of(held.lines()));
        model.addAttribute("drawing", PatternDrawing.of(held.lines()));
        model.addAttribute("misfit", BenchTable.percent(held.now().misfitPercent()));
        model.addAttribute("what", what == null ? ColumnKind.JAR_OHMIC : what);
        model.addAttribute("position", position);
        model.addAttribute("maps", savedMaps());
        model.addAttribute("mayRepair", access.current().may(Permission.HAND_IN_SURVEYS));
        model.addAttribute("maySettle", access.current().may(Permission.SETTLE_SURVEYS));
        return "intake/repair";
    }

    @PostMapping("/intake/{id}/repair")
    String repair(@PathVariable UUID id, @RequestParam Map<String, String> asked, RedirectAttributes redirect) {
        access.require(Permission.HAND_IN_SURVEYS);
        return act(id, redirect, () -> {
            bench.repair(id, form.step(asked), StepForm.reason(asked));
            redirect.addFlashAttribute("notice", "Repaired, and checked again. The file itself is untouched.");
            return "/repair";
        });
    }

    @PostMapping("/intake/{id}/take-back")
    String takeBack(@PathVariable UUID id, RedirectAttributes redirect) {
        return act(id, redirect, () -> {
            bench.takeBack(id);
            redirect.addFlashAttribute("notice", "The last repair is taken back.");
            return "/repair";
        });
    }

    @PostMapping("/intake/{id}/store")
    String store(@PathVariable UUID id, RedirectAttributes redirect) {
        return act(id, redirect, () -> {
            bench.store(id);
            redirect.addFlashAttribute("notice", "The survey is stored as repaired; its steps are kept with it.");
            return "";
        });
    }

    private List<ColumnMapView> savedMaps() {
        return maps.all().stream().filter(map -> !map.retired()).toList();
    }

    private static String act(UUID id, RedirectAttributes redirect, Supplier<String> done) {
        String back = "redirect:/intake/" + id;
        try {
            return back + done.get();
        } catch (Refused | Conflict e) {
            redirect.addFlashAttribute("problem", e.getMessage());
            return back + "/repair";
        }
    }
}
