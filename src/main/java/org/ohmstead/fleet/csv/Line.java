package org.ohmstead.fleet.csv;

/** An entry together with the line on which it began. */
public record Line<E>(int line, E entry) {}
