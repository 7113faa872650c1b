package org.ohmstead.programme.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * From that day on the owner keeps this shorter interval.
 *
 * @param months null: none of their own any more
 */
public record OwnInterval(LocalDate from, @Nullable Integer months) {}
