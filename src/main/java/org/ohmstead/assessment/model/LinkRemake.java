package org.ohmstead.assessment.model;

import java.time.LocalDate;

/** A link opened, cleaned and made again: its history as a joint starts anew on that day. */
public record LinkRemake(int ordinal, LocalDate remadeOn) {}
