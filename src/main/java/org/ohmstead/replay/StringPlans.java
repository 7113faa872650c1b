package org.ohmstead.replay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.LinkPlan;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;

/** A string's plan from its row, its jar type's row and the rows of its links. */
final class StringPlans {

    private StringPlans() {}

    /** @param links by ordinal, as far as the files name them; the others follow from the tiers */
    static StringPlan plan(long id, StringEntry string, JarTypeEntry type, Map<Integer, LinkEntry> links) {
        return new StringPlan(
                id,
                jarType(type),
                string.positions(),
                links(string, links),
                orNaN(string.floatSetpointVoltsPerCell()),
                orNaN(string.designLoadAmps()),
                orNaN(string.designMinutes()),
                string.inServiceOn());
    }

    private static JarTypeFacts jarType(JarTypeEntry type) {
        return new JarTypeFacts(
                type.code(),
                type.technology(),
                type.cellsPerJar(),
                type.nominalVolts(),
                type.ratedAmpereHours(),
                orNaN(type.floatVoltsPerCell()),
                orNaN(type.referenceOhmic()),
                type.referenceOhmicKind() == null ? OhmicKind.IMPEDANCE : type.referenceOhmicKind(),
                orNaN(type.ohmicPerKelvin()),
                orNaN(type.designLifeYears()),
                orNaN(type.designLifeCelsius()));
    }

    private static List<LinkPlan> links(StringEntry string, Map<Integer, LinkEntry> known) {
        Set<Integer> tierEnds = new HashSet<>();
        int end = 0;
        for (int jars : string.tiers()) {
            end += jars;
            tierEnds.add(end);
        }
        List<LinkPlan> links = new ArrayList<>();
        for (int ordinal = 0; ordinal <= end; ordinal++) {
            LinkEntry entry = known.get(ordinal);
            links.add(
                    entry == null
                            ? fromTiers(ordinal, end, tierEnds, string.strapsPerLink())
                            : new LinkPlan(ordinal, entry.kind(), entry.straps(), entry.conductor()));
        }
        return links;
    }

    private static LinkPlan fromTiers(int ordinal, int last, Set<Integer> tierEnds, int straps) {
        if (ordinal == 0 || ordinal == last) {
            return new LinkPlan(ordinal, LinkKind.TERMINAL, 1, null);
        }
        return tierEnds.contains(ordinal)
                ? new LinkPlan(ordinal, LinkKind.TIER_CABLE, 1, null)
                : new LinkPlan(ordinal, LinkKind.STRAP, straps, null);
    }

    private static double orNaN(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }
}
