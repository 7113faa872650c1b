package org.ohmstead.assessment;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A survey taken with an instrument.
 *
 * @param off how far its jars, all together, lay from what the string's own history made expect, relative; null when
 *     nothing was expected yet
 * @param evidence whether it is one of those that tell what the instrument reads off
 */
public record InstrumentSurvey(
        long surveyId,
        long stringId,
        String string,
        LocalDate on,
        @Nullable Double off,
        boolean evidence) {}
