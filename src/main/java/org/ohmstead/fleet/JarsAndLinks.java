package org.ohmstead.fleet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.Occupancies.Placing;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The other half of the register: which jar sits where, how the links are built and when they were remade.
 *
 * <p>Every change throws {@link org.ohmstead.kernel.Refused} when the entry breaks a rule, {@link Conflict} when it
 * contradicts the register, and {@link NotFound} outside the reach.
 */
@Service
@Transactional
public class JarsAndLinks {

    private final FleetRegister register;
    private final JarTypeKeeper jarTypes;
    private final Occupancies occupancies;
    private final Seats seats;
    private final Links links;
    private final Remakes remakes;
    private final Access access;
    private final Keeping keeping;

    JarsAndLinks(
            FleetRegister register,
            JarTypeKeeper jarTypes,
            Occupancies occupancies,
            Seats seats,
            Links links,
            Remakes remakes,
            Access access,
            Keeping keeping) {
        this.register = register;
        this.jarTypes = jarTypes;
        this.occupancies = occupancies;
        this.seats = seats;
        this.links = links;
        this.remakes = remakes;
        this.access = access;
        this.keeping = keeping;
    }

    /** Puts a jar at a free position. */
    public OccupancyView placeJar(OccupancyEntry wished) {
        OccupancyEntry entry = Sound.entry(Sheets.OCCUPANCIES, wished);
        StringView string = editable(entry.site(), entry.string());
        Placing placing = placing(string, entry);
        seats.requireFree(placing, 0);
        Stored.orConflict(() -> occupancies.add(List.of(placing)));
        keeping.done("jar placed", string, Sheets.OCCUPANCIES.cells(entry));
        return placed(placing);
    }

    /** Puts one jar without serial at every position that is empty on that day and after; says how many. */
    public int fillEmptyPositions(long stringId, LocalDate from) {
        StringView string = editable(register.string(stringId));
        List<Placing> placings = IntStream.rangeClosed(1, string.positions())
                .filter(position -> occupancies
                        .at(stringId, position, DateRange.startingOn(Sound.day(from)))
                        .isEmpty())
                .mapToObj(position -> new Placing(stringId, string.jarTypeId(), unnamed(string, position, from)))
                .toList();
        placings.forEach(placing -> seats.requireInPlan(string, placing.entry()));
        Stored.orConflict(() -> occupancies.add(placings));
        keeping.done("empty positions filled", string, Map.of("from", from.toString(), "jars", placings.size()));
        return placings.size();
    }

    /** The jar that sits there on the newcomer's first day leaves on that day. */
    public OccupancyView replaceJar(OccupancyEntry wished) {
        OccupancyEntry newcomer = Sound.entry(Sheets.OCCUPANCIES, wished);
        StringView string = editable(newcomer.site(), newcomer.string());
        OccupancyView sitting = seats.sitting(string, newcomer.position(), newcomer.from());
        Placing placing = placing(string, newcomer);
        OccupancyEntry leaver = seats.entry(string, sitting, newcomer.from(), newcomer.reason());
        Stored.orConflict(
                () -> occupancies.change(sitting.id(), new Placing(string.id(), sitting.jarTypeId(), leaver)));
        seats.requireFree(placing, 0);
        Stored.orConflict(() -> occupancies.add(List.of(placing)));
        keeping.done("jar replaced", string, Sheets.OCCUPANCIES.cells(newcomer));
        return placed(placing);
    }

    /** The position is empty from that day on. */
    public OccupancyView removeJar(long stringId, int position, LocalDate on, String reason) {
        StringView string = editable(register.string(stringId));
        OccupancyView sitting = seats.sitting(string, position, Sound.day(on));
        OccupancyEntry leaver = Sound.entry(Sheets.OCCUPANCIES, seats.entry(string, sitting, on, reason));
        Stored.orConflict(() -> occupancies.change(sitting.id(), new Placing(stringId, sitting.jarTypeId(), leaver)));
        keeping.done("jar removed", string, Sheets.OCCUPANCIES.cells(leaver));
        return occupancy(sitting.id());
    }

    /** Corrects what is on record of a jar in its place, its dates included; the string can't be changed. */
    public OccupancyView changeOccupancy(long id, OccupancyEntry wished) {
        OccupancyView before = occupancy(id);
        OccupancyEntry entry = Sound.entry(Sheets.OCCUPANCIES, wished);
        StringView string = editable(register.string(before.stringId()));
        Placing placing = placing(string, entry);
        seats.requireFree(placing, id);
        Stored.orConflict(() -> occupancies.change(id, placing));
        OccupancyEntry old = seats.entry(string, before);
        keeping.done("jar's record changed", string, Sound.changes(Sheets.OCCUPANCIES, old, entry));
        return occupancy(id);
    }

    /**
     * Undoes a placing or a replacement: the record goes, and the jar that left on its first day sits there again for
     * as long as the record had lasted. The audit trail keeps what was undone.
     */
    public void takeBack(long occupancyId) {
        OccupancyView undone = occupancy(occupancyId);
        StringView string = editable(register.string(undone.stringId()));
        occupancies.delete(occupancyId);
        seats.leftOn(undone).ifPresent(before -> {
            OccupancyEntry staying = seats.entry(string, before, undone.during().until(), undone.leftReason());
            Placing placing = new Placing(string.id(), before.jarTypeId(), staying);
            seats.requireFree(placing, before.id());
            Stored.orConflict(() -> occupancies.change(before.id(), placing));
        });
        keeping.done(
                "jar's record taken back",
                string,
                Map.of(
                        "position",
                        undone.position(),
                        "jar",
                        undone.jar(),
                        "from",
                        undone.during().from().toString()));
    }

    @Transactional(readOnly = true)
    public OccupancyView occupancy(long id) {
        access.require(Permission.SEE_ESTATE);
        OccupancyView occupancy = occupancies.find(id).orElseThrow(() -> NotFound.of("occupancy", id));
        register.string(occupancy.stringId());
        return occupancy;
    }

    /** How a link is built; the plan decides which links there are. */
    public LinkView changeLink(LinkEntry wished) {
        LinkEntry entry = Sound.entry(Sheets.LINKS, wished);
        StringView string = editable(entry.site(), entry.string());
        LinkView before = link(string, entry.ordinal());
        LinkView after = new LinkView(string.id(), entry.ordinal(), entry.kind(), entry.straps(), entry.conductor());
        links.add(List.of(after));
        keeping.done("link changed", string, Sound.changes(Sheets.LINKS, LinkShelf.entry(string, before), entry));
        return after;
    }

    /** A new joint: its history starts anew on that day. */
    public RemakeView recordRemake(RemakeEntry wished) {
        RemakeEntry entry = Sound.entry(Sheets.REMAKES, wished);
        StringView string = editable(entry.site(), entry.string());
        link(string, entry.ordinal());
        requireFirstOfDay(string, entry, 0);
        RemakeView remake = Stored.orConflict(() -> remakes.add(string.id(), entry));
        keeping.done("link remade", string, Sheets.REMAKES.cells(entry));
        return remake;
    }

    /** Corrects day, values or note; the link can't be changed. */
    public RemakeView changeRemake(long id, RemakeEntry wished) {
        RemakeView before = remake(id);
        RemakeEntry entry = Sound.entry(Sheets.REMAKES, wished);
        StringView string = editable(register.string(before.stringId()));
        requireFirstOfDay(string, entry, id);
        RemakeView after = Stored.orConflict(() -> remakes.change(id, entry));
        keeping.done("remake changed", string, Sound.changes(Sheets.REMAKES, RemakeShelf.entry(string, before), entry));
        return after;
    }

    /** Undoes a remake recorded by mistake. The audit trail keeps what was undone. */
    public void takeBackRemake(long id) {
        RemakeView undone = remake(id);
        StringView string = editable(register.string(undone.stringId()));
        remakes.delete(id);
        keeping.done("remake taken back", string, Sheets.REMAKES.cells(RemakeShelf.entry(string, undone)));
    }

    @Transactional(readOnly = true)
    public RemakeView remake(long id) {
        access.require(Permission.SEE_ESTATE);
        RemakeView remake = remakes.find(id).orElseThrow(() -> NotFound.of("remake", id));
        register.string(remake.stringId());
        return remake;
    }

    private void requireFirstOfDay(StringView string, RemakeEntry entry, long but) {
        remakes.find(string.id(), entry.ordinal(), entry.remadeOn())
                .filter(other -> other.id() != but)
                .ifPresent(other -> {
                    throw new Conflict("Link " + entry.ordinal() + " of " + string.title() + " already has a remake on "
                            + entry.remadeOn() + ". Change that one instead.");
                });
    }

    private LinkView link(StringView string, int ordinal) {
        return links.find(string.id(), ordinal)
                .orElseThrow(() -> new NotFound("There is no link " + ordinal + " in " + string.title()
                        + ": its links are 0 to " + string.positions() + "."));
    }

    private StringView editable(String site, String name) {
        access.require(Permission.EDIT_REGISTER);
        return editable(register.findString(site, name).orElseThrow(() -> NotFound.of("string", site + " / " + name)));
    }

    private StringView editable(StringView string) {
        access.require(Permission.EDIT_REGISTER, string.areaId());
        return string;
    }

    private Placing placing(StringView string, OccupancyEntry entry) {
        seats.requireInPlan(string, entry);
        JarType jarType = jarTypes.named(Sheets.OCCUPANCIES, entry.jarType());
        return new Placing(string.id(), jarType.id(), entry);
    }

    private OccupancyView placed(Placing placing) {
        OccupancyEntry entry = placing.entry();
        return occupancies
                .at(placing.stringId(), entry.position(), new DateRange(entry.from(), entry.until()))
                .get(0);
    }

    private static OccupancyEntry unnamed(StringView string, int position, LocalDate from) {
        return new OccupancyEntry(
                string.siteCode(), string.name(), position, string.jarTypeCode(), null, from, null, "", "", null, null);
    }
}
