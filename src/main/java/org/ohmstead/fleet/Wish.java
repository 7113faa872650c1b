package org.ohmstead.fleet;

import org.jspecify.annotations.Nullable;

/**
 * What a row of a file asks for.
 *
 * @param before null when the register does not know it yet
 */
record Wish<E>(int line, @Nullable E before, E after) {}
