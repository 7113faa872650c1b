package org.ohmstead.fleet;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.ohmstead.fleet.csv.AreaEntry;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.fleet.csv.SiteEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** Sound register entries, to be given what a test is about. */
public final class Entries {

    public static final LocalDate COMMISSIONED = LocalDate.of(2018, 4, 1);

    private Entries() {}

    public static AreaEntry area(String code) {
        return new AreaEntry(code, "Area " + code, null);
    }

    public static SiteEntry site(String code, String area) {
        return site(code, area, "Europe/Oslo");
    }

    public static SiteEntry site(String code, String area, String timeZone) {
        return new SiteEntry(
                code, "Substation " + code, area, ZoneId.of(timeZone), 60.5, -11.25, "switchgear trip", "", "", null);
    }

    public static JarTypeEntry jarType(String code) {
        return new JarTypeEntry(
                code,
                "invented vented jar",
                Technology.VENTED_LEAD_ACID,
                1,
                2.0,
                300,
                8,
                1.75,
                25.0,
                20.0,
                25.0,
                2.23,
                "invented for tests",
                0.41,
                OhmicKind.IMPEDANCE,
                60.0,
                "invented for tests",
                null,
                null,
                null,
                null);
    }

    public static StringEntry string(String site, String name, String jarType, Integer... tiers) {
        return new StringEntry(
                site, name, jarType, List.of(tiers), 2, 2.23, 120.0, 120.0, 105.0, 1, COMMISSIONED, 12, null);
    }

    public static OccupancyEntry jar(StringView string, int position, String serial, LocalDate from) {
        return jar(string, position, serial, from, null);
    }

    public static OccupancyEntry jar(StringView string, int position, String serial, LocalDate from, LocalDate until) {
        return new OccupancyEntry(
                string.siteCode(),
                string.name(),
                position,
                string.jarTypeCode(),
                serial,
                from,
                until,
                "commissioning",
                "",
                null,
                null);
    }

    public static RemakeEntry remake(StringView string, int link, LocalDate on) {
        return new RemakeEntry(string.siteCode(), string.name(), link, on, 61.0, 24.5, "lug was loose");
    }
}
