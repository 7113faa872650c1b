package org.ohmstead.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.check.Remark;

/**
 * How a survey stands with certain repairs.
 *
 * @param misfitPercent how far the jars' ohmic values typically lie off the string's own pattern; null where none is known
 */
public record Outcome(
        UploadState state, List<Remark> remarks, @Nullable Double misfitPercent) {}
