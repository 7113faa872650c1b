package org.ohmstead.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmstead.fleet.Occupancies.Collision;
import org.ohmstead.fleet.Occupancies.Placing;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.Flaw;
import org.springframework.stereotype.Component;

/** Jars in their places, in bulk. A file may move jars about in any order: only what stands at its end must fit. */
@Component
class OccupancyShelf implements Shelf<OccupancyEntry> {

    private final FleetRegister register;
    private final Occupancies occupancies;
    private final Seats seats;
    private final Keeping keeping;

    OccupancyShelf(FleetRegister register, Occupancies occupancies, Seats seats, Keeping keeping) {
        this.register = register;
        this.occupancies = occupancies;
        this.seats = seats;
        this.keeping = keeping;
    }

    @Override
    public Sheet<OccupancyEntry> sheet() {
        return Sheets.OCCUPANCIES;
    }

    @Override
    public List<OccupancyEntry> entries() {
        StringsInReach strings = new StringsInReach(register.strings());
        return occupancies.ofStrings(strings.ids()).stream()
                .map(jar -> seats.entry(strings.of(jar.stringId()), jar))
                .toList();
    }

    @Override
    public List<Flaw> fulfil(List<Wish<OccupancyEntry>> wishes) {
        StringsInReach strings = new StringsInReach(register.strings());
        Map<String, JarTypeView> jarTypes =
                register.jarTypes().stream().collect(Collectors.toMap(JarTypeView::code, Function.identity()));
        List<Flaw> flaws = new ArrayList<>();
        Map<Boolean, List<Placing>> placings = new HashMap<>(Map.of(true, new ArrayList<>(), false, new ArrayList<>()));
        Map<StringView, List<Wish<OccupancyEntry>>> wishesOf = new LinkedHashMap<>();
        for (Wish<OccupancyEntry> wish : wishes) {
            OccupancyEntry jar = wish.after();
            StringView string = strings.named(jar.site(), jar.string()).orElse(null);
            JarTypeView jarType = jarTypes.get(jar.jarType());
            if (string == null) {
                flaws.add(StringsInReach.missing(wish.line(), sheet(), jar.site(), jar.string()));
            } else if (jar.position() > string.positions()) {
                flaws.add(beyond(wish, string));
            } else if (jarType == null) {
                flaws.add(unknownType(wish, jarTypes));
            } else {
                placings.getOrDefault(wish.before() == null, new ArrayList<>())
                        .add(new Placing(string.id(), jarType.id(), jar));
                StringsInReach.gather(wishesOf, string, wish);
            }
        }
        occupancies.deferCollisions();
        occupancies.add(placings.getOrDefault(true, List.of()));
        occupancies.change(placings.getOrDefault(false, List.of()));
        flaws.addAll(collisions(wishesOf));
        StringsInReach.writeDown(keeping, sheet(), wishesOf);
        if (flaws.isEmpty()) {
            Stored.orConflict(occupancies::refuseCollisions);
        }
        return flaws;
    }

    private List<Flaw> collisions(Map<StringView, List<Wish<OccupancyEntry>>> wishesOf) {
        Map<String, Integer> lines = new HashMap<>();
        wishesOf.values()
                .forEach(wishes -> wishes.forEach(wish -> lines.put(sheet().keyOf(wish.after()), wish.line())));
        Long[] ids = wishesOf.keySet().stream().map(StringView::id).toArray(Long[]::new);
        Map<Long, StringView> byId =
                wishesOf.keySet().stream().collect(Collectors.toMap(StringView::id, Function.identity()));
        return occupancies.collisions(ids).stream()
                .filter(collision -> byId.containsKey(collision.stringId()))
                .filter(collision -> lines.containsKey(key(byId, collision)))
                .map(collision -> flaw(lines.getOrDefault(key(byId, collision), 0), collision))
                .distinct()
                .toList();
    }

    private static String key(Map<Long, StringView> byId, Collision collision) {
        StringView string = byId.get(collision.stringId());
        String title = string == null ? "" : string.title();
        return title + " / " + collision.position() + " / " + collision.from();
    }

    private Flaw flaw(int line, Collision collision) {
        return collision.samePosition()
                ? new Flaw(
                        line,
                        sheet().columnNumber("from"),
                        collision.from().toString(),
                        "Another jar sits at this position " + collision.otherStay() + ".",
                        "End its stay first (column until), or mend the dates.")
                : new Flaw(
                        line,
                        sheet().columnNumber("serial"),
                        collision.serial(),
                        "This jar also sits at " + collision.otherPlace() + " " + collision.otherStay() + ".",
                        "Mend the serial, or end its stay there first.");
    }

    private Flaw beyond(Wish<OccupancyEntry> wish, StringView string) {
        return new Flaw(
                wish.line(),
                sheet().columnNumber("position"),
                String.valueOf(wish.after().position()),
                string.title() + " has no such position.",
                "Its positions are 1 to " + string.positions() + ".");
    }

    private Flaw unknownType(Wish<OccupancyEntry> wish, Map<String, JarTypeView> jarTypes) {
        return new Flaw(
                wish.line(),
                sheet().columnNumber("jar_type"),
                wish.after().jarType(),
                "There is no jar type " + wish.after().jarType() + ".",
                "Jar types are: "
                        + String.join(", ", jarTypes.keySet().stream().sorted().toList()) + ".");
    }
}
