package org.ohmstead.assessment.model.forecast;

/**
 * What is believed of one unit under one regime: how far it rose beyond its string, at what rate, and its level among its
 * like when new; jointly normal. Changed in place. The general {@link Gaussian} does the same with arrays; of these there
 * are more than two hundred a string, each touched at every survey.
 */
final class Regime {
    double rise;
    double rate;
    double level;
    private double riseVariance;
    private double riseRate;
    private double riseLevel;
    private double rateVariance;
    private double rateLevel;
    private double levelVariance;

    /** As new: all three independent. */
    void restart(double newRate, double newRateVariance, double newLevelVariance) {
        rise = 0;
        rate = newRate;
        riseVariance = 0;
        riseRate = 0;
        rateVariance = newRateVariance;
        setLevel(0, newLevelVariance);
    }

    /** Independent of rise and rate. */
    void setLevel(double mean, double variance) {
        level = mean;
        riseLevel = 0;
        rateLevel = 0;
        levelVariance = variance;
    }

    double levelVariance() {
        return levelVariance;
    }

    /**
     * Lets time pass.
     *
     * @param acceleration by which the rate grows, per year
     * @param noise intensity of the white noise on the rate
     */
    void predict(double years, double acceleration, double noise) {
        rise += years * rate + acceleration * years * years / 2;
        rate += acceleration * years;
        riseVariance += years * (2 * riseRate + years * rateVariance) + noise * years * years * years / 3;
        riseRate += years * rateVariance + noise * years * years / 2;
        riseLevel += years * rateLevel;
        rateVariance += noise * years;
    }

    /** Variance of the rise so many years ahead. */
    double riseVarianceAhead(double years, double noise) {
        return riseVariance + 2 * years * riseRate + years * years * rateVariance + noise * years * years * years / 3;
    }

    /** The reading to be expected, beyond the string's centre. */
    double expected() {
        return rise + level;
    }

    /** Variance of that, without the noise of a reading. */
    double expectedVariance() {
        return Math.max(0, riseVariance + 2 * riseLevel + levelVariance);
    }

    double density(double reading, double noise) {
        return Normal.density(reading - expected(), expectedVariance() + noise);
    }

    /**
     * Takes a reading in that may be plainly wrong: the normal law with the moments of "as it was" with the chance of that,
     * and "moved by the gain" with the rest.
     */
    void observe(double reading, double noise, double wrong) {
        double innovation = reading - expected();
        double variance = expectedVariance() + noise;
        double ofRise = (riseVariance + riseLevel) / variance;
        double ofRate = (riseRate + rateLevel) / variance;
        double ofLevel = (riseLevel + levelVariance) / variance;
        double moved = (1 - wrong) * innovation;
        rise += ofRise * moved;
        rate += ofRate * moved;
        level += ofLevel * moved;
        double shrinks = (1 - wrong) * (variance - wrong * innovation * innovation);
        riseVariance -= ofRise * ofRise * shrinks;
        riseRate -= ofRise * ofRate * shrinks;
        riseLevel -= ofRise * ofLevel * shrinks;
        rateVariance -= ofRate * ofRate * shrinks;
        rateLevel -= ofRate * ofLevel * shrinks;
        levelVariance -= ofLevel * ofLevel * shrinks;
    }

    /**
     * Becomes the normal law with the moments of a mixture.
     *
     * @param other which joins with this weight, its rate jumping as it does
     */
    void mix(Regime other, double weight, double jump, double jumpVariance) {
        double own = 1 - weight;
        double both = own * weight;
        double riseApart = other.rise - rise;
        double rateApart = other.rate + jump - rate;
        double levelApart = other.level - level;
        riseVariance = own * riseVariance + weight * other.riseVariance + both * riseApart * riseApart;
        riseRate = own * riseRate + weight * other.riseRate + both * riseApart * rateApart;
        riseLevel = own * riseLevel + weight * other.riseLevel + both * riseApart * levelApart;
        rateVariance = own * rateVariance + weight * (other.rateVariance + jumpVariance) + both * rateApart * rateApart;
        rateLevel = own * rateLevel + weight * other.rateLevel + both * rateApart * levelApart;
        levelVariance = own * levelVariance + weight * other.levelVariance + both * levelApart * levelApart;
        rise += weight * riseApart;
        rate += weight * rateApart;
        level += weight * levelApart;
    }

    Regime copy() {
        Regime copy = new Regime();
        copy.rise = rise;
        copy.rate = rate;
        copy.level = level;
        copy.riseVariance = riseVariance;
        copy.riseRate = riseRate;
        copy.riseLevel = riseLevel;
        copy.rateVariance = rateVariance;
        copy.rateLevel = rateLevel;
        copy.levelVariance = levelVariance;
        return copy;
    }

    void write(DoubleTape tape) {
        tape.put(rise);
        tape.put(rate);
        tape.put(level);
        tape.put(riseVariance);
        tape.put(riseRate);
        tape.put(riseLevel);
        tape.put(rateVariance);
        tape.put(rateLevel);
        tape.put(levelVariance);
    }

    static Regime read(DoubleTape tape) {
        Regime regime = new Regime();
        regime.rise = tape.take();
        regime.rate = tape.take();
        regime.level = tape.take();
        regime.riseVariance = tape.take();
        regime.riseRate = tape.take();
        regime.riseLevel = tape.take();
        regime.rateVariance = tape.take();
        regime.rateLevel = tape.take();
        regime.levelVariance = tape.take();
        return regime;
    }
}
