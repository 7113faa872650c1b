package org.ohmstead.fleet;

/** Something of the string was changed that may alter how it is judged. */
public record StringChanged(long stringId) {}
