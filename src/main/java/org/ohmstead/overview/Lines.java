package org.ohmstead.overview;

import java.util.List;
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.model.Baseline;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.LinkName;
import org.ohmstead.kernel.Urgency;

/** The lines of a string's tables: as judged, or as registered while nobody has judged it. */
final class Lines {

    private Lines() {}

    static List<Why> reasons(List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> new Why(reason.asks(), reason.words(), reason.wouldChange()))
                .toList();
    }

    static JarLine jar(Asked asked, JarJudgement jar) {
        Baseline baseline = jar.baseline();
        return new JarLine(
                jar.position(),
                jar.serial(),
                jar.sittingSince(),
                asked.urgency(jar),
                jar.readOn(),
                jar.ohmicKind(),
                jar.ohmic(),
                baseline == null ? null : baseline.value(),
                baseline == null ? null : baseline.words(),
                jar.changeOnBaseline(),
                jar.changeOnMedian(),
                jar.trend() == null ? null : jar.trend().perYear(),
                jar.volts(),
                jar.celsius(),
                reasons(jar.reasons()),
                Prospect.ofJar(jar.forecast(), asked.judgement().asOf()),
                asked.ofJar(jar.position()).orElse(null));
    }

    static LinkLine link(Asked asked, LinkJudgement link, int positions) {
        return new LinkLine(
                link.ordinal(),
                LinkName.shortly(link.ordinal(), positions),
                LinkName.of(link.ordinal(), positions),
                link.kind(),
                link.madeOn(),
                asked.urgency(link),
                link.readOn(),
                link.combinedMicroohms(),
                link.conductorMicroohms(),
                link.netMicroohms(),
                link.baseline() == null ? null : link.baseline().value(),
                link.changeOnBaseline(),
                link.changeOnKind(),
                link.dropMillivolts(),
                link.heatWatts(),
                reasons(link.reasons()),
                Prospect.ofLink(link.forecast(), asked.judgement().asOf()),
                asked.ofLink(link.ordinal()).orElse(null));
    }

    static List<JarLine> unjudgedJars(StringBlueprint blueprint) {
        return java.util.stream.IntStream.rangeClosed(1, blueprint.string().positions())
                .mapToObj(position -> new JarLine(
                        position,
                        null,
                        blueprint.string().inServiceOn(),
                        Urgency.CLEAR,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        List.of(),
                        null,
                        null))
                .toList();
    }

    static List<LinkLine> unjudgedLinks(StringBlueprint blueprint) {
        int positions = blueprint.string().positions();
        return blueprint.links().stream()
                .map(link -> new LinkLine(
                        link.ordinal(),
                        LinkName.shortly(link.ordinal(), positions),
                        LinkName.of(link.ordinal(), positions),
                        link.kind(),
                        blueprint.string().inServiceOn(),
                        Urgency.CLEAR,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        List.of(),
                        null,
                        null))
                .toList();
    }
}
