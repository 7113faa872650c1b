package org.ohmstead.intake.file;

import org.jspecify.annotations.Nullable;

/**
 * A number as nearly every cell holds one: up to nine digits and up to six decimals behind a point, nothing else. Its value
 * is exact as long as both the digits and the power of ten are, which needs no decimal arithmetic.
 *
 * @param digits all of them, as a whole number
 * @param decimals how many stand behind the point
 */
record PlainNumber(long digits, int decimals, boolean hasPoint) {

    private static final int MOST_BEFORE_POINT = 9;
    private static final int MOST_DECIMALS = 6;
    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12};

    /** Null for whatever is written in another way, number or not. */
    static @Nullable PlainNumber of(String text) {
        long digits = 0;
        int point = -1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9' && i <= MOST_BEFORE_POINT + MOST_DECIMALS) {
                digits = digits * 10 + (c - '0');
            } else if (c == '.' && point < 0 && i > 0) {
                point = i;
            } else {
                return null;
            }
        }
        int before = point < 0 ? text.length() : point;
        int decimals = point < 0 ? 0 : text.length() - point - 1;
        return before == 0 || before > MOST_BEFORE_POINT || decimals > MOST_DECIMALS
                ? null
                : new PlainNumber(digits, decimals, point >= 0);
    }

    /** One division or multiplication of two exact numbers: the double nearest to the decimal. */
    double times(int powerOfTen) {
        int power = powerOfTen - decimals;
        return power < 0 ? digits / POWERS[-power] : digits * POWERS[power];
    }
}
