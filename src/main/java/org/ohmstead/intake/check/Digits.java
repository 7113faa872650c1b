package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmstead.intake.file.ColumnKind;

/** The last digits of measured values fall as they will; those that somebody thought up, or rounded, do not. */
final class Digits {

    /** Only values that spread over more than ten steps of the last digit let every digit come up. */
    private static final int WIDE = 10;
    /** And over twenty they come up equally often. */
    private static final int WIDE_ENOUGH_FOR_EVENNESS = 20;
    /** Earlier surveys that are this unlikely themselves show a habit of the instrument, not of a person. */
    private static final double HABIT = 0.01;

    private Digits() {}

    static Optional<Remark> regular(SurveyUnderCheck survey) {
        LastDigits read = LastDigits.of(survey.laidOut().ohmic());
        return oneDigit(survey, read.asFineAs(finest(survey))).or(() -> uneven(survey, read));
    }

    /** The same instrument shows as many digits as ever: rounding ends all values in a nought that earlier ones had not. */
    private static LastDigits finest(SurveyUnderCheck survey) {
        List<EarlierSurvey> same = survey.sameKind().stream()
                .filter(earlier -> earlier.instrument().equals(survey.facts().instrument()))
                .toList();
        return LastDigits.of(
                same.isEmpty() ? new double[0] : same.get(same.size() - 1).ohmic());
    }

    private static Optional<Remark> oneDigit(SurveyUnderCheck survey, LastDigits read) {
        ForensicThresholds limits = survey.limits().forensics();
        int[] counts = read.counts();
        int most = Arrays.stream(counts).max().orElse(0);
        boolean made =
                read.size() >= limits.digitJars() && read.width() >= WIDE && most > limits.digitShare() * read.size();
        return made
                ? remark(
                        survey,
                        most + " of " + read.size() + " values end in " + digitSeen(counts, most),
                        "about " + Math.round(read.size() / (double) counts.length))
                : Optional.empty();
    }

    /**
     * People who make figures up have favourite digits and shun the one they have just written: Mosimann and others, Terminal
     * digits and the examination of questioned data, 2002 (from memory).
     */
    private static Optional<Remark> uneven(SurveyUnderCheck survey, LastDigits read) {
        ForensicThresholds limits = survey.limits().forensics();
        boolean made = read.size() >= limits.unevenJars()
                && read.width() >= WIDE_ENOUGH_FOR_EVENNESS
                && read.chance() < limits.digitChance()
                && survey.sameKind().stream()
                        .map(earlier -> LastDigits.of(earlier.ohmic()))
                        .noneMatch(earlier -> earlier.size() >= limits.unevenJars() && earlier.chance() < HABIT);
        return made
                ? remark(
                        survey,
                        "last digits 0 to 9 come up "
                                + Arrays.stream(read.counts())
                                        .mapToObj(String::valueOf)
                                        .collect(Collectors.joining(", "))
                                + " times, " + read.repeats() + " times the digit before",
                        "each about " + Math.round(read.size() / 10.0) + " times, and as often the digit before")
                : Optional.empty();
    }

    private static Optional<Remark> remark(SurveyUnderCheck survey, String seen, String expected) {
        Place place =
                survey.place("all jars", survey.sheet().line(), survey.sheet().columnOf(ColumnKind.JAR_OHMIC));
        return Optional.of(Remark.of(RemarkCode.DIGITS_REGULAR, place, seen, expected));
    }

    private static int digitSeen(int[] counts, int most) {
        int digit = 0;
        while (counts[digit] != most) {
            digit++;
        }
        return digit;
    }
}
