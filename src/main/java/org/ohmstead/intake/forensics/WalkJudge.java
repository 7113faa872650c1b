package org.ohmstead.intake.forensics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Weighs how the string was walked: in order, from the other end, with a jar skipped or read twice, with two jars
 * swapped, or along another string of the site. The likelihood of each walk under the string's own pattern is joined
 * with how common such slips are; an accusation needs a high probability, because crews are told of it on site.
 */
public final class WalkJudge {

    /** How often each slip happens, per survey; order of magnitude, common practice, no source. */
    private static final double REVERSED = 0.004;

    private static final double SKIPPED = 0.010;
    private static final double READ_TWICE = 0.006;
    private static final double NEIGHBOURS_SWAPPED = 0.002;
    private static final double OTHERS_SWAPPED = 0.0005;
    private static final double OTHER_STRING = 0.004;

    /** Below this probability nobody is told that the walk was wrong. */
    private static final double SURE_ENOUGH = 0.95;

    private final Fingerprint own;
    private final List<Series> survey;
    private final List<Candidate> candidates = new ArrayList<>();

    private record Candidate(
            Walk walk, @org.jspecify.annotations.Nullable String otherString, double weight) {}

    private WalkJudge(Fingerprint own, List<Series> survey) {
        this.own = own;
        this.survey = own.known(survey);
    }

    /**
     * @param others the fingerprints of the site's other strings with as many jars, by name
     * @param survey the quantities in the same order as the history's
     */
    public static WalkVerdict judge(Fingerprint own, Map<String, Fingerprint> others, List<Series> survey) {
        if (own.isBlank()) {
            return WalkVerdict.cannotTell(own.jars());
        }
        WalkJudge judge = new WalkJudge(own, survey);
        judge.weighWholeWalks();
        judge.weighShifts();
        judge.weighSwaps();
        others.forEach((name, other) -> judge.weighOther(name, other, survey));
        return judge.verdict();
    }

    private void weighWholeWalks() {
        add(Walk.inOrder(own.jars()), 1);
        add(Walk.fromTheOtherEnd(own.jars()), REVERSED);
    }

    private void add(Walk walk, double prior) {
        candidates.add(new Candidate(walk, null, Math.log(prior) + Fit.of(survey, own.patterns(), walk)));
    }

    /** Scanned in one pass; the promising ones are weighed again with a level and noise of their own. */
    private void weighShifts() {
        int jars = own.jars();
        ShiftScan scan = ShiftScan.of(survey, own.patterns(), jars);
        for (int jar = 1; jar <= jars; jar++) {
            if (scan.skipGain(jar) > 0) {
                add(Walk.skipping(jar, jars), SKIPPED / jars);
            }
            if (scan.doubleGain(jar) > 0 && jar < jars) {
                add(Walk.readingTwice(jar, jars), READ_TWICE / jars);
            }
        }
    }

    private void weighSwaps() {
        int jars = own.jars();
        for (SwapScan.Pair pair : SwapScan.promising(survey, own.patterns(), jars)) {
            boolean neighbours = pair.other() == pair.one() + 1;
            double prior = neighbours ? NEIGHBOURS_SWAPPED / jars : OTHERS_SWAPPED * 2 / ((double) jars * jars);
            add(Walk.swapping(pair.one(), pair.other(), jars), prior);
        }
    }

    /** Own and other string are compared with their levels: a string of another size stands out by that alone. */
    private void weighOther(String name, Fingerprint other, List<Series> whole) {
        if (other.patterns().size() != own.patterns().size() || other.jars() != own.jars()) {
            return;
        }
        Walk walk = Walk.inOrder(other.jars());
        List<Series> theirs = other.known(whole);
        double levels = Fit.ofLevels(theirs, other.patterns()) - Fit.ofLevels(survey, own.patterns());
        double fit = Fit.of(theirs, other.patterns(), walk) + levels;
        candidates.add(new Candidate(walk, name, Math.log(OTHER_STRING) + fit));
    }

    private WalkVerdict verdict() {
        double top = candidates.stream().mapToDouble(Candidate::weight).max().orElse(0);
        Candidate best = candidates.get(0);
        double bestShare = 0;
        for (Candidate candidate : candidates) {
            double share = shareOfKind(candidate, top);
            boolean likelierWithin = sameKind(candidate, best) && candidate.weight() > best.weight();
            if (share > bestShare * (1 + 1e-9) || likelierWithin) {
                best = candidate;
                bestShare = share;
            }
        }
        double probability = bestShare
                / candidates.stream()
                        .mapToDouble(c -> Math.exp(c.weight() - top))
                        .sum();
        boolean accuses = best.walk().kind() != Walk.Kind.IN_ORDER || best.otherString() != null;
        if (accuses && probability < SURE_ENOUGH) {
            return report(candidates.get(0), 1 - probability, top);
        }
        return report(best, probability, top);
    }

    private double shareOfKind(Candidate kind, double top) {
        return candidates.stream()
                .filter(c -> sameKind(c, kind))
                .mapToDouble(c -> Math.exp(c.weight() - top))
                .sum();
    }

    private static boolean sameKind(Candidate one, Candidate other) {
        return one.walk().kind() == other.walk().kind()
                && java.util.Objects.equals(one.otherString(), other.otherString());
    }

    private WalkVerdict report(Candidate best, double probability, double top) {
        int[] range = range(best, top);
        return new WalkVerdict(best.walk(), best.otherString(), probability, range[0], range[1], Discernment.of(own));
    }

    /** The shortest run of jars around the likeliest place that holds nine tenths of its kind's weight. */
    private int[] range(Candidate best, double top) {
        double all = shareOfKind(best, top);
        int first = best.walk().at();
        int last = first;
        double held = Math.exp(best.weight() - top);
        while (held < 0.9 * all && (first > 1 || last < own.jars())) {
            double before = weightAt(best, first - 1, top);
            double after = weightAt(best, last + 1, top);
            if (before >= after && first > 1 || last >= own.jars()) {
                first--;
                held += before;
            } else {
                last++;
                held += after;
            }
        }
        return new int[] {first, last};
    }

    private double weightAt(Candidate kind, int jar, double top) {
        return candidates.stream()
                .filter(c -> sameKind(c, kind) && c.walk().at() == jar)
                .mapToDouble(c -> Math.exp(c.weight() - top))
                .sum();
    }
}
