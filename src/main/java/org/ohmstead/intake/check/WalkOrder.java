package org.ohmstead.intake.check;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.forensics.Walk;
import org.ohmstead.intake.forensics.WalkVerdict;

/** Whether the readings stand at the jars they came from: weighed against the string's own pattern in its last surveys. */
final class WalkOrder {

    private WalkOrder() {}

    static Optional<Remark> reversed(SurveyUnderCheck survey) {
        return wrong(survey, Walk.Kind.FROM_THE_OTHER_END, RemarkCode.ORDER_REVERSED, "jar 1 at the positive end");
    }

    static Optional<Remark> skipped(SurveyUnderCheck survey) {
        return wrong(survey, Walk.Kind.SKIPPED, RemarkCode.ORDER_SKIPPED, "every jar once");
    }

    static Optional<Remark> readTwice(SurveyUnderCheck survey) {
        return wrong(survey, Walk.Kind.READ_TWICE, RemarkCode.ORDER_READ_TWICE, "every jar once");
    }

    static Optional<Remark> swapped(SurveyUnderCheck survey) {
        return wrong(survey, Walk.Kind.SWAPPED, RemarkCode.ORDER_SWAPPED, "each reading at its own jar");
    }

    static Optional<Remark> otherString(SurveyUnderCheck survey) {
        WalkVerdict verdict = survey.walk();
        if (verdict == null || verdict.otherString() == null) {
            return Optional.empty();
        }
        return Optional.of(Remark.of(
                RemarkCode.ORDER_OTHER_STRING,
                wholeString(survey),
                "the pattern of " + verdict.otherString() + ", " + sureness(verdict),
                "this string's own pattern"));
    }

    /** Said for the record: silence about the order would otherwise be taken for a proof of it. */
    static Optional<Remark> unseen(SurveyUnderCheck survey) {
        WalkVerdict verdict = survey.walk();
        if (verdict == null || !verdict.isInOrder()) {
            return Optional.empty();
        }
        if (verdict.isBlind()) {
            return note(survey, "fewer than two surveys to compare with");
        }
        boolean sees = verdict.sight().reversal() && verdict.sight().shiftInTheMiddle();
        return sees ? Optional.empty() : note(survey, "jars too much alike to tell one from another");
    }

    static boolean isWrong(SurveyUnderCheck survey) {
        WalkVerdict verdict = survey.walk();
        return verdict != null && !verdict.isInOrder();
    }

    private static Optional<Remark> note(SurveyUnderCheck survey, String why) {
        return Optional.of(Remark.of(RemarkCode.ORDER_UNSEEN, wholeString(survey), why, ""));
    }

    private static Optional<Remark> wrong(SurveyUnderCheck survey, Walk.Kind kind, RemarkCode code, String expected) {
        WalkVerdict verdict = survey.walk();
        if (verdict == null || verdict.otherString() != null || verdict.walk().kind() != kind) {
            return Optional.empty();
        }
        return Optional.of(Remark.of(code, place(survey, verdict), seen(verdict), expected));
    }

    private static Place place(SurveyUnderCheck survey, WalkVerdict verdict) {
        Walk walk = verdict.walk();
        return switch (walk.kind()) {
            case IN_ORDER, FROM_THE_OTHER_END -> wholeString(survey);
            case SWAPPED -> survey.jars(new int[] {walk.at(), walk.with()}, ColumnKind.JAR_OHMIC);
            case SKIPPED, READ_TWICE ->
                survey.jars(
                        IntStream.rangeClosed(verdict.firstJar(), verdict.lastJar())
                                .toArray(),
                        ColumnKind.JAR_OHMIC);
        };
    }

    private static String seen(WalkVerdict verdict) {
        Walk walk = verdict.walk();
        String what = switch (walk.kind()) {
            case IN_ORDER -> "in order";
            case FROM_THE_OTHER_END -> "fits from the other end";
            case SKIPPED -> "most likely jar " + walk.at() + " left out";
            case READ_TWICE -> "most likely jar " + walk.at() + " read twice";
            case SWAPPED -> "jars " + walk.at() + " and " + walk.with() + " the other way round";
        };
        return what + ", " + sureness(verdict);
    }

    private static String sureness(WalkVerdict verdict) {
        double percent = 100 * verdict.probability();
        return percent > 99.9 ? "over 99.9 % sure" : String.format(Locale.ROOT, "%.1f %% sure", percent);
    }

    private static Place wholeString(SurveyUnderCheck survey) {
        return survey.place("the whole string", survey.laidOut().lines()[1], 0);
    }
}
