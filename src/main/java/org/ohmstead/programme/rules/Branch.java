package org.ohmstead.programme.rules;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One way to meet a requirement.
 *
 * @param code unique in its requirement
 * @param words what is done, paraphrased
 * @param evidence any one of these shows it
 * @param coverage share of the units that must be covered, 1.0 for every unit
 * @param interval the longest allowed; null when nothing periodic is asked, as with monitoring and alarms
 * @param ownMonths the pack owner's shorter interval in months, null when there is none
 */
public record Branch(
        String code,
        String words,
        Set<EvidenceKind> evidence,
        @Nullable Double coverage,
        @Nullable Interval interval,
        @Nullable Integer ownMonths) {

    public Branch {
        evidence = evidence == null ? Set.of() : Set.copyOf(evidence);
        if (interval != null && evidence.isEmpty()) {
            throw new IllegalArgumentException("Nothing is named that would show \"" + words + "\"");
        }
        if (coverage != null && !(coverage > 0 && coverage <= 1)) {
            throw new IllegalArgumentException("A coverage lies above 0 and is at most 1, not " + coverage);
        }
        if (ownMonths != null && interval != null) {
            interval.shortenedTo(ownMonths);
        }
    }

    public boolean isPeriodic() {
        return interval != null;
    }

    boolean isShownBy(Evidence done) {
        return evidence.contains(done.kind()) && done.covers(share());
    }

    /** What was tried but does not suffice. */
    List<Evidence> tooLittle(List<Evidence> history) {
        return history.stream()
                .filter(done -> evidence.contains(done.kind()) && !done.covers(share()))
                .toList();
    }

    private double share() {
        return coverage == null ? 1 : coverage;
    }

    public Branch withOwnMonths(@Nullable Integer months) {
        return new Branch(code, words, evidence, coverage, interval, months);
    }
}
