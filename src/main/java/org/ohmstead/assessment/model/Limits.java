package org.ohmstead.assessment.model;

import java.util.EnumMap;
import java.util.Map;

/**
 * The limits in force: the defaults of {@link Limit} with what the owner set instead.
 *
 * @param version of the defaults; raised whenever one of them changes
 * @param changed what differs from the defaults
 */
public record Limits(String version, Map<Limit, Double> changed) {

    private static final String VERSION = "3";

    public Limits {
        changed = Map.copyOf(changed);
        changed.forEach((limit, value) -> {
            if (!(value > 0) || value.isInfinite()) {
                throw new IllegalArgumentException(limit + " must be a positive number, not " + value);
            }
        });
    }

    public static Limits standard() {
        return new Limits(VERSION, Map.of());
    }

    public static Limits changed(Map<Limit, Double> changed) {
        return new Limits(VERSION, changed);
    }

    public double of(Limit limit) {
        Double set = changed.get(limit);
        return set == null ? limit.standard() : set;
    }

    /** Rounded to a whole number. */
    public int countOf(Limit limit) {
        return (int) Math.round(of(limit));
    }

    public Limits with(Limit limit, double value) {
        Map<Limit, Double> more = new EnumMap<>(Limit.class);
        more.putAll(changed);
        more.put(limit, value);
        return new Limits(version, more);
    }
}
