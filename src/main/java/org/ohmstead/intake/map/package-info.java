/** Reads other tables than the survey sheet, as a saved column map says, and guesses such a map from a sample. Pure. */
@NullMarked
package org.ohmstead.intake.map;

import org.jspecify.annotations.NullMarked;
