package org.ohmstead.intake.forensics;

/** What a fingerprint would let one see: the log likelihood a fault is expected to cost if it were weighed as order. */
final class Discernment {

    /** Enough to overcome the rarity of a slip and the demand to be sure. */
    private static final double NEEDED = 12;

    private Discernment() {}

    static WalkVerdict.Sight of(Fingerprint own) {
        int jars = own.jars();
        int middle = Math.max(1, jars / 2);
        return new WalkVerdict.Sight(
                expected(own, Walk.fromTheOtherEnd(jars)) > NEEDED,
                expected(own, Walk.skipping(middle, jars)) > NEEDED);
    }

    private static double expected(Fingerprint own, Walk walk) {
        double sum = 0;
        for (Pattern pattern : own.patterns()) {
            for (int i = 0; i < pattern.size(); i++) {
                int place = walk.placeOf(pattern.places(), i);
                double z = (pattern.mean(i) - pattern.mean(place)) / pattern.deviation(place);
                // what the t density makes of it: large differences count by their logarithm
                sum += 3 * Math.log1p(z * z / 5);
            }
        }
        return sum;
    }
}
