package org.ohmstead.kernel;

/** How a link joins two posts. Links are only ever compared within their kind. */
public enum LinkKind {
    STRAP("strap"),
    TIER_CABLE("tier cable"),
    ROW_CABLE("row cable"),
    TERMINAL("terminal");

    private final String words;

    LinkKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Cabled links carry the cable's own resistance, which is taken out before the joints are judged. */
    public boolean isCable() {
        return this == TIER_CABLE || this == ROW_CABLE;
    }
}
