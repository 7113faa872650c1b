package org.ohmstead.assessment.model.forecast;

/**
 * What is believed of one jar or link: its rise beyond the string, its rate, and its level when new, under two regimes.
 * A healthy unit keeps its rate; a going one speeds up and never heals.
 */
final class UnitState {
    static final int LEVEL = Gaussian.LEVEL;
    static final int RATE = Gaussian.RATE;
    static final int NEW = 2;
    private static final double LEVEL_OF_ITS_OWN = 1;

    final UnitConstants constants;
    final Gaussian healthy;
    final Gaussian going;
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
        this(constants, new Gaussian(3), new Gaussian(3));
    }

    private UnitState(UnitConstants constants, Gaussian healthy, Gaussian going) {
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
        asNew(healthy, 0, rateVariance);
        asNew(going, constants.turnedRate(), rateVariance + square(constants.turnedRateSpread()));
    }

    private void asNew(Gaussian regime, double rate, double rateVariance) {
        regime.set(LEVEL, 0, 0);
        regime.set(RATE, rate, rateVariance);
        regime.set(NEW, 0, square(constants.levelSpread()));
    }

    /** Its level tells nothing of its kind: only its own readings count. */
    void takeOwnLevel() {
        ownLevel = true;
        setNewLevel(0, LEVEL_OF_ITS_OWN);
    }

    private void setNewLevel(double mean, double variance) {
        healthy.set(NEW, mean, variance);
        going.set(NEW, mean, variance);
    }

    /** Made again: as new, but what is peculiar to the place stays. */
    void remake(double years) {
        double level = (1 - goingWeight) * healthy.mean[NEW] + goingWeight * going.mean[NEW];
        double variance = healthy.cov(NEW, NEW) + square(constants.levelSpread());
        restart(years);
        if (ownLevel) {
            setNewLevel(level, variance);
        }
    }

    boolean awaitsOwnLevel() {
        return ownLevel && healthy.cov(NEW, NEW) >= LEVEL_OF_ITS_OWN;
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
        flow(healthy, years, 0, constants.healthyNoise());
        flow(going, years, constants.goingAcceleration(), constants.goingNoise());
    }

    /** Chance that a healthy unit turns within so many years. */
    static double turning(UnitConstants constants, double years) {
        return -Math.expm1(-constants.turnRate() * years);
    }

    private void turnSome(double turning) {
        double moved = (1 - goingWeight) * turning;
        goingWeight += moved;
        going.mix(turned(), moved / goingWeight);
    }

    /** A healthy unit that turns just now. */
    Gaussian turned() {
        Gaussian turned = healthy.copy();
        turned.mean[RATE] += constants.turnedRate();
        turned.addVariance(RATE, square(constants.turnedRateSpread()));
        return turned;
    }

    private static void flow(Gaussian regime, double years, double acceleration, double noise) {
        regime.addMultiple(LEVEL, years, RATE);
        regime.mean[LEVEL] += acceleration * years * years / 2;
        regime.mean[RATE] += acceleration * years;
        regime.addIntegratedNoise(noise, years);
    }

    /** Expected reading beyond the string's centre. */
    double expected() {
        return (1 - goingWeight) * healthy.sum(LEVEL, NEW) + goingWeight * going.sum(LEVEL, NEW);
    }

    /** Variance of that, without the noise of a reading. */
    double expectedVariance() {
        double apart = healthy.sum(LEVEL, NEW) - going.sum(LEVEL, NEW);
        return (1 - goingWeight) * healthy.sumVariance(LEVEL, NEW)
                + goingWeight * going.sumVariance(LEVEL, NEW)
                + goingWeight * (1 - goingWeight) * apart * apart;
    }

    /** Expected rise beyond the string since new, per regime mixed. */
    double rise() {
        return (1 - goingWeight) * healthy.mean[LEVEL] + goingWeight * going.mean[LEVEL];
    }

    double rate() {
        return (1 - goingWeight) * healthy.mean[RATE] + goingWeight * going.mean[RATE];
    }

    /** Distance of a reading from the nearer regime, in standard deviations. */
    double distance(double reading, double noise) {
        double atHealthy = Math.abs(reading - healthy.sum(LEVEL, NEW)) / deviation(healthy, noise);
        double atGoing = Math.abs(reading - going.sum(LEVEL, NEW)) / deviation(going, noise);
        return goingWeight > 0 ? Math.min(atHealthy, atGoing) : atHealthy;
    }

    private static double deviation(Gaussian regime, double noise) {
        return Math.sqrt(regime.sumVariance(LEVEL, NEW) + noise);
    }

    /** Density of a reading as predicted. */
    double density(double reading, double noise) {
        return (1 - goingWeight) * density(healthy, reading, noise) + goingWeight * density(going, reading, noise);
    }

    private static double density(Gaussian regime, double reading, double noise) {
        return Normal.density(reading - regime.sum(LEVEL, NEW), regime.sumVariance(LEVEL, NEW) + noise);
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
        double ofHealthy = (1 - wrongShare) * density(healthy, reading, noise);
        double ofGoing = (1 - wrongShare) * density(going, reading, noise);
        double likelyGoing = goingWeight * (ofGoing + ifWrong);
        double likely = likelyGoing + (1 - goingWeight) * (ofHealthy + ifWrong);
        if (likely > 0) {
            goingWeight = likelyGoing / likely;
        }
        update(healthy, reading, noise, ifWrong / (ifWrong + ofHealthy + Double.MIN_NORMAL));
        update(going, reading, noise, ifWrong / (ifWrong + ofGoing + Double.MIN_NORMAL));
        readings++;
    }

    private static void update(Gaussian regime, double reading, double noise, double wrong) {
        Gaussian before = wrong > 0 ? regime.copy() : regime;
        regime.observeSum(LEVEL, NEW, reading, noise);
        if (wrong > 0) {
            regime.mix(before, wrong);
        }
    }

    /** A step that two surveys saw: the level moved, and whether more follows is open. */
    void step(double by) {
        raise(by);
        goingWeight = .5;
        stepped = true;
    }

    void raise(double by) {
        healthy.mean[LEVEL] += by;
        going.mean[LEVEL] += by;
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
        tape.putAll(new double[] {
            goingWeight,
            startYears,
            readings,
            pending,
            suspectedRestartYears,
            stepped ? 1 : 0,
            ownLevel ? 1 : 0,
            tookOwnLevelByReading ? 1 : 0,
            inLastSurvey ? 1 : 0
        });
    }

    static UnitState read(DoubleTape tape, UnitConstants constants) {
        UnitState unit = new UnitState(constants, Gaussian.read(tape, 3), Gaussian.read(tape, 3));
        unit.goingWeight = tape.take();
        unit.startYears = tape.take();
        unit.readings = (int) tape.take();
        unit.pending = tape.take();
        unit.suspectedRestartYears = tape.take();
        unit.stepped = tape.take() == 1;
        unit.ownLevel = tape.take() == 1;
        unit.tookOwnLevelByReading = tape.take() == 1;
        unit.inLastSurvey = tape.take() == 1;
        return unit;
    }

    private static double square(double x) {
        return x * x;
    }
}
