package org.ohmstead.testbed;

/** A jar's truth: its part in the common ageing, and at most one trouble of its own. */
final class JarCourse extends Course {
    /** No jar reads more than five times its value when new by drying out. */
    private static final double DRIED_OUT = Math.log(5);

    /** Kinds of trouble a jar may get. */
    enum Trouble {
        NONE,
        DRY_OUT,
        CORROSION,
        SHORT,
        OPEN
    }

    private final Laws laws;
    private final Ageing ageing;
    private final double frailty;
    private final double limit;
    private final Trouble trouble;
    private final double onset;
    private final double speed;
    private final double shape;

    JarCourse(Laws laws, Ageing ageing, Dice dice) {
        this(laws, ageing, dice, dice.waiting(laws.troublePerYear()) * dice.between(.6, 1.4));
    }

    JarCourse(Laws laws, Ageing ageing, Dice dice, double onset) {
        this.laws = laws;
        this.ageing = ageing;
        this.frailty = Math.exp(dice.normal(laws.frailty()));
        this.limit = Math.log(laws.limit()) + ageing.limitOffset() + dice.normal(laws.limitOfJar());
        this.onset = onset;
        this.trouble = onset > HORIZON ? Trouble.NONE : pick(dice.between(0.0, 1.0));
        this.speed = dice.between(0.0, 1.0);
        this.shape = dice.between(0.0, 1.0);
    }

    private static Trouble pick(double chance) {
        return chance < .42
                ? Trouble.DRY_OUT
                : chance < .80 ? Trouble.CORROSION : chance < .92 ? Trouble.SHORT : Trouble.OPEN;
    }

    Trouble trouble() {
        return trouble;
    }

    double onset() {
        return onset;
    }

    @Override
    double rise(double age) {
        double own = age > onset ? ownRise(age - onset) : 0;
        return frailty * ageing.common(age) + own;
    }

    private double ownRise(double since) {
        double smooth = switch (trouble) {
            case DRY_OUT -> Math.min(DRIED_OUT, .03 * Math.expm1(since / (.5 + 1.6 * speed)));
            case CORROSION -> (.03 + .09 * speed) * Math.pow(since, 1 + .7 * shape);
            case SHORT -> -.08 * Math.min(1, since / shortTakes());
            case OPEN -> .03 * since;
            case NONE -> 0;
        };
        double jump = .06;
        return laws.stepwise() && smooth > 0 ? jump * Math.floor(smooth / jump + shape) : smooth;
    }

    private double shortTakes() {
        return .15 + 1.2 * speed;
    }

    @Override
    double voltsMissing(double age) {
        if (trouble != Trouble.SHORT || age < onset) {
            return 0;
        }
        double part = Math.min(1, (age - onset) / shortTakes());
        return (.06 + .2 * shape) * part * part;
    }

    @Override
    double suddenEnd() {
        return switch (trouble) {
            case SHORT -> onset + shortTakes();
            case OPEN -> onset + 1.5 * speed;
            default -> Double.POSITIVE_INFINITY;
        };
    }

    @Override
    double limit() {
        return limit;
    }

    /** How all jars of a string age: a power of time that reaches the limit at the end of life, with an early dip. */
    record Ageing(double lifeYears, double power, double endRise, double dip, double limitOffset) {
        double common(double age) {
            double early = -dip * Math.sin(Math.PI * Math.min(1, age / 2)) * (age < 2 ? 1 : 0);
            return endRise * Math.pow(age / lifeYears, power) + early;
        }
    }
}
