package org.ohmstead.assessment.model.estate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;

/**
 * What settled jars of a type read when they were new: the middle of the strings' medians, so that a long string counts no
 * more than a short one, and how jars differ within a string.
 *
 * @param value in the unit of the kind
 * @param low of the 95 % interval of that middle
 * @param high of the 95 % interval of that middle
 * @param spread robust standard deviation between jars of a string, relative
 */
public record ReferenceLevel(
        OhmicKind kind, double value, double low, double high, double spread, int jars, int strings) {

    private static final int LEAST_STRINGS = 3;
    private static final int LEAST_JARS = 20;
    private static final double OF_NORMAL = 1.4826;

    /** The settled baseline of one jar. */
    public record Settled(long stringId, OhmicKind kind, double ohmic) {}

    /** Of the kind of which most is known. @return null with fewer than twenty jars of three strings */
    public static @Nullable ReferenceLevel learn(List<Settled> jars) {
        return jars.stream()
                .filter(jar -> jar.ohmic() > 0 && Double.isFinite(jar.ohmic()))
                .collect(Collectors.groupingBy(Settled::kind, TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .max(Comparator.comparingInt(List::size))
                .map(ReferenceLevel::ofOneKind)
                .orElse(null);
    }

    private static @Nullable ReferenceLevel ofOneKind(List<Settled> jars) {
        Map<Long, List<Double>> byString = jars.stream()
                .collect(Collectors.groupingBy(
                        Settled::stringId,
                        TreeMap::new,
                        Collectors.mapping(jar -> Math.log(jar.ohmic()), Collectors.toList())));
        if (byString.size() < LEAST_STRINGS || jars.size() < LEAST_JARS) {
            return null;
        }
        List<Double> middles =
                byString.values().stream().map(ReferenceLevel::median).toList();
        List<Double> apart = new ArrayList<>();
        byString.values().forEach(logs -> logs.forEach(log -> apart.add(Math.abs(log - median(logs)))));
        double middle = median(middles);
        double between = OF_NORMAL
                * median(middles.stream().map(m -> Math.abs(m - middle)).toList());
        int strings = middles.size();
        double reach = new TDistribution(strings - 1.0).inverseCumulativeProbability(.975)
                * 1.2533
                * Math.max(between, OF_NORMAL * median(apart) / Math.sqrt((double) jars.size() / strings))
                / Math.sqrt(strings);
        return new ReferenceLevel(
                jars.get(0).kind(),
                Math.exp(middle),
                Math.exp(middle - reach),
                Math.exp(middle + reach),
                OF_NORMAL * median(apart),
                jars.size(),
                strings);
    }

    private static double median(Collection<Double> values) {
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }
}
