package org.ohmstead.capacity;

/** A capacity test of a string was recorded or voided. Published before the commit. */
public record CapacityTestsChanged(long stringId) {}
