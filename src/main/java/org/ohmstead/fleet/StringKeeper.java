package org.ohmstead.fleet;

import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Component;

/** Keeps strings, and with them the links that follow from their plan. */
@Component
class StringKeeper {

    private final BatteryStrings strings;
    private final Sites sites;
    private final JarTypeKeeper jarTypes;
    private final Links links;
    private final Occupancies occupancies;
    private final Access access;
    private final Keeping keeping;

    StringKeeper(
            BatteryStrings strings,
            Sites sites,
            JarTypeKeeper jarTypes,
            Links links,
            Occupancies occupancies,
            Access access,
            Keeping keeping) {
        this.strings = strings;
        this.sites = sites;
        this.jarTypes = jarTypes;
        this.links = links;
        this.occupancies = occupancies;
        this.access = access;
        this.keeping = keeping;
    }

    StringView create(StringEntry wished) {
        StringEntry entry = Sound.entry(Sheets.STRINGS, wished);
        Site site = site(entry.site());
        access.require(Permission.EDIT_REGISTER, site.area().id());
        JarType jarType = jarTypes.named(Sheets.STRINGS, entry.jarType());
        requireInUse(site, jarType, entry);
        requireFree(entry);
        BatteryString string = Stored.orConflict(() -> strings.saveAndFlush(new BatteryString(entry, site, jarType)));
        links.add(LinkPlan.of(string.id(), entry.tiers(), entry.strapsPerLink()));
        keeping.created(Sheets.STRINGS, entry, site.area().id());
        keeping.announce(string.id());
        return string.view();
    }

    StringView change(BatteryString string, StringEntry wished) {
        access.require(Permission.EDIT_REGISTER, string.site().area().id());
        StringEntry before = string.view().entry();
        StringEntry entry = Sound.entry(Sheets.STRINGS, wished);
        Site site = site(entry.site());
        access.require(Permission.EDIT_REGISTER, site.area().id());
        if (!Sheets.STRINGS.keyOf(entry).equals(Sheets.STRINGS.keyOf(before))) {
            requireFree(entry);
        }
        requireNothingBeyond(string.id(), entry);
        string.become(entry, site, jarTypes.named(Sheets.STRINGS, entry.jarType()));
        Stored.orConflict(strings::flush);
        links.replan(string.id(), before, entry);
        keeping.changed(Sheets.STRINGS, before, entry, site.area().id());
        keeping.announce(string.id());
        return string.view();
    }

    private Site site(String code) {
        return sites.findByCode(code)
                .filter(site -> access.reach().covers(site.area().id()))
                .orElseThrow(() -> Sound.refusal(
                        Sheets.STRINGS,
                        "site",
                        code,
                        "There is no site " + code + " in your reach.",
                        "Add the site first, or mend the code."));
    }

    private void requireFree(StringEntry entry) {
        if (strings.named(entry.site(), entry.name()).isPresent()) {
            throw new Conflict("The site " + entry.site() + " already has a string " + entry.name()
                    + ". Choose another name, or change that string.");
        }
    }

    private static void requireInUse(Site site, JarType jarType, StringEntry entry) {
        if (entry.retiredOn() == null && site.isRetired()) {
            throw new Conflict("The site " + site.code() + " is retired. Take it into use again first.");
        }
        if (entry.retiredOn() == null && jarType.isRetired()) {
            throw new Conflict("The jar type " + jarType.code() + " is retired. Choose one in use.");
        }
    }

    /** @throws Refused when the new plan has no room for what the register already knows */
    private void requireNothingBeyond(long stringId, StringEntry entry) {
        int last = Math.max(occupancies.lastPosition(stringId), links.lastRemade(stringId));
        if (last > entry.positions()) {
            throw Sound.refusal(
                    Sheets.STRINGS,
                    "tiers",
                    entry.tiers().toString(),
                    "The plan has " + entry.positions() + " positions, but jars or remakes are on record up to " + last
                            + ".",
                    "Plan at least " + last + " positions.");
        }
    }
}
