package org.ohmstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import org.ohmstead.fleet.StringView;

/**
 * One walk along a string whose jars differ by 4 % and read within 0.5 %, with volts and links of their own: row by row, so
 * that a slip can be let in. Seeded; invented.
 */
public final class PatternedWalk {

    private final StringView string;
    private final String takenAt;
    private final List<String> jars = new ArrayList<>();
    private final List<String> links = new ArrayList<>();
    private String titles = "position,jar mΩ,jar V,link µΩ";

    private PatternedWalk(StringView string, String takenAt) {
        this.string = string;
        this.takenAt = takenAt;
        SplittableRandom truth = new SplittableRandom(string.id());
        SplittableRandom noise = new SplittableRandom(string.id() * 31 + takenAt.hashCode());
        for (int k = 0; k <= string.positions(); k++) {
            double ohmic = 0.412 * (1 + 0.04 * truth.nextGaussian()) * (1 + 0.005 * noise.nextGaussian());
            double volts = 2.25 + 0.01 * truth.nextGaussian() + 0.001 * noise.nextGaussian();
            double link = 24 * (1 + 0.08 * truth.nextGaussian()) * (1 + 0.02 * noise.nextGaussian());
            jars.add(k == 0 ? "," : text("%.4f,%.3f", ohmic, volts));
            links.add(text("%.1f", link));
        }
    }

    public static PatternedWalk of(StringView string, String takenAt) {
        return new PatternedWalk(string, takenAt);
    }

    /** The jar and the link that were really read when that row was written. */
    public PatternedWalk walked(IntUnaryOperator jarOfRow, IntUnaryOperator linkOfRow) {
        List<String> jarsThen = new ArrayList<>(jars);
        List<String> linksThen = new ArrayList<>(links);
        for (int row = 0; row <= string.positions(); row++) {
            if (row > 0) {
                jars.set(row, jarsThen.get(jarOfRow.applyAsInt(row)));
            }
            links.set(row, linksThen.get(linkOfRow.applyAsInt(row)));
        }
        return this;
    }

    public PatternedWalk fromTheOtherEnd() {
        int last = string.positions();
        return walked(row -> last + 1 - row, row -> last - row);
    }

    /** That jar is left out, and the last one read again to fill the count. */
    public PatternedWalk skipping(int jar) {
        int last = string.positions();
        return walked(
                row -> row < jar ? row : Math.min(row + 1, last), row -> row < jar ? row : Math.min(row + 1, last));
    }

    public PatternedWalk readingTwice(int jar) {
        return walked(row -> row <= jar ? row : row - 1, row -> row <= jar ? row : row - 1);
    }

    public PatternedWalk swapping(int one, int other) {
        return walked(row -> row == one ? other : row == other ? one : row, row -> row);
    }

    public PatternedWalk titled(String columns) {
        titles = columns;
        return this;
    }

    public String sheet() {
        return sheetNaming(string.siteCode(), string.name());
    }

    public String sheetNaming(String site, String name) {
        StringBuilder sheet = new StringBuilder("ohmstead survey sheet,1\nsite," + site + "\nstring," + name
                + "\ntaken at," + takenAt + "\nohmic kind,impedance\nohmic frequency Hz,60\nambient °C,21\n" + titles
                + "\n");
        for (int row = 0; row < jars.size(); row++) {
            sheet.append(row)
                    .append(',')
                    .append(jars.get(row))
                    .append(',')
                    .append(links.get(row))
                    .append('\n');
        }
        return sheet.toString();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
