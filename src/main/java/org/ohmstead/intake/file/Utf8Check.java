package org.ohmstead.intake.file;

/** Tells, byte by byte, whether a stream is well-formed UTF-8 (Unicode 15, table 3-7). */
final class Utf8Check {

    private static final int CONTINUATION_LOW = 0x80;
    private static final int CONTINUATION_HIGH = 0xBF;

    private boolean sound = true;
    private int awaited;
    private int low = CONTINUATION_LOW;
    private int high = CONTINUATION_HIGH;

    void accept(int octet) {
        if (awaited == 0) {
            lead(octet);
        } else if (octet >= low && octet <= high) {
            awaited--;
            low = CONTINUATION_LOW;
            high = CONTINUATION_HIGH;
        } else {
            sound = false;
            awaited = 0;
        }
    }

    boolean isWellFormed() {
        return sound && awaited == 0;
    }

    private void lead(int octet) {
        if (octet < 0x80) {
            return;
        }
        awaited = octet >= 0xF0 ? 3 : octet >= 0xE0 ? 2 : 1;
        sound &= octet >= 0xC2 && octet <= 0xF4;
        low = octet == 0xE0 ? 0xA0 : octet == 0xF0 ? 0x90 : CONTINUATION_LOW;
        high = octet == 0xED ? 0x9F : octet == 0xF4 ? 0x8F : CONTINUATION_HIGH;
    }
}
