package org.ohmstead.capacity.model;

/**
 * How ohmic urgency before a capacity test agreed with what the test found, jar by jar: counts. Asking is {@code PLAN} or
 * {@code ACT}; a jar that only asked for another reading counts as quiet.
 */
public record TwoByTwo(int askingWeak, int askingSound, int quietWeak, int quietSound) {

    public static final TwoByTwo NONE = new TwoByTwo(0, 0, 0, 0);

    public TwoByTwo and(boolean asking, boolean weak) {
        return new TwoByTwo(
                askingWeak + (asking && weak ? 1 : 0),
                askingSound + (asking && !weak ? 1 : 0),
                quietWeak + (!asking && weak ? 1 : 0),
                quietSound + (!asking && !weak ? 1 : 0));
    }

    public int asking() {
        return askingWeak + askingSound;
    }

    public int quiet() {
        return quietWeak + quietSound;
    }

    public int weak() {
        return askingWeak + quietWeak;
    }

    public int sound() {
        return askingSound + quietSound;
    }

    public int jars() {
        return asking() + quiet();
    }
}
