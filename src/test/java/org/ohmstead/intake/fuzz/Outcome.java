package org.ohmstead.intake.fuzz;

import java.util.List;
import java.util.TreeSet;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.Weight;
import org.ohmstead.kernel.Flaw;

/**
 * What reading a mutant came to.
 *
 * @param kind READ whole, READ with doubts or losses, REFUSED with a reason, or UNFIT for a column map
 * @param sentences the distinct sentences said, without their numbers: a new set of them is news
 */
record Outcome(Kind kind, String sentences) {

    enum Kind {
        READ,
        DOUBTED,
        REFUSED,
        UNFIT
    }

    static Outcome of(int sheets, List<Finding> findings) {
        TreeSet<String> sentences = new TreeSet<>();
        Kind kind = sheets > 0 ? Kind.READ : Kind.UNFIT;
        for (Finding finding : findings) {
            sentences.add(sentence(finding.flaw()));
            kind = finding.weight() == Weight.UNREADABLE ? Kind.REFUSED : kind == Kind.READ ? Kind.DOUBTED : kind;
        }
        return new Outcome(kind, kind + " " + sentences);
    }

    /** Every answer says in words what is wrong and what to do, at a place that can be shown. */
    private static String sentence(Flaw flaw) {
        boolean clear = flaw.message().length() > 10
                && flaw.message().length() < 1_000
                && flaw.remedy().length() > 5
                && flaw.line() >= 0
                && flaw.column() >= 0;
        if (!clear) {
            throw new IllegalStateException("Not a clear answer: " + flaw);
        }
        return flaw.message().replaceAll("\"[^\"]*\"|\\d+", "#").replaceAll("[^\\x20-\\x7e]", "?");
    }
}
