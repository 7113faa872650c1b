package org.ohmstead.fleet;

import java.util.List;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.fleet.csv.SiteEntry;
import org.ohmstead.kernel.Conflict;
import org.springframework.stereotype.Component;

/** Keeps sites. */
@Component
class SiteKeeper {

    private final Sites sites;
    private final BatteryStrings strings;
    private final AreaKeeper areas;
    private final Access access;
    private final Keeping keeping;

    SiteKeeper(Sites sites, BatteryStrings strings, AreaKeeper areas, Access access, Keeping keeping) {
        this.sites = sites;
        this.strings = strings;
        this.areas = areas;
        this.access = access;
        this.keeping = keeping;
    }

    SiteView create(SiteEntry wished) {
        SiteEntry entry = Sound.entry(Sheets.SITES, wished);
        Area area = areas.named(entry.area());
        access.require(Permission.EDIT_REGISTER, area.id());
        requireFree(entry.code());
        Site site = Stored.orConflict(() -> sites.saveAndFlush(new Site(entry, area)));
        keeping.created(Sheets.SITES, entry, area.id());
        return site.view();
    }

    SiteView change(Site site, SiteEntry wished) {
        access.require(Permission.EDIT_REGISTER, site.area().id());
        SiteEntry before = site.view().entry();
        SiteEntry entry = Sound.entry(Sheets.SITES, wished);
        if (!entry.code().equals(before.code())) {
            requireFree(entry.code());
        }
        Area area = areas.named(entry.area());
        access.require(Permission.EDIT_REGISTER, area.id());
        List<BatteryString> itsStrings = strings.ofSite(site.id());
        requireUnusedWhenRetired(itsStrings, entry);
        site.become(entry, area);
        Stored.orConflict(sites::flush);
        keeping.changed(Sheets.SITES, before, entry, area.id());
        itsStrings.forEach(string -> keeping.announce(string.id()));
        return site.view();
    }

    private void requireFree(String code) {
        if (sites.findByCode(code).isPresent()) {
            throw new Conflict("There is already a site " + code + ". Choose another code, or change that site.");
        }
    }

    private static void requireUnusedWhenRetired(List<BatteryString> itsStrings, SiteEntry entry) {
        if (entry.retiredOn() != null && itsStrings.stream().anyMatch(string -> !string.isRetired())) {
            throw new Conflict("The site " + entry.code() + " still has strings in use. Retire its strings first.");
        }
    }
}
