package org.ohmstead.intake.forensics;

import java.util.ArrayList;
import java.util.List;

/** A string's own pattern in every quantity its earlier surveys hold, to be recognised again. */
public final class Fingerprint {

    static final int SURVEYS_NEEDED = 2;

    private final int jars;
    private final List<Integer> channels;
    private final List<Pattern> patterns;

    private Fingerprint(int jars, List<Integer> channels, List<Pattern> patterns) {
        this.jars = jars;
        this.channels = channels;
        this.patterns = patterns;
    }

    /**
     * @param history earlier surveys, oldest first; each with the same quantities in the same order, NaN where nothing
     *     was read
     */
    public static Fingerprint of(int jars, List<List<Series>> history) {
        List<Integer> channels = new ArrayList<>();
        List<Pattern> patterns = new ArrayList<>();
        int quantities = history.isEmpty() ? 0 : history.get(0).size();
        for (int c = 0; c < quantities; c++) {
            List<Series> usable = usable(history, c);
            if (usable.size() >= SURVEYS_NEEDED) {
                channels.add(c);
                patterns.add(Pattern.learn(usable));
            }
        }
        return new Fingerprint(jars, channels, patterns);
    }

    private static List<Series> usable(List<List<Series>> history, int channel) {
        return history.stream()
                .map(survey -> survey.get(channel))
                .filter(Fingerprint::isMostlyRead)
                .toList();
    }

    private static boolean isMostlyRead(Series series) {
        int read = 0;
        for (double value : series.values()) {
            read += Double.isNaN(value) ? 0 : 1;
        }
        return read * 2 > series.values().length;
    }

    int jars() {
        return jars;
    }

    boolean isBlank() {
        return patterns.isEmpty();
    }

    List<Pattern> patterns() {
        return patterns;
    }

    /** Of a survey, the quantities this fingerprint knows, in its order. */
    List<Series> known(List<Series> survey) {
        return channels.stream().map(survey::get).toList();
    }
}
