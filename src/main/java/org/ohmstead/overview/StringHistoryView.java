package org.ohmstead.overview;

import java.time.LocalDate;
import java.util.List;

/**
 * Every jar's change at every survey, for the tapestry.
 *
 * @param takenOn oldest first
 * @param change survey by position, positive towards ageing; NaN when not measured or not comparable
 * @param replaced survey by position: another jar than at the survey before
 */
public record StringHistoryView(List<LocalDate> takenOn, double[][] change, boolean[][] replaced) {}
