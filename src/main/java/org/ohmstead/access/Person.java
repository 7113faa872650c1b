package org.ohmstead.access;

/**
 * Somebody who is signed in, or the service itself at work.
 *
 * @param userId 0 for the service itself
 */
public record Person(long userId, String username, String displayName, Role role, Reach reach) {

    static Person service(String name) {
        return new Person(0, name, name, Role.ADMINISTRATOR, Reach.EVERYWHERE);
    }

    public boolean may(Permission permission) {
        return role.permissions().contains(permission);
    }
}
