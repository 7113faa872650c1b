package org.ohmstead.access;

/** What an administrator says of a new account. */
public record NewPerson(String username, String displayName, Role role, Reach reach) {}
