package org.ohmstead.fleet;

import java.util.stream.Collectors;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.access.Reach;
import org.ohmstead.fleet.csv.AreaEntry;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Component;

/** Keeps areas. They decide who reaches what, so only administrators change them. */
@Component
class AreaKeeper {

    private final Areas areas;
    private final Sites sites;
    private final Access access;
    private final Keeping keeping;

    AreaKeeper(Areas areas, Sites sites, Access access, Keeping keeping) {
        this.areas = areas;
        this.sites = sites;
        this.access = access;
        this.keeping = keeping;
    }

    AreaView create(AreaEntry wished) {
        access.require(Permission.ADMINISTER);
        AreaEntry entry = Sound.entry(Sheets.AREAS, wished);
        requireFree(entry.code());
        Area area = Stored.orConflict(() -> areas.saveAndFlush(new Area(entry)));
        keeping.created(Sheets.AREAS, entry, area.id());
        return area.view();
    }

    AreaView change(Area area, AreaEntry wished) {
        access.require(Permission.ADMINISTER);
        AreaEntry before = area.view().entry();
        AreaEntry entry = Sound.entry(Sheets.AREAS, wished);
        if (!entry.code().equals(before.code())) {
            requireFree(entry.code());
        }
        requireEmptyWhenRetired(area, entry);
        area.become(entry);
        Stored.orConflict(areas::flush);
        keeping.changed(Sheets.AREAS, before, entry, area.id());
        return area.view();
    }

    /** @throws Refused naming the areas there are */
    Area named(String code) {
        return areas.findByCode(code)
                .filter(area -> access.reach().covers(area.id()))
                .orElseThrow(() -> Sound.refusal(
                        Sheets.SITES, "area", code, "There is no area " + code + ".", "Areas are: " + choices() + "."));
    }

    private String choices() {
        Reach reach = access.reach();
        return areas.findAllByOrderByCode().stream()
                .filter(area -> reach.covers(area.id()))
                .map(Area::code)
                .collect(Collectors.collectingAndThen(
                        Collectors.joining(", "), codes -> codes.isEmpty() ? "none yet" : codes));
    }

    private void requireFree(String code) {
        if (areas.findByCode(code).isPresent()) {
            throw new Conflict("There is already an area " + code + ". Choose another code, or change that area.");
        }
    }

    private void requireEmptyWhenRetired(Area area, AreaEntry entry) {
        if (entry.retiredOn() != null && sites.existsByAreaIdAndRetiredOnIsNull(area.id())) {
            throw new Conflict("The area " + area.code() + " still has sites in use. Move or retire its sites first.");
        }
    }
}
