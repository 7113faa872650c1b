package org.ohmstead.intake;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.ohmstead.access.Access;
import org.ohmstead.access.Reach;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.StringEntry;
import org.springframework.stereotype.Component;

/** Strings of six jars to hand in surveys for, each at a site of its own, and sheets that fit them. */
@Component
public class IntakeEstate {

    private static final AtomicInteger COUNT = new AtomicInteger();

    private final FleetRegister register;
    private final Intake intake;
    private final Access access;

    IntakeEstate(FleetRegister register, Intake intake, Access access) {
        this.intake = intake;
        this.register = register;
        this.access = access;
    }

    public StringView stringOfSix() {
        String code = "INT-" + COUNT.incrementAndGet();
        return access.asSystem("intake test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            return register.createString(withOneStrap(code));
        });
    }

    /** Two strings of 30 jars at one site, each with four surveys that show its pattern. */
    public List<StringView> twoWithHistory() {
        String code = "INT-" + COUNT.incrementAndGet();
        return access.asSystem("intake test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            return List.of(remembered(code, "A"), remembered(code, "B"));
        });
    }

    private StringView remembered(String code, String name) {
        StringView string = register.createString(new StringEntry(
                code, name, code, List.of(30), 1, 2.23, 120.0, 120.0, 10.5, 1, Entries.COMMISSIONED, 12, null));
        for (String day : List.of("2024-03-01", "2024-09-01", "2025-03-01", "2025-09-01")) {
            byte[] sheet = PatternedWalk.of(string, day + "T10:00").sheet().getBytes(StandardCharsets.UTF_8);
            intake.receive(new Handover(UUID.randomUUID(), "history.csv", sheet, null));
        }
        return string;
    }

    public static Reach only(StringView string) {
        return new Reach(false, Set.of(string.areaId()));
    }

    /** A clean sheet: 0.41 mΩ and 2.23 V a jar, 24 µΩ a link. */
    public static String sheetOf(StringView string, String takenAt) {
        return sheetOf(string, takenAt, 6);
    }

    /** A clean sheet that ends with the given jar. */
    public static String sheetOf(StringView string, String takenAt, int lastJar) {
        StringBuilder sheet = new StringBuilder("ohmstead survey sheet,1\nsite," + string.siteCode() + "\nstring,"
                + string.name() + "\ntaken at," + takenAt
                + "\ntaken by,Crew 3\nohmic kind,impedance\nohmic frequency Hz,60\nambient °C,21\n"
                + "position,jar mΩ,jar V,link µΩ\n0,,,12.1\n");
        for (int k = 1; k <= lastJar; k++) {
            sheet.append(String.format(Locale.ROOT, "%d,%.3f,2.23,%.1f%n", k, 0.41 + 0.001 * k, k == 6 ? 12.3 : 24.0));
        }
        return sheet.toString().replace("\r\n", "\n");
    }

    private static StringEntry withOneStrap(String code) {
        return new StringEntry(
                code, "A", code, List.of(6), 1, 2.23, 120.0, 120.0, 10.5, 1, Entries.COMMISSIONED, 12, null);
    }
}
