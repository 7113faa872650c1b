package org.ohmstead.reports;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;

/**
 * What one jar of a type costs to replace, by the user's own figures.
 *
 * @param validFrom until the next price of the type
 * @param currency three letters, as EUR
 */
public record JarPrice(
        String jarType, LocalDate validFrom, BigDecimal amount, String currency, Instant setAt, String setBy) {

    /** "412.50 EUR". */
    public String words() {
        return amount.toPlainString() + " " + currency;
    }
}
