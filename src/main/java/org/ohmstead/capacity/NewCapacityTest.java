package org.ohmstead.capacity;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;

/**
 * A discharge test about to be recorded: everything but the discharge itself.
 *
 * @param testedOn in the site's calendar
 * @param celsius of the electrolyte before the discharge
 * @param linearCoefficient per kelvin, for the linear method; null to take the one known for the rate
 */
public record NewCapacityTest(
        long stringId,
        LocalDate testedOn,
        String testedBy,
        TestKind kind,
        Method method,
        Ratings ratings,
        double celsius,
        @Nullable Double linearCoefficient,
        String note) {}
