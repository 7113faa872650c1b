package org.ohmstead.fleet;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.access.Reach;
import org.ohmstead.fleet.csv.AreaEntry;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.fleet.csv.SiteEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The register: areas, sites, jar types and strings, within the asking person's reach. Jars and links of a string are
 * changed through {@link JarsAndLinks}.
 *
 * <p>Every change throws {@link org.ohmstead.kernel.Refused} when the entry breaks a rule,
 * {@link org.ohmstead.kernel.Conflict} when it contradicts the register or somebody else's change, and {@link NotFound}
 * outside the reach.
 */
@Service
@Transactional
public class FleetRegister {

    private final Areas areas;
    private final Sites sites;
    private final JarTypes jarTypes;
    private final BatteryStrings strings;
    private final Keepers keepers;
    private final Blueprints blueprints;
    private final Access access;

    FleetRegister(
            Areas areas,
            Sites sites,
            JarTypes jarTypes,
            BatteryStrings strings,
            Keepers keepers,
            Blueprints blueprints,
            Access access) {
        this.areas = areas;
        this.sites = sites;
        this.jarTypes = jarTypes;
        this.strings = strings;
        this.keepers = keepers;
        this.blueprints = blueprints;
        this.access = access;
    }

    @Transactional(readOnly = true)
    public List<AreaView> areas() {
        access.require(Permission.SEE_ESTATE);
        Reach reach = access.reach();
        return areas.findAllByOrderByCode().stream()
                .map(Area::view)
                .filter(area -> reach.covers(area.id()))
                .toList();
    }

    @Transactional(readOnly = true)
    public AreaView area(String code) {
        return areas().stream()
                .filter(area -> area.code().equals(code))
                .findFirst()
                .orElseThrow(() -> NotFound.of("area", code));
    }

    public AreaView createArea(AreaEntry entry) {
        access.require(Permission.ADMINISTER);
        return keepers.areas().create(entry);
    }

    /** @param version of the view that was changed */
    public AreaView changeArea(long id, int version, AreaEntry entry) {
        access.require(Permission.ADMINISTER);
        Area area = areas.findById(id)
                .filter(known -> access.reach().covers(known.id()))
                .orElseThrow(() -> NotFound.of("area", id));
        requireUnchanged(version, area.view().version());
        return keepers.areas().change(area, entry);
    }

    public AreaView retireArea(String code, LocalDate on) {
        AreaView area = area(code);
        return changeArea(area.id(), area.version(), retired(Sheets.AREAS, area.entry(), on));
    }

    @Transactional(readOnly = true)
    public List<SiteView> sites() {
        access.require(Permission.SEE_ESTATE);
        Reach reach = access.reach();
        return sites.allWithArea().stream()
                .map(Site::view)
                .filter(site -> reach.covers(site.areaId()))
                .toList();
    }

    @Transactional(readOnly = true)
    public SiteView site(String code) {
        access.require(Permission.SEE_ESTATE);
        return sites.findByCode(code)
                .map(Site::view)
                .filter(site -> access.reach().covers(site.areaId()))
                .orElseThrow(() -> NotFound.of("site", code));
    }

    public SiteView createSite(SiteEntry entry) {
        access.require(Permission.EDIT_REGISTER);
        return keepers.sites().create(entry);
    }

    /** @param version of the view that was changed */
    public SiteView changeSite(long id, int version, SiteEntry entry) {
        access.require(Permission.EDIT_REGISTER);
        Site site = sites.findById(id)
                .filter(known -> access.reach().covers(known.area().id()))
                .orElseThrow(() -> NotFound.of("site", id));
        requireUnchanged(version, site.view().version());
        return keepers.sites().change(site, entry);
    }

    public SiteView retireSite(String code, LocalDate on) {
        SiteView site = site(code);
        return changeSite(site.id(), site.version(), retired(Sheets.SITES, site.entry(), on));
    }

    /** All of them: jar types belong to no area. */
    @Transactional(readOnly = true)
    public List<JarTypeView> jarTypes() {
        access.require(Permission.SEE_ESTATE);
        return jarTypes.findAllByOrderByCode().stream().map(JarType::view).toList();
    }

    @Transactional(readOnly = true)
    public JarTypeView jarType(String code) {
        access.require(Permission.SEE_ESTATE);
        return jarTypes.findByCode(code).map(JarType::view).orElseThrow(() -> NotFound.of("jar type", code));
    }

    public JarTypeView createJarType(JarTypeEntry entry) {
        access.require(Permission.EDIT_REGISTER);
        return keepers.jarTypes().create(entry);
    }

    /** @param version of the view that was changed */
    public JarTypeView changeJarType(long id, int version, JarTypeEntry entry) {
        access.require(Permission.EDIT_REGISTER);
        JarType jarType = jarTypes.findById(id).orElseThrow(() -> NotFound.of("jar type", id));
        requireUnchanged(version, jarType.view().version());
        return keepers.jarTypes().change(jarType, entry);
    }

    public JarTypeView retireJarType(String code, LocalDate on) {
        JarTypeView jarType = jarType(code);
        return changeJarType(jarType.id(), jarType.version(), retired(Sheets.JAR_TYPES, jarType.entry(), on));
    }

    /** By site and name; retired ones too. */
    @Transactional(readOnly = true)
    public List<StringView> strings() {
        access.require(Permission.SEE_ESTATE);
        Reach reach = access.reach();
        return strings.allWithSite().stream()
                .map(BatteryString::view)
                .filter(string -> reach.covers(string.areaId()))
                .toList();
    }

    @Transactional(readOnly = true)
    public List<StringView> stringsOf(String siteCode) {
        return strings.ofSite(site(siteCode).id()).stream()
                .map(BatteryString::view)
                .toList();
    }

    @Transactional(readOnly = true)
    public StringView string(long id) {
        access.require(Permission.SEE_ESTATE);
        return strings.withSite(id)
                .map(BatteryString::view)
                .filter(string -> access.reach().covers(string.areaId()))
                .orElseThrow(() -> NotFound.of("string", id));
    }

    /**
     * Only that it is there; costs nothing when the transaction has read the string before.
     *
     * @throws NotFound when there is no such string within reach
     */
    @Transactional(readOnly = true)
    public void requireString(long id) {
        access.require(Permission.SEE_ESTATE);
        strings.findById(id)
                .filter(string -> access.reach().covers(string.site().area().id()))
                .orElseThrow(() -> NotFound.of("string", id));
    }

    @Transactional(readOnly = true)
    public Optional<StringView> findString(String siteCode, String name) {
        access.require(Permission.SEE_ESTATE);
        return strings.named(siteCode, name)
                .map(BatteryString::view)
                .filter(string -> access.reach().covers(string.areaId()));
    }

    /** Also lays out its links as the tiers demand; jars are placed separately. */
    public StringView createString(StringEntry entry) {
        access.require(Permission.EDIT_REGISTER);
        return keepers.strings().create(entry);
    }

    /**
     * A change of the tiers lays out anew the links that it touches.
     *
     * @param version of the view that was changed
     */
    public StringView changeString(long id, int version, StringEntry entry) {
        access.require(Permission.EDIT_REGISTER);
        BatteryString string = strings.withSite(id)
                .filter(known -> access.reach().covers(known.view().areaId()))
                .orElseThrow(() -> NotFound.of("string", id));
        requireUnchanged(version, string.view().version());
        return keepers.strings().change(string, entry);
    }

    public StringView retireString(long id, LocalDate on) {
        StringView string = string(id);
        return changeString(id, string.version(), retired(Sheets.STRINGS, string.entry(), on));
    }

    @Transactional(readOnly = true)
    public StringBlueprint blueprint(long stringId) {
        StringBlueprint blueprint = blueprints(List.of(stringId)).get(stringId);
        if (blueprint == null) {
            throw NotFound.of("string", stringId);
        }
        return blueprint;
    }

    /** In five queries, however many are asked for; those out of reach or unknown are left out. */
    @Transactional(readOnly = true)
    public Map<Long, StringBlueprint> blueprints(Collection<Long> stringIds) {
        access.require(Permission.SEE_ESTATE);
        return blueprints.of(stringIds, access.reach());
    }

    private static void requireUnchanged(int seen, int now) {
        if (seen != now) {
            throw Stored.changedMeanwhile();
        }
    }

    private static <E> E retired(Sheet<E> sheet, E entry, LocalDate on) {
        return Sound.with(sheet, entry, "retired_on", Sound.day(on).toString());
    }
}
