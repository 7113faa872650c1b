package org.ohmstead.fleet;

import static java.util.stream.Collectors.groupingBy;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ohmstead.access.Reach;
import org.springframework.stereotype.Component;

/** Puts together whole strings, many at once. */
@Component
class Blueprints {

    private final BatteryStrings strings;
    private final Links links;
    private final Occupancies occupancies;
    private final Remakes remakes;

    Blueprints(BatteryStrings strings, Links links, Occupancies occupancies, Remakes remakes) {
        this.strings = strings;
        this.links = links;
        this.occupancies = occupancies;
        this.remakes = remakes;
    }

    Map<Long, StringBlueprint> of(Collection<Long> stringIds, Reach reach) {
        List<BatteryString> found = strings.allWithSite(stringIds.toArray(Long[]::new)).stream()
                .filter(string -> reach.covers(string.site().area().id()))
                .toList();
        Long[] ids = found.stream().map(BatteryString::id).toArray(Long[]::new);
        Map<Long, List<LinkView>> linksOf = byString(links.ofStrings(ids), LinkView::stringId);
        Map<Long, List<OccupancyView>> jarsOf = byString(occupancies.ofStrings(ids), OccupancyView::stringId);
        Map<Long, List<RemakeView>> remakesOf = byString(remakes.ofStrings(ids), RemakeView::stringId);
        Map<Long, StringBlueprint> blueprints = new LinkedHashMap<>();
        found.forEach(string -> blueprints.put(
                string.id(),
                new StringBlueprint(
                        string.view(),
                        string.site().view(),
                        string.jarType().view(),
                        linksOf.getOrDefault(string.id(), List.of()),
                        jarsOf.getOrDefault(string.id(), List.of()),
                        remakesOf.getOrDefault(string.id(), List.of()))));
        return blueprints;
    }

    private static <T> Map<Long, List<T>> byString(List<T> rows, Function<T, Long> stringId) {
        return rows.stream().collect(groupingBy(stringId));
    }
}
