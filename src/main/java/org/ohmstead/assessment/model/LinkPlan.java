package org.ohmstead.assessment.model;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.LinkKind;

/**
 * A link as it was built.
 *
 * @param ordinal 0 is the positive terminal link, k lies between positions k and k+1, N is the negative terminal link
 * @param straps how many parallel straps are read one by one
 * @param conductor its cable, null for straps or when unknown
 */
public record LinkPlan(
        int ordinal, LinkKind kind, int straps, @Nullable Conductor conductor) {}
