package org.ohmstead.intake.web;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.ColumnMapView;
import org.ohmstead.intake.ColumnMaps;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.MapPreview;
import org.ohmstead.intake.map.ColumnMap;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Column maps as JSON: listed, saved version by version, guessed from an upload and tried on it. */
@RestController
@RequestMapping("/api/column-maps")
class ColumnMapResource {

    private final ColumnMaps maps;
    private final Intake intake;

    ColumnMapResource(ColumnMaps maps, Intake intake) {
        this.maps = maps;
        this.intake = intake;
    }

    @GetMapping
    List<ColumnMapView> all() {
        return maps.all();
    }

    @GetMapping("/{name}")
    ColumnMapView named(@PathVariable String name) {
        return maps.named(name);
    }

    @PutMapping("/{name}")
    ColumnMapView save(
            @PathVariable String name,
            @RequestParam(name = "area", required = false) @Nullable Long areaId,
            @RequestParam(name = "belongsTo", defaultValue = "") String belongsTo,
            @RequestBody ColumnMap map) {
        return maps.save(name, areaId, belongsTo, map);
    }

    /** Not tried any more; it stays on record. */
    @DeleteMapping("/{name}")
    ColumnMapView retire(@PathVariable String name) {
        return maps.retire(name);
    }

    @GetMapping("/guess")
    ColumnMap guess(@RequestParam UUID upload) {
        return maps.guess(intake.raw(upload));
    }

    /** What handing in the upload's bytes by this map would come to; nothing is kept. */
    @PostMapping("/preview")
    MapPreview preview(@RequestParam UUID upload, @RequestBody ColumnMap map) {
        return maps.preview(intake.upload(upload).fileName(), intake.raw(upload), map);
    }
}
