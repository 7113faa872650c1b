package org.ohmstead.assessment.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that the rules look at for one link. NaN where there is nothing to compare with; shares: 0.2 is 20 % up.
 *
 * @param count readings since the joint was made
 * @param first the first of them, which is its baseline; null without any
 * @param last the latest
 * @param rise of the net value over the first one; NaN while the first is the only one, or when the cable dominates
 * @param average of its kind in the survey of the last reading
 * @param overInstallation how many readings since it was made lie above the installation criterion, if all do; else 0
 */
record LinkCase(
        Joint joint,
        int count,
        @Nullable LinkReading first,
        @Nullable LinkReading last,
        double rise,
        double riseBefore,
        double average,
        double kindRise,
        double kindRiseBefore,
        int overInstallation,
        boolean skipped,
        int strapsRead,
        double designAmps,
        @Nullable Trend trend) {

    private static final double NAN = Double.NaN;

    static LinkCase of(LinkPanel links, LinkPlan plan, Limits limits) {
        Panel panel = links.panel();
        Joint joint = Joint.of(panel, plan);
        List<LinkReading> readings = links.since(joint.madeOn(), plan.ordinal());
        int n = readings.size();
        LinkReading first = n == 0 ? null : readings.get(0);
        LinkReading last = n == 0 ? null : readings.get(n - 1);
        LinkReading before = n < 2 ? null : readings.get(n - 2);
        return new LinkCase(
                joint,
                n,
                first,
                last,
                n < 2 ? NAN : rise(first, last),
                n < 3 ? NAN : rise(first, before),
                last == null ? NAN : links.average(last.survey(), plan),
                kindRise(links, plan, last),
                kindRise(links, plan, before),
                overInstallation(links, joint, readings, limits),
                isSkipped(links, joint, last),
                panel.last() < 0 ? 0 : LinkReading.strapsRead(panel.survey(panel.last()), plan),
                panel.history().plan().designLoadAmps(),
                trend(panel, readings, limits));
    }

    private static double rise(@Nullable LinkReading first, @Nullable LinkReading later) {
        if (first == null || later == null || first.cableDominates() || later.cableDominates()) {
            return NAN;
        }
        return later.net() / first.net() - 1;
    }

    private static double kindRise(LinkPanel links, LinkPlan plan, @Nullable LinkReading reading) {
        if (reading == null) {
            return NAN;
        }
        double average = links.average(reading.survey(), plan);
        return average > 0 ? reading.net() / average - 1 : NAN;
    }

    private static int overInstallation(LinkPanel links, Joint joint, List<LinkReading> readings, Limits limits) {
        boolean records = joint.remade()
                || (!readings.isEmpty()
                        && readings.get(0)
                                .takenOn()
                                .isBefore(joint.madeOn().plusMonths(limits.countOf(Limit.LINK_INSTALL_MONTHS))));
        boolean all = records
                && readings.stream()
                        .allMatch(reading -> reading.net()
                                > installationLimit(links.average(reading.survey(), joint.link()), limits));
        return all ? readings.size() : 0;
    }

    /** The average of similar connections plus 10 % or 5 µΩ, whichever is greater (see {@link Limit}). */
    static double installationLimit(double averageMicroohms, Limits limits) {
        return averageMicroohms
                + Math.max(
                        averageMicroohms * limits.of(Limit.LINK_INSTALL_SHARE),
                        limits.of(Limit.LINK_INSTALL_MICROOHMS));
    }

    /** Others were read in the last round, this one was not, nor since. */
    private static boolean isSkipped(LinkPanel links, Joint joint, @Nullable LinkReading last) {
        int round = links.lastRound();
        return round >= 0
                && !links.panel().survey(round).takenOn().isBefore(joint.madeOn())
                && (last == null || last.survey() < round);
    }

    private static @Nullable Trend trend(Panel panel, List<LinkReading> readings, Limits limits) {
        if (readings.isEmpty() || readings.get(0).cableDominates()) {
            return null;
        }
        LinkReading first = readings.get(0);
        int skip = Math.max(0, readings.size() - limits.countOf(Limit.TREND_MOST));
        double[] years = new double[readings.size() - skip];
        double[] shares = new double[years.length];
        for (int i = 0; i < years.length; i++) {
            LinkReading reading = readings.get(skip + i);
            years[i] = panel.years(first.survey(), reading.survey());
            shares[i] = reading.net() / first.net();
        }
        return Trend.of(years, shares, limits);
    }

    /** Drop in millivolts at the design current over the whole link, cable included. */
    double dropMillivolts() {
        return last == null ? NAN : designAmps * last.combined() / 1000;
    }

    /** Heat at the design current over the whole link. */
    double heatWatts() {
        return last == null ? NAN : designAmps * designAmps * last.combined() * 1e-6;
    }

    boolean isCable() {
        return joint.link().kind().isCable();
    }
}
