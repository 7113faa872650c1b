package org.ohmstead.intake.check;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/**
 * What the register knows of the string's jar type.
 *
 * @param referenceOhmic of a new jar, in the unit of its kind; NaN when unknown
 */
public record ExpectedJar(
        Technology technology,
        int cellsPerJar,
        double ratedAmpereHours,
        double referenceOhmic,
        @Nullable OhmicKind referenceKind) {}
