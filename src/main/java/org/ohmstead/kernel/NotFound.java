package org.ohmstead.kernel;

/** There is no such thing, or none within the asking person's reach: the two are not told apart. */
public class NotFound extends RuntimeException {

    public NotFound(String what) {
        super(what);
    }

    /** "There is no site FEL-03." */
    public static NotFound of(String kind, Object key) {
        return new NotFound("There is no " + kind + " " + key + ".");
    }
}
