package org.ohmstead.intake;

import org.ohmstead.kernel.Refused;

/**
 * What a corrected file is handed in for.
 *
 * @param surveyId the stored survey whose place its survey is to take
 */
public record Correction(long surveyId, String reason) {

    public Correction {
        reason = reason.strip();
        if (reason.isEmpty()) {
            throw new Refused("Say why the survey is corrected, so that others understand it later.");
        }
    }
}
