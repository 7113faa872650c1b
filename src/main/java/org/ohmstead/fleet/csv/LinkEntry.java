package org.ohmstead.fleet.csv;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.LinkKind;

/**
 * What the register says of a link; known by its string and ordinal.
 *
 * @param ordinal 0 is the positive terminal link, k lies between positions k and k+1, N is the negative terminal link
 * @param conductor null for straps, and where the cable is not known
 */
public record LinkEntry(
        String site,
        String string,
        int ordinal,
        LinkKind kind,
        int straps,
        @Nullable Conductor conductor) {}
