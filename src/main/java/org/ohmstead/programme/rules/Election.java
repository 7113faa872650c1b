package org.ohmstead.programme.rules;

import java.time.LocalDate;

/** From that day on the owner meets a requirement by this branch. */
public record Election(LocalDate from, String branch) {}
