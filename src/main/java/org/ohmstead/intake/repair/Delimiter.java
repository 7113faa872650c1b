package org.ohmstead.intake.repair;

import java.util.Comparator;
import java.util.List;
import org.ohmstead.intake.file.Dialect;

/** Finds out what parts a text's cells: the sign that parts the most. Files that are no text come back with commas. */
public final class Delimiter {

    private static final List<Character> SIGNS = List.of(',', ';', '\t', '|');

    private char sign = ',';

    public Dialect dialect(String start) {
        sign = SIGNS.stream()
                .max(Comparator.comparingLong((Character known) ->
                                start.chars().filter(letter -> letter == known).count())
                        .thenComparing(known -> -SIGNS.indexOf(known)))
                .orElse(',');
        return Dialect.delimitedBy(sign);
    }

    public char sign() {
        return sign;
    }
}
