package org.ohmstead.assessment;

/** Something of the string was overruled, or an overrule was ended. Published before the commit. */
public record OverrulesChanged(long stringId) {}
