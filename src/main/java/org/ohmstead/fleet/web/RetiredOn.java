package org.ohmstead.fleet.web;

import java.time.LocalDate;

/** From when on a thing is no longer in use. */
record RetiredOn(LocalDate on) {}
