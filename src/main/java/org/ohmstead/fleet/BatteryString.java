package org.ohmstead.fleet;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.StringEntry;

@Entity
class BatteryString {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    private Site site = new Site();

    private String name = "";

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    private JarType jarType = new JarType();

    private int positions;
    private int[] tiers = {};
    private int strapsPerLink = 1;
    private @Nullable Double floatSetpointVoltsPerCell;
    private @Nullable Double designLoadAmps;
    private @Nullable Double designMinutes;
    private @Nullable Double endVolts;
    private int parallelStrings = 1;
    private LocalDate inServiceOn = LocalDate.EPOCH;
    private int surveyIntervalMonths = 12;
    private @Nullable LocalDate retiredOn;

    /** For the mapper. */
    protected BatteryString() {}

    BatteryString(StringEntry entry, Site site, JarType jarType) {
        become(entry, site, jarType);
    }

    void become(StringEntry entry, Site site, JarType jarType) {
        this.site = site;
        this.jarType = jarType;
        name = entry.name();
        positions = entry.positions();
        tiers = entry.tiers().stream().mapToInt(Integer::intValue).toArray();
        strapsPerLink = entry.strapsPerLink();
        parallelStrings = entry.parallelStrings();
        inServiceOn = entry.inServiceOn();
        surveyIntervalMonths = entry.surveyIntervalMonths();
        retiredOn = entry.retiredOn();
        beMeantFor(entry);
    }

    private void beMeantFor(StringEntry entry) {
        floatSetpointVoltsPerCell = entry.floatSetpointVoltsPerCell();
        designLoadAmps = entry.designLoadAmps();
        designMinutes = entry.designMinutes();
        endVolts = entry.endVolts();
    }

    long id() {
        return Known.id(id);
    }

    Site site() {
        return site;
    }

    boolean isRetired() {
        return retiredOn != null;
    }

    JarType jarType() {
        return jarType;
    }

    StringView view() {
        return new StringView(id(), version, site.id(), site.area().id(), jarType.id(), entry());
    }

    private StringEntry entry() {
        List<Integer> jarsPerTier = Arrays.stream(tiers).boxed().toList();
        return new StringEntry(
                site.code(),
                name,
                jarType.code(),
                jarsPerTier,
                strapsPerLink,
                floatSetpointVoltsPerCell,
                designLoadAmps,
                designMinutes,
                endVolts,
                parallelStrings,
                inServiceOn,
                surveyIntervalMonths,
                retiredOn);
    }
}
