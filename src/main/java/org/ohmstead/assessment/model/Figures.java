package org.ohmstead.assessment.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.statistics.Quantiles;
import org.ohmstead.statistics.Spread;

/** Works out the figures of a string as a whole. */
final class Figures {

    private Figures() {}

    static StringFigures of(StringCase string, Limits limits) {
        double jars = totalJarMilliohms(string);
        double links = totalLinkMicroohms(string);
        double amps = string.panel().history().plan().designLoadAmps();
        return new StringFigures(
                Numbers.orNull(jars),
                Numbers.orNull(links),
                Numbers.orNull(amps * (jars / 1000 + Numbers.either(links, 0) * 1e-6)),
                weakestPosition(string.jars()),
                weakestLink(string.links()),
                Numbers.orNull(scatter(string)),
                Numbers.orNull(shareNearLimit(string, limits)),
                Numbers.orNull(string.medianRise()),
                Numbers.orNull(string.floatPerCell()),
                Numbers.orNull(string.expectedFloatPerCell()),
                Numbers.orNull(string.ripplePer100Ah()),
                Numbers.orNull(string.usualCelsius()),
                string.ageYears(),
                Numbers.orNull(string.expectedYears()),
                Numbers.orNull(string.lifeUsed()));
    }

    /** NaN unless half of the jars or more have a value in milliohms; the others count as the median. */
    private static double totalJarMilliohms(StringCase string) {
        double[] values = string.jars().stream()
                .map(jar -> jar.ohmic().last())
                .mapToDouble(last -> last == null || last.kind() == OhmicKind.CONDUCTANCE ? Double.NaN : last.value())
                .toArray();
        int missing = values.length - Numbers.count(values);
        return 2 * missing > values.length ? Double.NaN : sum(values) + missing * Quantiles.median(values);
    }

    private static double totalLinkMicroohms(StringCase string) {
        double[] values = string.links().stream()
                .mapToDouble(
                        link -> link.last() == null ? Double.NaN : link.last().combined())
                .toArray();
        return Numbers.count(values) == 0 ? Double.NaN : sum(values);
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += Double.isNaN(value) ? 0 : value;
        }
        return sum;
    }

    private static @Nullable Integer weakestPosition(List<JarCase> jars) {
        Optional<JarCase> weakest = jars.stream()
                .filter(jar -> !Double.isNaN(weakness(jar)))
                .max(Comparator.comparingDouble(Figures::weakness));
        return weakest.map(jar -> jar.spell().position()).orElse(null);
    }

    private static double weakness(JarCase jar) {
        return Numbers.either(jar.ohmic().rise(), jar.ohmic().lotRise());
    }

    private static @Nullable Integer weakestLink(List<LinkCase> links) {
        Optional<LinkCase> weakest = links.stream()
                .filter(link -> !Double.isNaN(weakness(link)))
                .max(Comparator.comparingDouble(Figures::weakness));
        return weakest.map(link -> link.joint().link().ordinal()).orElse(null);
    }

    private static double weakness(LinkCase link) {
        return Numbers.either(link.rise(), link.kindRise());
    }

    private static double scatter(StringCase string) {
        int round = string.panel().lastRoundOfJars();
        double[] values = string.jars().stream()
                .map(jar -> jar.ohmic().last())
                .mapToDouble(last -> last == null || last.survey() != round ? Double.NaN : last.burden())
                .toArray();
        return Numbers.count(values) < 2 ? Double.NaN : Spread.mad(values) / Quantiles.median(values);
    }

    private static double shareNearLimit(StringCase string, Limits limits) {
        long known = string.jars().stream()
                .filter(jar -> !Double.isNaN(jar.ohmic().rise()))
                .count();
        long near = string.jars().stream()
                .filter(jar -> jar.ohmic().rise() >= limits.of(Limit.JAR_RISE_NOTE))
                .count();
        return known == 0 ? Double.NaN : (double) near / known;
    }
}
