package org.ohmstead.assessment.model;

import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/** All rules on a link in one list. Each says nothing (null) or gives its reason. */
final class LinkRules {

    private static final List<BiFunction<LinkCase, Limits, @Nullable Reason>> ALL = List.of(
            LinkRules::overBaseline, LinkRules::installation, LinkRules::overKind, LinkRules::drop, LinkRules::notRead);

    private static final String REMAKE =
            " Read it again; if it stands, clean and remake the joint with charger and load off.";

    private LinkRules() {}

    static LinkJudgement judge(LinkCase link, Limits limits) {
        return LinkJudgement.of(link, Verdicts.reasons(link, limits, ALL));
    }

    static @Nullable Reason overBaseline(LinkCase link, Limits limits) {
        double edge = limits.of(Limit.LINK_RISE_ACT);
        if (!(link.rise() >= edge) || isWithinCableNoise(link, limits)) {
            return null;
        }
        LinkReading first = Objects.requireNonNull(link.first());
        boolean borneOut = Verdicts.isBorneOut(link.riseBefore(), edge);
        String before = Double.isNaN(link.riseBefore())
                ? ""
                : "; the reading before stood at " + Words.change(link.riseBefore());
        String words = netWords(link) + " is " + Words.change(link.rise()) + " against "
                + Words.microohms(first.net()) + " when first read since it was made (" + first.takenOn() + ")"
                + before + "." + REMAKE;
        String change = "A reading below " + Words.microohms(first.net() * (1 + edge)) + ", or a recorded remake.";
        return Reason.asking(Rule.LINK_OVER_BASELINE, borneOut ? Urgency.ACT : Urgency.RECHECK, words, change, limits)
                .soon(limits);
    }

    /** A small rest of a large reading: a change within the repeatability of the whole reading is no change. */
    private static boolean isWithinCableNoise(LinkCase link, Limits limits) {
        LinkReading first = Objects.requireNonNull(link.first());
        LinkReading last = Objects.requireNonNull(link.last());
        return link.isCable() && last.net() - first.net() < limits.of(Limit.CABLE_NOISE) * last.combined();
    }

    static @Nullable Reason installation(LinkCase link, Limits limits) {
        if (link.overInstallation() == 0) {
            return null;
        }
        String sameDay = Objects.requireNonNull(link.first())
                        .takenOn()
                        .equals(link.joint().madeOn())
                ? " It was read on the day it was made: was that before or after?"
                : "";
        String edge = Words.microohms(LinkCase.installationLimit(link.average(), limits));
        String words = netWords(link) + " is above " + edge + ", what a newly made joint may have beside an average of "
                + Words.microohms(link.average()) + " of its kind." + sameDay + REMAKE;
        Urgency asks = link.overInstallation() > 1 ? Urgency.PLAN : Urgency.RECHECK;
        return Reason.asking(Rule.LINK_INSTALLATION, asks, words, "A reading of " + edge + " or less.", limits)
                .soonIf(asks == Urgency.RECHECK, limits);
    }

    static @Nullable Reason overKind(LinkCase link, Limits limits) {
        double edge = limits.of(Limit.LINK_KIND_NOTE);
        if (!(link.kindRise() >= edge)) {
            return null;
        }
        String words = netWords(link) + " is " + Words.change(link.kindRise()) + " against the average of its kind ("
                + Words.microohms(link.average()) + ").";
        String change = "A reading within " + Words.percent(edge) + " of the average of its kind.";
        double far = limits.of(Limit.LINK_KIND_PLAN);
        boolean neverWell = link.kindRise() >= far && Verdicts.isBorneOut(link.kindRiseBefore(), far);
        Urgency asks = neverWell ? Urgency.PLAN : link.count() < 2 ? Urgency.RECHECK : Urgency.CLEAR;
        return Reason.asking(Rule.LINK_OVER_KIND, asks, words, change, limits);
    }

    static @Nullable Reason drop(LinkCase link, Limits limits) {
        double edge = limits.of(link.isCable() ? Limit.DROP_BETWEEN_TIERS : Limit.DROP_BETWEEN_JARS);
        if (!(link.dropMillivolts() > edge)) {
            return null;
        }
        String words = "Drops " + Words.millivolts(link.dropMillivolts()) + " at the design current of "
                + Words.number(link.designAmps()) + " A, more than " + Words.millivolts(edge) + ".";
        boolean likeItsKind = link.kindRise() < limits.of(Limit.LINK_KIND_NOTE);
        return Reason.asking(
                Rule.LINK_DROP,
                likeItsKind ? Urgency.CLEAR : Urgency.PLAN,
                words + (likeItsKind ? " So does its kind: a matter of design." : ""),
                "A reading below " + Words.microohms(edge * 1000 / link.designAmps()) + ".",
                limits);
    }

    static @Nullable Reason notRead(LinkCase link, Limits limits) {
        if (!link.skipped()) {
            return null;
        }
        int straps = link.joint().link().straps();
        String words = link.strapsRead() > 0 && link.strapsRead() < straps
                ? "Only " + link.strapsRead() + " of " + straps + " straps were read: they cannot be combined."
                : "Was not read when the others were.";
        return Reason.note(Rule.LINK_NOT_READ, words, "A reading of every strap.");
    }

    private static String netWords(LinkCase link) {
        LinkReading last = Objects.requireNonNull(link.last());
        boolean net = link.isCable() && !Double.isNaN(last.conductor());
        return (net ? "Its joints without the cable, " : "Its resistance, ") + Words.microohms(last.net()) + " ("
                + last.takenOn() + "),";
    }
}
