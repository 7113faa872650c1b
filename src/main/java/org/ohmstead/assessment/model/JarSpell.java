package org.ohmstead.assessment.model;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.DateRange;

/**
 * Which jar sat at a position and when.
 *
 * @param position 1 at the positive end
 * @param baselineOhmic entered from a commissioning record or by the maker, in the unit of the survey's kind; NaN when
 *     it is to be taken from the surveys
 */
public record JarSpell(int position, @Nullable String serial, DateRange during, double baselineOhmic) {}
