package org.ohmstead.onsite;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Baseline;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.Limit;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Urgency;

/** The jars of a walk. */
final class Places {

    private Places() {}

    /** "24 jars, vented lead-acid, 300 Ah, in 2 tiers". */
    static String build(StringBlueprint blueprint) {
        int tiers = blueprint.string().tiers().size();
        return String.format(
                Locale.UK,
                "%d jars, %s, %.0f Ah, %s",
                blueprint.string().positions(),
                blueprint.jarType().technology().words(),
                blueprint.jarType().entry().ratedAmpereHours(),
                tiers == 1 ? "in one tier" : "in " + tiers + " tiers");
    }

    static List<JarPlace> jars(
            StringBlueprint blueprint, @Nullable StringJudgement judgement, OhmicKind kind, Limits limits) {
        List<JarPlace> places = new ArrayList<>();
        int tier = 0;
        for (int jars : blueprint.string().tiers()) {
            tier++;
            for (int i = 0; i < jars; i++) {
                int position = places.size() + 1;
                places.add(judgement == null ? unknown(position, tier) : jar(judgement, position, tier, kind, limits));
            }
        }
        return places;
    }

    /** What a judgement asks, in its own first words; null when it asks nothing. */
    static @Nullable String asks(Urgency urgency, List<Reason> reasons) {
        return urgency == Urgency.CLEAR
                ? null
                : reasons.stream()
                        .filter(reason -> reason.asks() == urgency)
                        .findFirst()
                        .map(reason -> urgency.word() + ": " + reason.words())
                        .orElse(urgency.word());
    }

    private static JarPlace unknown(int position, int tier) {
        return new JarPlace(position, tier, null, null, null, null, null, null, null);
    }

    private static JarPlace jar(StringJudgement judgement, int position, int tier, OhmicKind kind, Limits limits) {
        return judgement.jars().stream()
                .filter(jar -> jar.position() == position)
                .findFirst()
                .map(jar -> jar(jar, tier, kind, limits))
                .orElseGet(() -> unknown(position, tier));
    }

    private static JarPlace jar(JarJudgement jar, int tier, OhmicKind kind, Limits limits) {
        boolean comparable = jar.ohmicKind() == kind;
        Baseline baseline = comparable ? jar.baseline() : null;
        return new JarPlace(
                jar.position(),
                tier,
                jar.serial(),
                jar.readOn(),
                comparable ? Rounded.orNull(jar.ohmic()) : null,
                Rounded.orNull(jar.volts()),
                baseline == null ? null : Rounded.off(lowest(baseline.value(), kind, limits)),
                baseline == null ? null : Rounded.off(highest(baseline.value(), kind, limits)),
                asks(jar.urgency(), jar.reasons()));
    }

    /** Conductance is judged by its reciprocal: a rise of that by a share is a fall to 1 / (1 + share). */
    private static double lowest(double baseline, OhmicKind kind, Limits limits) {
        return kind.risesWithAge()
                ? baseline * (1 - limits.of(Limit.JAR_FALL))
                : baseline / (1 + limits.of(Limit.JAR_RISE_NOTE));
    }

    private static double highest(double baseline, OhmicKind kind, Limits limits) {
        return kind.risesWithAge()
                ? baseline * (1 + limits.of(Limit.JAR_RISE_NOTE))
                : baseline / (1 - limits.of(Limit.JAR_FALL));
    }
}
