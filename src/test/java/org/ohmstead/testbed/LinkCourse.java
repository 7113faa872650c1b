package org.ohmstead.testbed;

/** A link's truth: slow common ageing, a joint made badly, a joint that goes bad later, or one that loosens at once. */
final class LinkCourse extends Course {
    private static final double BAD_FROM_THE_START = .025;
    private static final double GOES_BAD_PER_YEAR = .006;
    private static final double LOOSENS_PER_YEAR = .0035;

    private final double slow;
    private final double limit;
    private final double onset;
    private final double ceiling;
    private final double settles;
    private final double loosens;
    private final double jump;
    private final double jointShare;

    /** @param jointShare how much of the reading is joint and not cable, 1 for a strap */
    LinkCourse(Dice dice, double jointShare) {
        this.slow = Math.abs(dice.normal(.003)) + .001;
        this.limit = Math.log(1.20) + dice.normal(.03);
        this.onset = dice.happens(BAD_FROM_THE_START) ? 0 : dice.waiting(GOES_BAD_PER_YEAR);
        this.ceiling = dice.between(.2, 1.2);
        this.settles = dice.between(1.5, 7.0);
        this.loosens = dice.waiting(LOOSENS_PER_YEAR);
        this.jump = dice.between(.15, 1.4);
        this.jointShare = jointShare;
    }

    @Override
    double rise(double age) {
        double joint = slow * age;
        if (age > onset) {
            joint += ceiling * -Math.expm1(-(age - onset) / settles);
        }
        if (age > loosens) {
            joint += jump;
        }
        return Math.log(1 - jointShare + jointShare * Math.exp(joint));
    }

    boolean isSudden() {
        return Math.abs(failure() - loosens) < .05;
    }

    @Override
    double limit() {
        return limit;
    }
}
