package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.statistics.Quantiles;

/**
 * The closing reading: probes held together after the last jar, so that the instrument stores that jar's values. It stands
 * in place of the last link, or in a row of its own after the last jar. Common practice, no source.
 */
final class Closing {

    private Closing() {}

    /** The row that holds the closing reading, among the string's own rows 0..N or the rows after them. */
    static @Nullable ReadingRow find(@Nullable ReadingRow[] placed, List<ReadingRow> foreign, Thresholds limits) {
        double limit = Math.max(limits.closingMicroohms(), limits.closingShare() * medianLink(placed));
        int after = placed.length;
        Optional<ReadingRow> extra = foreign.stream()
                .filter(row -> row.position() == after && isEmptyOfJar(row, placed, limits) && isClosed(row, limit))
                .findFirst();
        ReadingRow last = placed[placed.length - 1];
        return extra.orElse(last != null && isClosed(last, limit) ? last : null);
    }

    static Optional<Remark> recognised(SurveyUnderCheck survey) {
        ReadingRow closing = survey.laidOut().closing();
        if (closing == null) {
            return Optional.empty();
        }
        Place place = survey.place("after jar " + survey.laidOut().positions(), closing.line(), survey.linkColumn());
        return Optional.of(
                Remark.of(RemarkCode.CLOSING_READING, place, Figures.of(firstLink(closing), "µΩ"), "near 0 µΩ"));
    }

    private static boolean isClosed(ReadingRow row, double limitMicroohms) {
        double[] read = Arrays.stream(row.linkMicroohms())
                .filter(value -> !Double.isNaN(value))
                .toArray();
        return read.length > 0 && Arrays.stream(read).allMatch(value -> Math.abs(value) <= limitMicroohms);
    }

    /** An instrument that stores the closing reading as a jar stores it near zero, or leaves the jar's cells empty. */
    private static boolean isEmptyOfJar(ReadingRow row, @Nullable ReadingRow[] placed, Thresholds limits) {
        double median =
                Quantiles.median(present(placed).mapToDouble(ReadingRow::ohmic).toArray());
        return Double.isNaN(row.ohmic()) || Math.abs(row.ohmic()) <= limits.closingShare() * median;
    }

    private static double medianLink(@Nullable ReadingRow[] placed) {
        double median = Quantiles.median(present(placed)
                .limit(placed.length - 1L)
                .flatMapToDouble(row -> DoubleStream.of(row.linkMicroohms()))
                .toArray());
        return Double.isNaN(median) ? 0 : median;
    }

    private static Stream<ReadingRow> present(@Nullable ReadingRow[] placed) {
        return Arrays.stream(placed).filter(Objects::nonNull).map(Objects::requireNonNull);
    }

    private static double firstLink(ReadingRow row) {
        return Arrays.stream(row.linkMicroohms())
                .filter(value -> !Double.isNaN(value))
                .findFirst()
                .orElse(Double.NaN);
    }
}
