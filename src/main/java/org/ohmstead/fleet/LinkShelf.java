package org.ohmstead.fleet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.Flaw;
import org.springframework.stereotype.Component;

/** Links in bulk. Which there are follows from the strings' plans; a file can only say how they are built. */
@Component
class LinkShelf implements Shelf<LinkEntry> {

    private final FleetRegister register;
    private final Links links;
    private final Keeping keeping;

    LinkShelf(FleetRegister register, Links links, Keeping keeping) {
        this.register = register;
        this.links = links;
        this.keeping = keeping;
    }

    @Override
    public Sheet<LinkEntry> sheet() {
        return Sheets.LINKS;
    }

    @Override
    public List<LinkEntry> entries() {
        StringsInReach strings = new StringsInReach(register.strings());
        return links.ofStrings(strings.ids()).stream()
                .map(link -> entry(strings.of(link.stringId()), link))
                .toList();
    }

    @Override
    public List<Flaw> fulfil(List<Wish<LinkEntry>> wishes) {
        StringsInReach strings = new StringsInReach(register.strings());
        List<Flaw> flaws = new ArrayList<>();
        Map<StringView, List<Wish<LinkEntry>>> wishesOf = new LinkedHashMap<>();
        List<LinkView> changed = new ArrayList<>();
        for (Wish<LinkEntry> wish : wishes) {
            LinkEntry link = wish.after();
            StringView string = strings.named(link.site(), link.string()).orElse(null);
            if (string == null) {
                flaws.add(StringsInReach.missing(wish.line(), sheet(), link.site(), link.string()));
            } else if (wish.before() == null) {
                flaws.add(beyond(wish, string));
            } else {
                changed.add(new LinkView(string.id(), link.ordinal(), link.kind(), link.straps(), link.conductor()));
                StringsInReach.gather(wishesOf, string, wish);
            }
        }
        links.add(changed);
        StringsInReach.writeDown(keeping, sheet(), wishesOf);
        return flaws;
    }

    static LinkEntry entry(StringView string, LinkView link) {
        return new LinkEntry(
                string.siteCode(), string.name(), link.ordinal(), link.kind(), link.straps(), link.conductor());
    }

    private Flaw beyond(Wish<LinkEntry> wish, StringView string) {
        return new Flaw(
                wish.line(),
                sheet().columnNumber("link"),
                String.valueOf(wish.after().ordinal()),
                string.title() + " has no such link.",
                "Its links are 0 to " + string.positions() + "; change the string's tiers to have more.");
    }
}
