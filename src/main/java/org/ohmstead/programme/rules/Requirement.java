package org.ohmstead.programme.rules;

import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One activity that a pack demands again and again.
 *
 * @param code unique in its pack; equal codes of two packs or versions mean the same activity
 * @param activity what must be done, paraphrased
 * @param clause where the source says so
 * @param branches the ways to meet it; the first counts until the owner elects another
 */
public record Requirement(String code, String activity, String clause, Provenance provenance, List<Branch> branches) {

    public Requirement {
        branches = List.copyOf(branches);
        if (branches.isEmpty() || !branches.get(0).isPeriodic()) {
            throw new IllegalArgumentException("The first branch of \"" + activity + "\" must have an interval");
        }
        if (branches.stream().map(Branch::code).distinct().count() != branches.size()) {
            throw new IllegalArgumentException("Two branches of \"" + activity + "\" have the same code");
        }
    }

    /** @throws IllegalArgumentException when there is none of that code */
    public Branch branch(String code) {
        return branches.stream()
                .filter(branch -> branch.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + activity + "\" can't be met by \"" + code
                        + "\"; choose one of "
                        + branches.stream().map(Branch::code).toList()));
    }

    /** The first one where the code is not known, as after a change of the pack. */
    Branch branchOrFirst(String code) {
        return branches.stream()
                .filter(branch -> branch.code().equals(code))
                .findFirst()
                .orElse(branches.get(0));
    }

    Requirement withOwnMonths(@Nullable Integer months) {
        return new Requirement(
                code,
                activity,
                clause,
                provenance,
                branches.stream().map(branch -> shortened(branch, months)).toList());
    }

    /** The first branch must be shortened; another is left alone where that would be no shortening. */
    private Branch shortened(Branch branch, @Nullable Integer months) {
        Interval interval = branch.interval();
        boolean first = branch.equals(branches.get(0));
        return interval != null && (first || months == null || months < interval.months())
                ? branch.withOwnMonths(months)
                : branch;
    }

    public boolean isEitherOr() {
        return branches.size() > 1;
    }

    static void requireDistinct(List<Requirement> requirements) {
        HashSet<String> codes = new HashSet<>();
        for (Requirement requirement : requirements) {
            if (!codes.add(requirement.code())) {
                throw new IllegalArgumentException("Two requirements have the code \"" + requirement.code() + "\"");
            }
        }
    }
}
