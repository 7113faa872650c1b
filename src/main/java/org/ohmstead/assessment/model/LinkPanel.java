package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ohmstead.statistics.Huber;

/** All link readings of a string, with the average of each kind in each survey. */
final class LinkPanel {

    private final Panel panel;
    private final Limits limits;
    private final LinkReading[][] readings;
    private final int[] firstAlike;
    private final int lastRound;
    private final Map<Integer, Double> averages = new HashMap<>();

    LinkPanel(Panel panel, Limits limits) {
        this.panel = panel;
        this.limits = limits;
        List<LinkPlan> links = panel.history().plan().links();
        firstAlike = IntStream.range(0, links.size())
                .map(k -> IntStream.rangeClosed(0, k)
                        .filter(i -> isAlike(links.get(i), links.get(k)))
                        .findFirst()
                        .orElse(k))
                .toArray();
        readings = new LinkReading[panel.last() + 1][links.size()];
        for (int s = 0; s < readings.length; s++) {
            for (int k = 0; k < links.size(); k++) {
                readings[s][k] = LinkReading.of(panel, s, links.get(k));
            }
        }
        lastRound = findLastRound();
    }

    Panel panel() {
        return panel;
    }

    /** Readings of the joint as it is made now, oldest first. */
    List<LinkReading> since(LocalDate madeOn, int ordinal) {
        List<LinkReading> found = new ArrayList<>();
        long from = madeOn.toEpochDay();
        for (int s = 0; s < readings.length; s++) {
            LinkReading reading = readings[s][ordinal];
            if (!Double.isNaN(reading.combined()) && panel.day(s) >= from) {
                found.add(reading);
            }
        }
        return found;
    }

    /**
     * The average of the links of one kind (and number of straps) in one survey, as a Huber mean, so that one bad joint
     * pulls it only so far; NaN when too few were read.
     */
    double average(int survey, LinkPlan like) {
        int key = survey * firstAlike.length + firstAlike[like.ordinal()];
        return averages.computeIfAbsent(key, any -> averageOf(survey, like));
    }

    private double averageOf(int survey, LinkPlan like) {
        List<LinkPlan> links = panel.history().plan().links();
        double[] nets = new double[links.size()];
        for (int k = 0; k < nets.length; k++) {
            nets[k] = isAlike(links.get(k), like) ? readings[survey][k].net() : Double.NaN;
        }
        return Numbers.count(nets) < limits.of(Limit.LINK_KIND_SIZE) ? Double.NaN : Huber.location(nets);
    }

    private static boolean isAlike(LinkPlan one, LinkPlan other) {
        return one.kind() == other.kind() && one.straps() == other.straps();
    }

    /** The last survey in which half of the links or more were read; -1 without any. */
    int lastRound() {
        return lastRound;
    }

    private int findLastRound() {
        int s = readings.length - 1;
        while (s >= 0 && 2 * readIn(s) < readings[s].length) {
            s--;
        }
        return s;
    }

    private int readIn(int survey) {
        int count = 0;
        for (LinkReading reading : readings[survey]) {
            count += Double.isNaN(reading.combined()) ? 0 : 1;
        }
        return count;
    }
}
