package org.ohmstead.overview;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.springframework.stereotype.Component;

/** A string of 24 jars in two tiers with six surveys: jar 17 rises to +60 %, jar 6 was not read last, link 9|10 loosens. */
@Component
public class SurveyedString {

    private final Access access;
    private final FleetRegister register;
    private final JarsAndLinks jars;
    private final SurveyLedger ledger;

    SurveyedString(Access access, FleetRegister register, JarsAndLinks jars, SurveyLedger ledger) {
        this.access = access;
        this.register = register;
        this.jars = jars;
        this.ledger = ledger;
    }

    public StringView build(String code) {
        return access.asSystem("test", () -> {
            register.createArea(Entries.area(code));
            register.createSite(Entries.site(code, code));
            register.createJarType(Entries.jarType(code));
            StringView string = register.createString(Entries.string(code, "A", code, 12, 12));
            jars.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
            for (int year = 0; year < 6; year++) {
                ledger.accept(survey(string, LocalDate.of(2020 + year, 10, 5), year));
            }
            return string;
        });
    }

    private static NewSurvey survey(StringView string, LocalDate day, int year) {
        double[] ohmic = new double[24];
        Arrays.setAll(ohmic, i -> 0.41 + 0.001 * (i % 5) + (i == 16 ? 0.05 * year : 0));
        ohmic[5] = year == 5 ? Double.NaN : ohmic[5];
        double[] volts = new double[24];
        Arrays.fill(volts, 2.23);
        double[][] links = new double[25][2];
        for (double[] straps : links) {
            Arrays.fill(straps, 36);
        }
        Arrays.fill(links[9], year == 5 ? 120 : 36);
        SurveyFacts facts = SurveyFacts.of(
                string.id(), day.atTime(9, 0).atZone(ZoneId.of("Europe/Oslo")).toInstant(), day, OhmicKind.IMPEDANCE);
        return NewSurvey.of(facts, new Readings(ohmic, volts, new double[0], new double[0], links));
    }
}
