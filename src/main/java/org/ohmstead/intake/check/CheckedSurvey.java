package org.ohmstead.intake.check;

import java.util.List;

/** A survey laid out along its string, with everything that was remarked on it. */
public record CheckedSurvey(LaidOut readings, List<Remark> remarks) {}
