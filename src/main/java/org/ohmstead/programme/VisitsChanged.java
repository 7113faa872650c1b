package org.ohmstead.programme;

/** A visit to a string was recorded or voided. Published before the commit. */
public record VisitsChanged(long stringId) {}
