package org.ohmstead.fleet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.Flaw;
import org.springframework.stereotype.Component;

/** Remakes in bulk. */
@Component
class RemakeShelf implements Shelf<RemakeEntry> {

    private final FleetRegister register;
    private final Remakes remakes;
    private final Keeping keeping;

    RemakeShelf(FleetRegister register, Remakes remakes, Keeping keeping) {
        this.register = register;
        this.remakes = remakes;
        this.keeping = keeping;
    }

    @Override
    public Sheet<RemakeEntry> sheet() {
        return Sheets.REMAKES;
    }

    @Override
    public List<RemakeEntry> entries() {
        StringsInReach strings = new StringsInReach(register.strings());
        return remakes.ofStrings(strings.ids()).stream()
                .map(remake -> entry(strings.of(remake.stringId()), remake))
                .toList();
    }

    @Override
    public List<Flaw> fulfil(List<Wish<RemakeEntry>> wishes) {
        StringsInReach strings = new StringsInReach(register.strings());
        List<Flaw> flaws = new ArrayList<>();
        Map<StringView, List<Wish<RemakeEntry>>> wishesOf = new LinkedHashMap<>();
        for (Wish<RemakeEntry> wish : wishes) {
            RemakeEntry remake = wish.after();
            StringView string = strings.named(remake.site(), remake.string()).orElse(null);
            if (string == null) {
                flaws.add(StringsInReach.missing(wish.line(), sheet(), remake.site(), remake.string()));
            } else if (remake.ordinal() > string.positions()) {
                flaws.add(beyond(wish, string));
            } else {
                Stored.orConflict(() -> remakes.put(string.id(), remake));
                StringsInReach.gather(wishesOf, string, wish);
            }
        }
        StringsInReach.writeDown(keeping, sheet(), wishesOf);
        return flaws;
    }

    static RemakeEntry entry(StringView string, RemakeView remake) {
        return new RemakeEntry(
                string.siteCode(),
                string.name(),
                remake.ordinal(),
                remake.remadeOn(),
                remake.asFoundMicroohms(),
                remake.asLeftMicroohms(),
                remake.note());
    }

    private Flaw beyond(Wish<RemakeEntry> wish, StringView string) {
        return new Flaw(
                wish.line(),
                sheet().columnNumber("link"),
                String.valueOf(wish.after().ordinal()),
                string.title() + " has no such link.",
                "Its links are 0 to " + string.positions() + ".");
    }
}
