package org.ohmstead.intake.history;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.ohmstead.kernel.Refused;

/**
 * Cuts a text of many survey sheets at their heading lines, byte by byte, in the memory of one sheet. Each piece keeps the
 * bytes it has in the file.
 */
final class SheetPieces {

    private static final String HEADING = "ohmstead survey sheet";
    private static final int LONGEST_START = 64;

    private final String name;
    private final PieceSink sink;
    private final ByteArrayOutputStream piece = new ByteArrayOutputStream();
    private int line = 1;
    private int pieceFrom = 1;
    private boolean inSheet;

    private SheetPieces(String name, PieceSink sink) {
        this.name = name;
        this.sink = sink;
    }

    /** A file that is no text of several sheets is one piece. */
    static void cut(Path file, String name, PieceSink sink) throws IOException {
        if (headings(file) > 1) {
            new SheetPieces(name, sink).cut(file);
        } else {
            sink.accept(new Piece(name, HistoryPieces.held(file)));
        }
    }

    private static int headings(Path file) throws IOException {
        int[] count = {0};
        new SheetPieces("", piece -> {}).walk(file, start -> count[0] += isHeading(start) ? 1 : 0, octet -> {});
        return count[0];
    }

    private void cut(Path file) throws IOException {
        walk(
                file,
                start -> {
                    if (isHeading(start)) {
                        finish();
                        inSheet = true;
                        pieceFrom = line;
                    }
                },
                octet -> {
                    if (piece.size() >= HistoryPieces.LARGEST) {
                        throw new Refused("The sheet that begins in line " + pieceFrom + " is larger than "
                                + (HistoryPieces.LARGEST >> 20) + " MB. Begin each survey with its own heading line.");
                    }
                    piece.write(octet);
                });
        finish();
    }

    private interface LineStart {
        void of(byte[] start);
    }

    private interface Octet {
        void take(int octet);
    }

    /** Tells of the start of each line, then of its bytes; lines end with LF, CR LF or CR. */
    private void walk(Path file, LineStart starts, Octet octets) throws IOException {
        try (InputStream bytes = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            boolean atStart = true;
            int before = 0;
            for (int octet = bytes.read(); octet >= 0; octet = bytes.read()) {
                if (atStart && !(before == '\r' && octet == '\n')) {
                    starts.of(start(octet, bytes));
                    atStart = false;
                }
                octets.take(octet);
                if (octet == '\n' || octet == '\r') {
                    line += before == '\r' && octet == '\n' ? 0 : 1;
                    atStart = true;
                }
                before = octet;
            }
        }
    }

    private static byte[] start(int first, InputStream bytes) throws IOException {
        bytes.mark(LONGEST_START);
        byte[] rest = bytes.readNBytes(LONGEST_START);
        bytes.reset();
        byte[] start = new byte[rest.length + 1];
        start[0] = (byte) first;
        System.arraycopy(rest, 0, start, 1, rest.length);
        return start;
    }

    private static boolean isHeading(byte[] start) {
        String text = new String(start, StandardCharsets.UTF_8).replaceFirst("^[\\uFEFF\"\\s]+", "");
        return text.toLowerCase(Locale.ROOT).startsWith(HEADING);
    }

    /** Blank lines before the first heading belong to it. */
    private void finish() {
        if (inSheet) {
            sink.accept(new Piece(name + " from line " + pieceFrom, piece.toByteArray()));
            piece.reset();
        }
    }
}
