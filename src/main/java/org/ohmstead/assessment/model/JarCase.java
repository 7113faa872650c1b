package org.ohmstead.assessment.model;

import org.jspecify.annotations.Nullable;

/**
 * All that the rules look at for one jar.
 *
 * @param celsius its temperature in the last survey, NaN if not read
 * @param medianCelsius of all jars in that survey
 * @param onFloat whether the last ohmic reading was taken on float
 */
record JarCase(
        JarSpell spell,
        JarTypeFacts type,
        Presence presence,
        OhmicEvidence ohmic,
        VoltsEvidence volts,
        double celsius,
        double medianCelsius,
        boolean onFloat) {

    /** Whether the last survey that read most jars, or one after it, read this one. */
    enum Presence {
        READ,
        /** Other jars were read, this one was not, nor since. */
        SKIPPED,
        /** It came after the last survey, or no survey read jars at all. */
        NOT_YET,
        /** No jar sits there. */
        VACANT
    }

    static JarCase of(Panel panel, int position, Limits limits) {
        OhmicEvidence ohmic = OhmicEvidence.of(panel, position, limits);
        JarSpell spell = panel.seats().at(position);
        SurveyReadings survey = panel.last() < 0 ? null : panel.survey(panel.last());
        return new JarCase(
                spell,
                panel.history().plan().jarType(),
                presence(panel, spell, ohmic.last()),
                ohmic,
                VoltsEvidence.of(panel, position),
                survey == null ? Double.NaN : Numbers.at(survey.celsius(), position - 1),
                survey == null ? Double.NaN : panel.medianCelsius(panel.last()),
                ohmic.last() == null || panel.survey(ohmic.last().survey()).onFloat());
    }

    private static Presence presence(Panel panel, JarSpell spell, @Nullable Reading last) {
        int round = panel.lastRoundOfJars();
        if (last != null && last.survey() >= round) {
            return Presence.READ;
        }
        if (round < 0) {
            return Presence.NOT_YET;
        }
        SurveyReadings survey = panel.survey(round);
        if (!spell.during().isOpenEnded() && !spell.during().contains(survey.takenOn())) {
            return Presence.VACANT;
        }
        if (survey.takenOn().isBefore(spell.during().from())) {
            return Presence.NOT_YET;
        }
        return Presence.SKIPPED;
    }
}
