package org.ohmstead.onsite;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/** Numbers as they are shown on a device: five significant digits, nothing for what is missing. */
final class Rounded {

    private static final MathContext FIVE = new MathContext(5);

    private Rounded() {}

    static @Nullable Double orNull(@Nullable Double value) {
        return value == null || value.isNaN() ? null : off(value);
    }

    static double off(double value) {
        return new BigDecimal(value).round(FIVE).doubleValue();
    }
}
