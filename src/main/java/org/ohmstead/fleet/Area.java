package org.ohmstead.fleet;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.AreaEntry;

@Entity
class Area {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Version
    private int version;

    private String code = "";
    private String name = "";
    private @Nullable LocalDate retiredOn;

    /** For the mapper. */
    protected Area() {}

    Area(AreaEntry entry) {
        become(entry);
    }

    void become(AreaEntry entry) {
        code = entry.code();
        name = entry.name();
        retiredOn = entry.retiredOn();
    }

    long id() {
        return Known.id(id);
    }

    String code() {
        return code;
    }

    AreaView view() {
        return new AreaView(id(), version, new AreaEntry(code, name, retiredOn));
    }
}
