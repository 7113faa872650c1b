package org.ohmstead.fleet;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.SiteEntry;

@Entity
class Site {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    private Area area = new Area();

    private String code = "";
    private String name = "";
    private String timeZone = "UTC";
    private @Nullable Double latitude;
    private @Nullable Double longitude;
    private String loadKind = "";
    private String accessNotes = "";
    private String contacts = "";
    private @Nullable LocalDate retiredOn;

    /** For the mapper. */
    protected Site() {}

    Site(SiteEntry entry, Area area) {
        become(entry, area);
    }

    void become(SiteEntry entry, Area area) {
        this.area = area;
        code = entry.code();
        name = entry.name();
        timeZone = entry.timeZone().getId();
        latitude = entry.latitudeDegrees();
        longitude = entry.longitudeDegrees();
        loadKind = entry.loadKind();
        accessNotes = entry.accessNotes();
        contacts = entry.contacts();
        retiredOn = entry.retiredOn();
    }

    long id() {
        return Known.id(id);
    }

    Area area() {
        return area;
    }

    String code() {
        return code;
    }

    boolean isRetired() {
        return retiredOn != null;
    }

    SiteView view() {
        return new SiteView(id(), version, area.id(), area.view().name(), entry());
    }

    private SiteEntry entry() {
        return new SiteEntry(
                code,
                name,
                area.code(),
                ZoneId.of(timeZone),
                latitude,
                longitude,
                loadKind,
                accessNotes,
                contacts,
                retiredOn);
    }
}
