package org.ohmstead.intake.check;

import java.util.Optional;

/** One thing a good engineer would look at. Says nothing when there is nothing to say. */
@FunctionalInterface
interface Check {

    Optional<Remark> look(SurveyUnderCheck survey);
}
