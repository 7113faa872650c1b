package org.ohmstead.demo;

import static org.ohmstead.kernel.Technology.AGM;
import static org.ohmstead.kernel.Technology.NICKEL_CADMIUM;
import static org.ohmstead.kernel.Technology.VENTED_LEAD_ACID;

import java.util.List;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** The jar types of the invented utility: plausible figures of no maker's product. */
final class JarTypes {

    private static final String INVENTED = "Invented for the demo";

    static final JarTypeEntry VENTED_200 = cell("VL-200", "Vented cell, flat plates", VENTED_LEAD_ACID, 200, 0.812);
    static final JarTypeEntry VENTED_500 = cell("VL-500", "Vented cell, tubular plates", VENTED_LEAD_ACID, 500, 0.352);
    static final JarTypeEntry VENTED_1000 =
            cell("VL-1000", "Vented cell, tubular plates", VENTED_LEAD_ACID, 1000, 0.188);
    static final JarTypeEntry AGM_100 = block("AG-100-12", 100, 4.62);
    static final JarTypeEntry AGM_150 = block("AG-150-12", 150, 3.41);
    static final JarTypeEntry NICAD_180 = cell("NC-180", "Pocket plate cell, medium rate", NICKEL_CADMIUM, 180, 0.942);
    static final JarTypeEntry NICAD_320 = cell("NC-320", "Pocket plate cell, medium rate", NICKEL_CADMIUM, 320, 0.553);

    static final List<JarTypeEntry> ALL =
            List.of(VENTED_200, VENTED_500, VENTED_1000, AGM_100, AGM_150, NICAD_180, NICAD_320);

    private JarTypes() {}

    private static JarTypeEntry cell(String code, String words, Technology technology, double hours, double milliohms) {
        boolean lead = technology.isLeadAcid();
        return new JarTypeEntry(
                code,
                words,
                technology,
                1,
                lead ? 2 : 1.2,
                hours,
                lead ? 10 : 5,
                lead ? 1.80 : 1.00,
                20.0,
                20.0,
                20.0,
                lead ? 2.23 : 1.42,
                INVENTED,
                milliohms,
                OhmicKind.IMPEDANCE,
                60.0,
                INVENTED,
                null,
                null,
                8.0,
                null);
    }

    private static JarTypeEntry block(String code, double ampereHours, double milliohms) {
        return new JarTypeEntry(
                code,
                "Valve-regulated block of six cells",
                AGM,
                6,
                12,
                ampereHours,
                10,
                1.80,
                20.0,
                12.0,
                20.0,
                2.27,
                INVENTED,
                milliohms,
                OhmicKind.IMPEDANCE,
                60.0,
                INVENTED,
                null,
                null,
                3.0,
                null);
    }
}
