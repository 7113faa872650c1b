package org.ohmstead.intake.check;

import java.time.LocalDate;
import java.util.Optional;

/** Whether the survey can be laid beside the baseline at all. */
final class Comparability {

    private Comparability() {}

    static Optional<Remark> kindChanged(SurveyUnderCheck survey) {
        EarlierSurvey baseline = survey.expected().baseline();
        return baseline == null || baseline.kind() == survey.kind()
                ? Optional.empty()
                : Optional.of(Remark.of(
                        RemarkCode.OHMIC_KIND_CHANGED,
                        survey.fact("ohmic kind"),
                        survey.kind().words(),
                        baseline.kind().words() + " at the baseline"));
    }

    static Optional<Remark> frequencyChanged(SurveyUnderCheck survey) {
        EarlierSurvey baseline = survey.expected().baseline();
        double before = baseline == null ? Double.NaN : baseline.ohmicHertz();
        double now = survey.facts().ohmicHertz();
        return Math.abs(now - before) > before * 0.01
                ? Optional.of(Remark.of(
                        RemarkCode.OHMIC_FREQUENCY_CHANGED,
                        survey.fact("ohmic frequency"),
                        Figures.of(now, "Hz"),
                        Figures.of(before, "Hz") + " at the baseline"))
                : Optional.empty();
    }

    static Optional<Remark> offFloat(SurveyUnderCheck survey) {
        return survey.facts().onFloat()
                ? Optional.empty()
                : Optional.of(Remark.of(RemarkCode.OFF_FLOAT, survey.fact("on float"), "no", "yes"));
    }

    static Optional<Remark> calibrationPast(SurveyUnderCheck survey) {
        LocalDate due = survey.facts().calibrationDue();
        LocalDate takenOn = survey.takenAt().date(survey.expected().zone());
        return due != null && takenOn.isAfter(due)
                ? Optional.of(Remark.of(
                        RemarkCode.CALIBRATION_PAST,
                        survey.fact("instrument calibration due"),
                        "surveyed on " + takenOn,
                        "calibration held until " + due))
                : Optional.empty();
    }
}
