package org.ohmstead.onsite;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.intake.Handover;
import org.ohmstead.intake.Intake;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.stereotype.Component;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** Strings of six jars, surveyed in 2018 and 2025, and the walk a crew types in there. */
@Component
public class WalkedEstate {

    private static final AtomicInteger COUNT = new AtomicInteger();

    private final FleetRegister register;
    private final JarsAndLinks jars;
    private final Intake intake;
    private final SurveyLedger ledger;
    private final Access access;

    WalkedEstate(FleetRegister register, JarsAndLinks jars, Intake intake, SurveyLedger ledger, Access access) {
        this.register = register;
        this.jars = jars;
        this.intake = intake;
        this.ledger = ledger;
        this.access = access;
    }

    public StringView stringOfSix() {
        String code = "ONS-" + COUNT.incrementAndGet();
        return access.asSystem("on-site test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            StringView string = register.createString(new StringEntry(
                    code, "A", code, List.of(6), 1, 2.23, 120.0, 120.0, 10.5, 1, Entries.COMMISSIONED, 12, null));
            jars.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
            handIn(string, "2018-12-01T10:00");
            handIn(string, "2025-09-01T10:00");
            return string;
        });
    }

    /** 0.411 to 0.416 mΩ and 2.23 V a jar, 24 µΩ a link. */
    private void handIn(StringView string, String takenAt) {
        StringBuilder sheet = new StringBuilder(
                "ohmstead survey sheet,1\nsite," + string.siteCode() + "\nstring,"
                        + string.name() + "\ntaken at," + takenAt
                        + "\ntaken by,Crew 3\ninstrument,TS-7\ninstrument calibration due,2027-03-01\n"
                        + "ohmic kind,impedance\nohmic frequency Hz,60\nambient °C,21\nposition,jar mΩ,jar V,link µΩ\n0,,,12.1\n");
        for (int k = 1; k <= 6; k++) {
            sheet.append("%d,0.41%d,2.23,%s\n".formatted(k, k, k == 6 ? "12.3" : "24"));
        }
        intake.receive(new Handover(
                UUID.randomUUID(), "history.csv", sheet.toString().getBytes(StandardCharsets.UTF_8), string.id()));
    }

    public List<SurveyRecord> surveysOf(StringView string) {
        return access.asSystem("on-site test", () -> ledger.surveysOf(string.id()));
    }

    public SurveyRecord lastSurveyOf(StringView string) {
        List<SurveyRecord> surveys = surveysOf(string);
        return surveys.get(surveys.size() - 1);
    }

    /** A whole walk as the form's fields name it; link 3|4 was over its limit, remade and read again. */
    public static Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("takenAt", "2026-03-09T09:42");
        typed.put("takenBy", "Crew 3");
        typed.put("instrument", "TS-7");
        typed.put("calibrationDue", "2027-03-01");
        typed.put("ohmicKind", "impedance");
        typed.put("ohmicHertz", "60");
        typed.put("onFloat", "yes");
        typed.put("ambientCelsius", "21.5");
        typed.put("stringVolts", "13.4");
        typed.put("rippleAmps", "1,2");
        typed.put("injectedAmps", "10.02");
        typed.put("clampedAmps", "9.98");
        typed.put("link-0-1", "12.2");
        for (int k = 1; k <= 6; k++) {
            typed.put("jar-" + k + "-ohmic", k == 6 ? "0.421" : "0.41" + (k + 1));
            typed.put("jar-" + k + "-volts", "2.23" + k);
            typed.put("link-" + k + "-1", k == 6 ? "12.4" : k == 3 ? "23.8" : "24." + k);
        }
        typed.put("closing", "0.2");
        typed.put("skip-closing", "");
        return typed;
    }

    /** The sheet of this walk, its link remade, as it must be written byte for byte. */
    public static String sheetOfRecord(String siteCode) throws IOException {
        try (InputStream golden = WalkedEstate.class.getResourceAsStream("/reference/onsite/walk.csv")) {
            return new String(golden.readAllBytes(), StandardCharsets.UTF_8).replace("@SITE@", siteCode);
        }
    }

    /** The same as a request, with some fields left empty. */
    public static MockHttpServletRequestBuilder typed(
            MockHttpServletRequestBuilder form, UUID ticket, String... without) {
        form.param("ticket", ticket.toString());
        typed().forEach((name, value) -> form.param(name, List.of(without).contains(name) ? "" : value));
        return form.param("note", "Posts of jar 2 cleaned,\n vents clear");
    }
}
