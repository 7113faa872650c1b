package org.ohmstead.intake.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.forensics.WalkVerdict;

/**
 * A survey laid out along its string, with everything that was remarked on it.
 *
 * @param walk how the string was walked; null where there is nothing to weigh it by
 */
public record CheckedSurvey(
        LaidOut readings, List<Remark> remarks, @Nullable WalkVerdict walk) {}
