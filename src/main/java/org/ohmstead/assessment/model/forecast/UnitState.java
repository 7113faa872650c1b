package org.ohmstead.assessment.model.forecast;

/**
 * What is believed of one jar or link: its rise beyond the string, its rate, and its level when new, under two regimes.
 * A healthy unit keeps its rate; a going one speeds up and never heals.
 */
final class UnitState {
    private static final double LEVEL_OF_ITS_OWN = 1;

    final UnitConstants constants;
    final Regime healthy;
    final Regime going;
    double goingWeight;
    /** When it was fitted, in years of the string. */
    double startYears;
    /** Readings since it was fitted. */
    int readings;
    /** Innovation of a reading set aside, NaN when none is. */
    double pending = Double.NaN;
    /** When a replacement or remake without record is suspected to have happened, NaN when not. */
    double suspectedRestartYears = Double.NaN;
    /** Whether its level when new is its own affair, not that of its kind. */
    boolean ownLevel;
    /** Whether that is so because a first reading was far off its kind, not because of how it is built. */
    boolean tookOwnLevelByReading;
    /** Whether a large rise was confirmed by a second survey. */
    boolean stepped;

    boolean inLastSurvey;

    UnitState(UnitConstants constants) {
        this(constants, new Regime(), new Regime());
    }

    private UnitState(UnitConstants constants, Regime healthy, Regime going) {
        this.constants = constants;
        this.healthy = healthy;
        this.going = going;
    }

    /** As new on that day. */
    void restart(double years) {
        startYears = years;
        readings = 0;
        pending = Double.NaN;
        suspectedRestartYears = Double.NaN;
        stepped = false;
        goingWeight = constants.startsGoing();
        double rateVariance = square(constants.rateSpread());
        double levelVariance = square(constants.levelSpread());
        healthy.restart(0, rateVariance, levelVariance);
        going.restart(constants.turnedRate(), rateVariance + square(constants.turnedRateSpread()), levelVariance);
    }

    /** Its level tells nothing of its kind: only its own readings count. */
    void takeOwnLevel() {
        ownLevel = true;
        setNewLevel(0, LEVEL_OF_ITS_OWN);
    }

    private void setNewLevel(double mean, double variance) {
        healthy.setLevel(mean, variance);
        going.setLevel(mean, variance);
    }

    /** Made again: as new, but what is peculiar to the place stays. */
    void remake(double years) {
        double level = (1 - goingWeight) * healthy.level + goingWeight * going.level;
        double variance = healthy.levelVariance() + square(constants.levelSpread());
        restart(years);
        if (ownLevel) {
            setNewLevel(level, variance);
        }
    }

    boolean awaitsOwnLevel() {
        return ownLevel && healthy.levelVariance() >= LEVEL_OF_ITS_OWN;
    }

    void predict(double years) {
        predict(years, turning(constants, years));
    }

    /** @param turning as of {@link #turning}, the same for most units of a string */
    void predict(double years, double turning) {
        if (years <= 0) {
            return;
        }
        turnSome(turning);
        healthy.predict(years, 0, constants.healthyNoise());
        going.predict(years, constants.goingAcceleration(), constants.goingNoise());
    }

    /** Chance that a healthy unit turns within so many years. */
    static double turning(UnitConstants constants, double years) {
        return -Math.expm1(-constants.turnRate() * years);
    }

    private void turnSome(double turning) {
        double moved = (1 - goingWeight) * turning;
        goingWeight += moved;
        going.mix(healthy, moved / goingWeight, constants.turnedRate(), square(constants.turnedRateSpread()));
    }

    /** Expected reading beyond the string's centre. */
    double expected() {
        return (1 - goingWeight) * healthy.expected() + goingWeight * going.expected();
    }

    /** Variance of that, without the noise of a reading. */
    double expectedVariance() {
        double apart = healthy.expected() - going.expected();
        return (1 - goingWeight) * healthy.expectedVariance()
                + goingWeight * going.expectedVariance()
                + goingWeight * (1 - goingWeight) * apart * apart;
    }

    /** Expected rise beyond the string since new, per regime mixed. */
    double rise() {
        return (1 - goingWeight) * healthy.rise + goingWeight * going.rise;
    }

    double rate() {
        return (1 - goingWeight) * healthy.rate + goingWeight * going.rate;
    }

    /** Distance of a reading from the nearer regime, in standard deviations. */
    double distance(double reading, double noise) {
        double atHealthy = Math.abs(reading - healthy.expected()) / deviation(healthy, noise);
        double atGoing = Math.abs(reading - going.expected()) / deviation(going, noise);
        return goingWeight > 0 ? Math.min(atHealthy, atGoing) : atHealthy;
    }

    private static double deviation(Regime regime, double noise) {
        return Math.sqrt(regime.expectedVariance() + noise);
    }

    /** Density of a reading as predicted. */
    double density(double reading, double noise) {
        return (1 - goingWeight) * healthy.density(reading, noise) + goingWeight * going.density(reading, noise);
    }

    /** Takes a reading for what it says. */
    void observe(double reading, double noise) {
        observe(reading, noise, 0, 1);
    }

    /**
     * Takes a reading in that may be plainly wrong: then it says nothing, and the regimes stay as they were.
     *
     * @param wrongShare chance of that before it was read
     * @param wrongVariance of wrong readings around what is expected
     */
    void observe(double reading, double noise, double wrongShare, double wrongVariance) {
        double ifWrong = wrongShare * Normal.density(reading - expected(), noise + wrongVariance);
        double ofHealthy = (1 - wrongShare) * healthy.density(reading, noise);
        double ofGoing = (1 - wrongShare) * going.density(reading, noise);
        double likelyGoing = goingWeight * (ofGoing + ifWrong);
        double likely = likelyGoing + (1 - goingWeight) * (ofHealthy + ifWrong);
        if (likely > 0) {
            goingWeight = likelyGoing / likely;
        }
        healthy.observe(reading, noise, ifWrong / (ifWrong + ofHealthy + Double.MIN_NORMAL));
        going.observe(reading, noise, ifWrong / (ifWrong + ofGoing + Double.MIN_NORMAL));
        readings++;
    }

    /** A step that two surveys saw: the level moved, and whether more follows is open. */
    void step(double by) {
        raise(by);
        goingWeight = .5;
        stepped = true;
    }

    void raise(double by) {
        healthy.rise += by;
        going.rise += by;
    }

    UnitState copy() {
        UnitState copy = new UnitState(constants, healthy.copy(), going.copy());
        copy.goingWeight = goingWeight;
        copy.startYears = startYears;
        copy.readings = readings;
        copy.pending = pending;
        copy.suspectedRestartYears = suspectedRestartYears;
        copy.stepped = stepped;
        copy.ownLevel = ownLevel;
        copy.tookOwnLevelByReading = tookOwnLevelByReading;
        copy.inLastSurvey = inLastSurvey;
        return copy;
    }

    void write(DoubleTape tape) {
        healthy.write(tape);
        going.write(tape);
        tape.put(goingWeight);
        tape.put(startYears);
        tape.put(readings);
        tape.put(pending);
        tape.put(suspectedRestartYears);
        tape.put(stepped);
        tape.put(ownLevel);
        tape.put(tookOwnLevelByReading);
        tape.put(inLastSurvey);
    }

    static UnitState read(DoubleTape tape, UnitConstants constants) {
        UnitState unit = new UnitState(constants, Regime.read(tape), Regime.read(tape));
        unit.goingWeight = tape.take();
        unit.startYears = tape.take();
        unit.readings = (int) tape.take();
        unit.pending = tape.take();
        unit.suspectedRestartYears = tape.take();
        unit.stepped = tape.takeBoolean();
        unit.ownLevel = tape.takeBoolean();
        unit.tookOwnLevelByReading = tape.takeBoolean();
        unit.inLastSurvey = tape.takeBoolean();
        return unit;
    }

    private static double square(double x) {
        return x * x;
    }
}
