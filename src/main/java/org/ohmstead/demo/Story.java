package org.ohmstead.demo;

import java.util.ArrayList;
import java.util.List;

/**
 * What happened to a string.
 *
 * @param wear how far its jars have risen together by today, as a share
 * @param jars troubles of single jars
 * @param links troubles of single links
 * @param replaced jars replaced with record
 * @param remade links remade with record
 * @param currentLost share of the test current that ran past the clamp in the last survey
 * @param monthsLate how long the next survey is overdue
 */
record Story(
        double wear,
        List<Trouble> jars,
        List<Trouble> links,
        List<Work> replaced,
        List<Work> remade,
        double currentLost,
        int monthsLate) {

    /**
     * Work done on a jar or link.
     *
     * @param place position or ordinal
     */
    record Work(int place, int monthsAgo, String words) {

        double yearsAgo() {
            return monthsAgo / 12.0;
        }
    }

    static Story uneventful(double wear) {
        return new Story(wear, List.of(), List.of(), List.of(), List.of(), 0, 0);
    }

    boolean isUneventful() {
        return jars.isEmpty()
                && links.isEmpty()
                && replaced.isEmpty()
                && remade.isEmpty()
                && currentLost == 0
                && monthsLate == 0;
    }

    Story withWear(double risen) {
        return new Story(risen, jars, links, replaced, remade, currentLost, monthsLate);
    }

    Story withJars(Trouble... troubles) {
        return new Story(wear, List.of(troubles), links, replaced, remade, currentLost, monthsLate);
    }

    Story withLinks(Trouble... troubles) {
        return new Story(wear, jars, List.of(troubles), replaced, remade, currentLost, monthsLate);
    }

    Story withReplaced(Work... works) {
        return new Story(wear, jars, links, List.of(works), remade, currentLost, monthsLate);
    }

    /** The link rises by that share until the work is done. */
    Story withRemade(double rise, Work work) {
        List<Trouble> more = new ArrayList<>(links);
        more.add(Trouble.remade(work.place(), rise, work.yearsAgo()));
        List<Work> works = new ArrayList<>(remade);
        works.add(work);
        return new Story(wear, jars, more, replaced, works, currentLost, monthsLate);
    }

    Story withCurrentLost(double share) {
        return new Story(wear, jars, links, replaced, remade, share, monthsLate);
    }

    Story late(int months) {
        return new Story(wear, jars, links, replaced, remade, currentLost, months);
    }
}
