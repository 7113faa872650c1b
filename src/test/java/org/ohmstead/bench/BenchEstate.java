package org.ohmstead.bench;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.AreaEntry;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.SiteEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.springframework.context.ApplicationContext;

/** The register of the bench: strings of one kind, ten to a site. */
record BenchEstate(Bench.Scale scale, List<StringView> strings) {

    static final ZoneId ZONE = ZoneId.of("Europe/London");
    static final LocalDate IN_SERVICE = LocalDate.of(2005, 1, 1);

    private static final int STRINGS_A_SITE = 10;
    private static final String JAR_TYPE = "BENCH-500";

    static BenchEstate register(ApplicationContext service, Bench.Scale scale) {
        FleetRegister register = service.getBean(FleetRegister.class);
        JarsAndLinks jars = service.getBean(JarsAndLinks.class);
        register.createArea(new AreaEntry("BENCH", "Bench", null));
        register.createJarType(jarType());
        List<StringView> strings = new ArrayList<>();
        for (int i = 0; i < scale.strings(); i++) {
            if (i % STRINGS_A_SITE == 0) {
                register.createSite(site(i / STRINGS_A_SITE));
            }
            StringView string = register.createString(string(i, scale.jars()));
            jars.fillEmptyPositions(string.id(), IN_SERVICE);
            strings.add(string);
        }
        return new BenchEstate(scale, strings);
    }

    private static String siteCode(int number) {
        return "BENCH-" + number;
    }

    private static SiteEntry site(int number) {
        return new SiteEntry(siteCode(number), "Bench site " + number, "BENCH", ZONE, null, null, "", "", "", null);
    }

    private static StringEntry string(int number, int jars) {
        return new StringEntry(
                siteCode(number / STRINGS_A_SITE),
                "S" + number % STRINGS_A_SITE,
                JAR_TYPE,
                List.of(jars / 2, jars - jars / 2),
                1,
                2.23,
                90.0,
                240.0,
                108.0,
                1,
                IN_SERVICE,
                6,
                null);
    }

    private static JarTypeEntry jarType() {
        return new JarTypeEntry(
                JAR_TYPE,
                "",
                Technology.VENTED_LEAD_ACID,
                1,
                2,
                500,
                10,
                1.8,
                20.0,
                20.0,
                20.0,
                2.23,
                "",
                0.352,
                OhmicKind.IMPEDANCE,
                60.0,
                "bench",
                null,
                null,
                null,
                null);
    }
}
