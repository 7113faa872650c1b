package org.ohmstead.access;

/** An area as a unit of access; everything else about areas belongs to the register. */
public record AreaName(long id, String code, String name) {}
