package org.ohmstead.fleet.csv;

import static org.ohmstead.fleet.csv.Column.optional;
import static org.ohmstead.fleet.csv.Column.required;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/** Columns of sites.csv. */
final class SiteSheet {

    private static final Column<SiteEntry, String> CODE = required("code", "Code", Cells.code(24), SiteEntry::code)
            .saying("As painted on the door. Part of the site's address.");
    private static final Column<SiteEntry, String> NAME = required("name", "Name", Cells.text(100), SiteEntry::name);
    private static final Column<SiteEntry, String> AREA =
            required("area", "Area", Cells.code(16), SiteEntry::area).saying("The crew that looks after it.");
    private static final Column<SiteEntry, ZoneId> TIME_ZONE = required(
                    "time_zone", "Time zone", Cells.timeZone(), SiteEntry::timeZone)
            .saying("All dates of the site are written in it, such as Europe/Oslo.");
    private static final Column<SiteEntry, Double> LATITUDE = optional(
                    "latitude_deg", "Latitude", Cells.numberFrom(-90, 90), SiteEntry::latitudeDegrees)
            .in("°");
    private static final Column<SiteEntry, Double> LONGITUDE = optional(
                    "longitude_deg", "Longitude", Cells.numberFrom(-180, 180), SiteEntry::longitudeDegrees)
            .in("°");
    private static final Column<SiteEntry, String> LOAD_KIND =
            optional("load_kind", "Kind of load", Cells.text(100), SiteEntry::loadKind);
    private static final Column<SiteEntry, String> ACCESS_NOTES =
            optional("access_notes", "Access and cautions", Cells.longText(2000), SiteEntry::accessNotes);
    private static final Column<SiteEntry, String> CONTACTS =
            optional("contacts", "Contacts", Cells.longText(2000), SiteEntry::contacts);
    private static final Column<SiteEntry, LocalDate> RETIRED_ON =
            optional("retired_on", "Retired on", Cells.date(), SiteEntry::retiredOn);

    static final Sheet<SiteEntry> SHEET = new Sheet<>(
            "sites",
            "site",
            List.of(CODE, NAME, AREA, TIME_ZONE, LATITUDE, LONGITUDE, LOAD_KIND, ACCESS_NOTES, CONTACTS, RETIRED_ON),
            List.of(CODE),
            List.of(Rule.together(LATITUDE.header(), LONGITUDE.header(), "One alone is no place")),
            SiteSheet::entry);

    private SiteSheet() {}

    private static SiteEntry entry(Values<SiteEntry> row) {
        return new SiteEntry(
                row.of(CODE),
                row.of(NAME),
                row.of(AREA),
                row.of(TIME_ZONE),
                row.orNull(LATITUDE),
                row.orNull(LONGITUDE),
                row.or(LOAD_KIND, ""),
                row.or(ACCESS_NOTES, ""),
                row.or(CONTACTS, ""),
                row.orNull(RETIRED_ON));
    }
}
