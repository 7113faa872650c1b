/** Puts a held survey right, step by step, without touching its file: order, units, string, single values. Pure. */
@NullMarked
package org.ohmstead.intake.repair;

import org.jspecify.annotations.NullMarked;
