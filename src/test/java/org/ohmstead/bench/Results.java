package org.ohmstead.bench;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What was measured, as rows of a Markdown table. */
final class Results {

    private final Bench.Scale scale;
    private final List<String> rows = new ArrayList<>();
    private final double loadAtStart =
            ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();

    Results(Bench.Scale scale) {
        this.scale = scale;
    }

    /** The product's time over the floor's. */
    void times(String what, String floor, double seconds, double floorSeconds, String target) {
        add(what, floor, seconds, floorSeconds, String.format(Locale.ROOT, "%.2f ×", seconds / floorSeconds), target);
    }

    /** The product's speed as a share of the floor's. */
    void share(String what, String floor, double seconds, double floorSeconds, String target) {
        add(
                what,
                floor,
                seconds,
                floorSeconds,
                String.format(Locale.ROOT, "%.0f %%", 100 * floorSeconds / seconds),
                target);
    }

    /** The product's time by itself. */
    void alone(String what, double seconds, String target) {
        rows.add(String.format(Locale.ROOT, "| %s | %s | | | | %s |", what, shown(seconds), target));
    }

    private void add(String what, String floor, double seconds, double floorSeconds, String ratio, String target) {
        rows.add(String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %s | %s |",
                what,
                shown(seconds),
                floor,
                shown(floorSeconds),
                ratio,
                target));
    }

    void print(PrintStream out) {
        out.printf(
                Locale.ROOT,
                "%n%,d strings × %d surveys × %d jars; %d processors, heap %d MB; load average at the start %.2f%n%n",
                scale.strings(),
                scale.surveys(),
                scale.jars(),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20,
                loadAtStart);
        out.println("| what | took | floor | took | ratio | target |");
        out.println("|---|---|---|---|---|---|");
        rows.forEach(out::println);
    }

    private static String shown(double seconds) {
        return seconds >= 1
                ? String.format(Locale.ROOT, "%.2f s", seconds)
                : String.format(Locale.ROOT, "%.2f ms", 1_000 * seconds);
    }
}
