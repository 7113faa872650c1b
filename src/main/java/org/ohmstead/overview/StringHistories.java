package org.ohmstead.overview;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.SurveyRecord;

/**
 * Lays every reading beside the baseline of the jar that sat there: the judged one for the jar that sits there now, the
 * entered one or the first reading for those before it.
 */
final class StringHistories {

    private record Reference(OhmicKind kind, double value) {}

    private final List<SurveyRecord> surveys;
    private final Map<Integer, List<OccupancyView>> seats = new HashMap<>();
    private final Map<Long, Reference> references = new HashMap<>();

    private StringHistories(StringBlueprint blueprint, List<SurveyRecord> surveys, List<JarLine> jars) {
        this.surveys = surveys;
        for (OccupancyView occupancy : blueprint.occupancies()) {
            seats.computeIfAbsent(occupancy.position(), position -> new java.util.ArrayList<>())
                    .add(occupancy);
            judged(occupancy, jars);
        }
    }

    static StringHistoryView of(StringBlueprint blueprint, List<SurveyRecord> surveys, List<JarLine> jars) {
        return new StringHistories(blueprint, surveys, jars)
                .lay(blueprint.string().positions());
    }

    private void judged(OccupancyView occupancy, List<JarLine> jars) {
        if (!occupancy.during().isOpenEnded() || occupancy.position() > jars.size()) {
            return;
        }
        JarLine jar = jars.get(occupancy.position() - 1);
        if (jar.baseline() != null && jar.ohmicKind() != null) {
            references.put(occupancy.id(), new Reference(jar.ohmicKind(), jar.baseline()));
        }
    }

    private StringHistoryView lay(int positions) {
        double[][] change = new double[surveys.size()][positions];
        boolean[][] replaced = new boolean[surveys.size()][positions];
        Map<Integer, Long> last = new HashMap<>();
        for (int row = 0; row < surveys.size(); row++) {
            for (int position = 1; position <= positions; position++) {
                OccupancyView seated = seated(position, surveys.get(row).facts().takenOn());
                change[row][position - 1] = seated == null ? Double.NaN : change(surveys.get(row), seated);
                Long now = seated == null ? null : seated.id();
                Long before = now == null ? null : last.put(position, now);
                replaced[row][position - 1] = before != null && !Objects.equals(before, now);
            }
        }
        return new StringHistoryView(
                surveys.stream().map(survey -> survey.facts().takenOn()).toList(), change, replaced);
    }

    private @Nullable OccupancyView seated(int position, LocalDate day) {
        return seats.getOrDefault(position, List.of()).stream()
                .filter(occupancy -> occupancy.during().contains(day))
                .findFirst()
                .orElse(null);
    }

    private double change(SurveyRecord survey, OccupancyView seated) {
        double value = survey.readings().ohmic()[seated.position() - 1];
        if (Double.isNaN(value)) {
            return Double.NaN;
        }
        OhmicKind kind = survey.facts().ohmicKind();
        Reference reference = references.computeIfAbsent(
                seated.id(),
                id -> new Reference(kind, seated.baselineOhmic() == null ? value : seated.baselineOhmic()));
        return reference.kind == kind ? rise(kind, value, reference.value) : Double.NaN;
    }

    /** Towards ageing: conductance falls, so its reciprocal is compared. */
    static double rise(OhmicKind kind, double value, double baseline) {
        return kind.risesWithAge() ? value / baseline - 1 : baseline / value - 1;
    }
}
