package org.ohmstead.capacity;

import java.util.List;
import org.ohmstead.capacity.model.TwoByTwo;

/**
 * How far ohmic urgency agreed with capacity tests, for one jar type.
 *
 * @param tests how many tests took part
 * @param undecided jars whose own capacity the test did not show
 * @param unjudged jars that no survey had read before the test
 * @param missed weak jars that asked for nothing before, the latest first: where the ohmic limits said nothing
 */
public record Agreement(
        String jarTypeCode, int tests, TwoByTwo counts, int undecided, int unjudged, List<CapacityOutcome> missed) {}
