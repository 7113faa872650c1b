package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.StringSettings.Assignment;
import org.ohmstead.programme.rules.Duties;
import org.ohmstead.programme.rules.DutyCase;
import org.ohmstead.programme.rules.Evidence;
import org.ohmstead.programme.rules.Requirement;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.stereotype.Component;

/** Works out the duties of strings from what is stored, in a handful of queries however many strings. */
@Component
class DutyBook {

    private final SettingsTable settings;
    private final EvidenceTable evidence;
    private final PackShelf packs;

    DutyBook(SettingsTable settings, EvidenceTable evidence, PackShelf packs) {
        this.settings = settings;
        this.evidence = evidence;
        this.packs = packs;
    }

    /** In the order of the strings given. */
    List<StringDuties> of(Collection<InService> strings, Function<InService, LocalDate> asOf) {
        Map<Long, StringSettings> decided =
                settings.of(strings.stream().map(InService::stringId).toList());
        Map<Long, List<Evidence>> done = evidence.of(decided.keySet());
        PackShelf.Versions versions = decided.isEmpty() ? PackShelf.Versions.NONE : packs.versions();
        List<StringDuties> all = new ArrayList<>();
        for (InService string : strings) {
            StringSettings own = decided.getOrDefault(string.stringId(), StringSettings.NONE);
            all.add(duties(string, own, done.getOrDefault(string.stringId(), List.of()), versions, asOf.apply(string)));
        }
        return all;
    }

    private static StringDuties duties(
            InService string, StringSettings own, List<Evidence> done, PackShelf.Versions versions, LocalDate asOf) {
        RulePack pack = string.isRetiredBy(asOf) ? null : packInForce(own, versions, asOf);
        if (pack == null) {
            return new StringDuties(string.stringId(), asOf, null, List.of());
        }
        Function<Requirement, DutyCase> known = requirement -> new DutyCase(
                later(string.inServiceOn(), since(requirement.code(), own, versions, asOf)),
                done,
                own.elections().getOrDefault(requirement.code(), List.of()),
                own.ownIntervals().getOrDefault(requirement.code(), List.of()),
                own.waivers().getOrDefault(requirement.code(), List.of()));
        return new StringDuties(string.stringId(), asOf, pack, Duties.of(pack, known, asOf));
    }

    private static @Nullable RulePack packInForce(StringSettings own, PackShelf.Versions versions, LocalDate asOf) {
        Assignment assignment = own.inForce(asOf);
        return assignment == null ? null : versions.inForce(assignment.pack(), asOf);
    }

    /** Since when the same activity has been asked without a break: another pack that asks it too starts nothing anew. */
    private static LocalDate since(
            String requirement, StringSettings own, PackShelf.Versions versions, LocalDate asOf) {
        LocalDate since = asOf;
        for (int i = own.assignments().size() - 1; i >= 0; i--) {
            Assignment assignment = own.assignments().get(i);
            if (!assignment.from().isAfter(asOf)) {
                if (versions.inForce(assignment.pack(), asOf).find(requirement).isEmpty()) {
                    break;
                }
                since = assignment.from();
            }
        }
        return since;
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }
}
