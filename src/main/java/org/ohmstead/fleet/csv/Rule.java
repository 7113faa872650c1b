package org.ohmstead.fleet.csv;

import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Something that must hold between the cells of one row.
 *
 * @param header the column at which the breach is shown
 */
record Rule<E>(String header, BiPredicate<E, Map<String, String>> holds, String message, String remedy) {

    static <E> Rule<E> that(String header, Predicate<E> holds, String message, String remedy) {
        return new Rule<>(header, (entry, cells) -> holds.test(entry), message, remedy);
    }

    /** Either both cells are filled or neither; a breach is shown at the second. */
    static <E> Rule<E> together(String one, String other, String why) {
        return new Rule<>(
                other,
                (entry, cells) -> isFilled(cells, one) == isFilled(cells, other),
                "Only one of " + one + " and " + other + " is given.",
                why + ": give both or neither.");
    }

    /** A cell that only makes sense beside another. */
    static <E> Rule<E> onlyWith(String other, String header) {
        return new Rule<>(
                header,
                (entry, cells) -> isFilled(cells, other) || !isFilled(cells, header),
                header + " is given without " + other + ".",
                "Give " + other + " as well, or leave both empty.");
    }

    static boolean isFilled(Map<String, String> cells, String header) {
        return Stream.ofNullable(cells.get(header)).anyMatch(text -> !text.isBlank());
    }
}
