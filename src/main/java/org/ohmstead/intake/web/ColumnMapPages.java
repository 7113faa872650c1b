package org.ohmstead.intake.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.intake.ColumnMaps;
import org.ohmstead.intake.Handover;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.MapPreview;
import org.ohmstead.intake.UploadView;
import org.ohmstead.intake.file.Fact;
import org.ohmstead.intake.file.FileText;
import org.ohmstead.intake.file.Unit;
import org.ohmstead.intake.map.ColumnMap;
import org.ohmstead.intake.map.ColumnRule;
import org.ohmstead.intake.map.FactRule;
import org.ohmstead.intake.map.Holds;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The pages on which a column map is built from a sample, shown at work, and saved. */
@Controller
class ColumnMapPages {

    private static final int SHOWN_LINES = 16;
    private static final int SPARE_FIELDS = 3;

    private final ColumnMaps maps;
    private final Intake intake;
    private final Access access;

    ColumnMapPages(ColumnMaps maps, Intake intake, Access access) {
        this.maps = maps;
        this.intake = intake;
        this.access = access;
    }

    @GetMapping("/intake/maps")
    String list(Model model) {
        model.addAttribute("maps", maps.all());
        model.addAttribute("ticket", UUID.randomUUID());
        model.addAttribute("mayHandIn", access.current().may(Permission.HAND_IN_SURVEYS));
        model.addAttribute("mayEdit", access.current().may(Permission.SETTLE_SURVEYS));
        return "intake/maps";
    }

    /** A sample is handed in like any file: whatever becomes of it, its bytes are kept. */
    @PostMapping("/intake/maps/sample")
    String sample(@RequestParam UUID ticket, @RequestParam("file") MultipartFile file) throws IOException {
        UploadView upload = intake.receive(UploadResource.handover(ticket, file, null, null))
                .upload();
        return "redirect:/intake/maps/new?upload=" + upload.id();
    }

    @GetMapping("/intake/maps/new")
    String guessed(@RequestParam UUID upload, Model model) {
        return builder(intake.upload(upload), maps.guess(intake.raw(upload)), "", model);
    }

    @PostMapping("/intake/maps/new")
    String shown(@RequestParam UUID upload, @RequestParam MultiValueMap<String, String> form, Model model) {
        return builder(intake.upload(upload), MapForm.map(form), MapForm.one(form, "name"), model);
    }

    /** Saves the map and hands the sample in again, which is now read by it. */
    @PostMapping("/intake/maps/save")
    String save(
            @RequestParam UUID upload,
            @RequestParam MultiValueMap<String, String> form,
            Model model,
            RedirectAttributes redirect) {
        UploadView sample = intake.upload(upload);
        String name = MapForm.one(form, "name");
        ColumnMap map = MapForm.map(form);
        try {
            maps.save(name, null, MapForm.one(form, "belongsTo").strip(), map);
        } catch (Refused e) {
            model.addAttribute("problem", e.getMessage());
            return builder(sample, map, name, model);
        }
        redirect.addFlashAttribute("notice", "The column map is saved, and the file was handed in again.");
        Handover again = new Handover(nameOf(upload, name, map), sample.fileName(), intake.raw(upload), null);
        return "redirect:/intake/" + intake.receive(again).upload().id();
    }

    /** The same form sent twice is one upload. */
    private static UUID nameOf(UUID sample, String map, ColumnMap content) {
        return UUID.nameUUIDFromBytes((sample + "\n" + map + "\n" + content).getBytes(StandardCharsets.UTF_8));
    }

    @PostMapping("/intake/maps/retire")
    String retire(@RequestParam String name, RedirectAttributes redirect) {
        maps.retire(name);
        redirect.addFlashAttribute("notice", "Files are no longer tried against this map.");
        return "redirect:/intake/maps";
    }

    private String builder(UploadView upload, ColumnMap map, String name, Model model) {
        byte[] bytes = intake.raw(upload.id());
        model.addAttribute("upload", upload);
        model.addAttribute("map", map);
        model.addAttribute("name", name);
        model.addAttribute("lines", FileText.firstLines(bytes, SHOWN_LINES));
        model.addAttribute("columns", withSpare(map.columns(), new ColumnRule("", "", "", "")));
        model.addAttribute("quantities", withSpare(map.quantities(), new ColumnRule("", "", "", "")));
        model.addAttribute("facts", withSpare(map.facts(), new FactRule("", "", "", "")));
        model.addAttribute("holds", Holds.WORDS);
        model.addAttribute("units", Arrays.stream(Unit.values()).map(Unit::sign).toList());
        model.addAttribute("keys", Arrays.stream(Fact.values()).map(Fact::key).toList());
        model.addAttribute("mayEdit", access.current().may(Permission.SETTLE_SURVEYS));
        try {
            MapPreview preview = maps.preview(upload.fileName(), bytes, map);
            model.addAttribute("preview", preview);
        } catch (Refused e) {
            model.addAttribute("incomplete", e.getMessage());
        }
        return "intake/map-builder";
    }

    private static <T> List<T> withSpare(List<T> rules, T empty) {
        List<T> all = new ArrayList<>(rules);
        for (int i = 0; i < SPARE_FIELDS; i++) {
            all.add(empty);
        }
        return all;
    }
}
