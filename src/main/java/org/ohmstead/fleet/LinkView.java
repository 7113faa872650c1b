package org.ohmstead.fleet;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.LinkKind;

/**
 * A link as built.
 *
 * @param ordinal 0 is the positive terminal link, k lies between positions k and k+1, N is the negative terminal link
 * @param straps parallel straps that are read one by one
 * @param conductor null for straps, and where the cable is not known
 */
public record LinkView(
        long stringId,
        int ordinal,
        LinkKind kind,
        int straps,
        @Nullable Conductor conductor) {}
