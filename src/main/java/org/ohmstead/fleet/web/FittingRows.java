package org.ohmstead.fleet.web;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.LinkView;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.RemakeView;
import org.ohmstead.fleet.StringBlueprint;

/** A string's jars and links as the rows of two tables. */
final class FittingRows {

    private FittingRows() {}

    /**
     * @param now null when the position is empty today
     * @param others former and future ones, newest first
     */
    record JarRow(int position, int tier, @Nullable OccupancyView now, List<OccupancyView> others) {}

    /** @param remakes newest first */
    record LinkRow(LinkView link, String place, List<RemakeView> remakes) {}

    static List<JarRow> jars(StringBlueprint blueprint, LocalDate today) {
        return IntStream.rangeClosed(1, blueprint.string().positions())
                .mapToObj(position -> jar(blueprint, position, today))
                .toList();
    }

    static List<LinkRow> links(StringBlueprint blueprint) {
        int last = blueprint.string().positions();
        return blueprint.links().stream()
                .map(link -> new LinkRow(link, place(link.ordinal(), last), remakes(blueprint, link.ordinal())))
                .toList();
    }

    private static JarRow jar(StringBlueprint blueprint, int position, LocalDate today) {
        List<OccupancyView> all = blueprint.occupancies().stream()
                .filter(jar -> jar.position() == position)
                .sorted((one, other) ->
                        other.during().from().compareTo(one.during().from()))
                .toList();
        OccupancyView now = all.stream()
                .filter(jar -> jar.during().contains(today))
                .findFirst()
                .orElse(null);
        List<OccupancyView> others = all.stream().filter(jar -> jar != now).toList();
        return new JarRow(position, tier(blueprint.string().tiers(), position), now, others);
    }

    private static int tier(List<Integer> tiers, int position) {
        int end = 0;
        for (int tier = 0; tier < tiers.size(); tier++) {
            end += tiers.get(tier);
            if (position <= end) {
                return tier + 1;
            }
        }
        return tiers.size();
    }

    private static List<RemakeView> remakes(StringBlueprint blueprint, int ordinal) {
        return blueprint.remakes().stream()
                .filter(remake -> remake.ordinal() == ordinal)
                .sorted((one, other) -> other.remadeOn().compareTo(one.remadeOn()))
                .toList();
    }

    private static String place(int ordinal, int last) {
        if (ordinal == 0) {
            return "positive terminal";
        }
        return ordinal == last ? "negative terminal" : ordinal + " to " + (ordinal + 1);
    }
}
