package org.ohmstead.access;

/** The things that not everybody may do. */
public enum Permission {
    SEE_ESTATE("see the estate"),
    HAND_IN_SURVEYS("hand in surveys"),
    DO_WORK("raise, plan and report work"),
    SETTLE_SURVEYS("accept, refuse or void surveys"),
    EDIT_REGISTER("change the register"),
    OVERRULE("overrule a judgement"),
    SIGN_OFF("sign off a quarter"),
    ADMINISTER("administer users");

    private final String words;

    Permission(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
