package org.ohmstead.capacity.model;

import java.time.LocalDate;

/**
 * When the practice wants the next capacity test.
 *
 * @param yearly whether the string is on yearly tests
 * @param replace whether the last test was under the line of replacement
 */
public record NextTest(LocalDate on, boolean yearly, boolean replace, String reason) {}
