package org.ohmstead.intake.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads any of the forms as rows of cells. Whatever the bytes, the answer is a value, never an exception. */
public final class FileRows {

    /** Workbooks and JSON are held in memory. */
    private static final int MOST_BYTES_HELD = 64 << 20;

    private FileRows() {}

    /**
     * Reads a file.
     *
     * @param dialect how text parts its cells, chosen from its first characters
     * @param encoding of text; null to find it out
     * @return the name of the encoding; empty when the file cannot be read at all
     * @throws IOException when the source itself fails
     */
    public static String read(
            ByteSource source,
            Function<String, Dialect> dialect,
            @Nullable Charset encoding,
            RowSink sink,
            Findings findings)
            throws IOException {
        FileForm form = FileForm.of(source);
        return switch (form) {
            case TEXT -> text(source, dialect, encoding, sink, findings);
            case WORKBOOK -> workbook(held(source), sink, findings);
            case JSON -> json(source, sink, findings);
        };
    }

    private static String text(
            ByteSource source,
            Function<String, Dialect> dialect,
            @Nullable Charset encoding,
            RowSink sink,
            Findings findings)
            throws IOException {
        TextForm probed = TextProbe.probe(source);
        TextForm form = probed.markBytes() > 0 || encoding == null ? probed : new TextForm(encoding, 0, null);
        Optional.ofNullable(form.finding()).ifPresent(findings::add);
        Charset charset = form.charset();
        if (charset == null) {
            return "";
        }
        new DelimitedRows(charset, sink, findings).read(source, form.markBytes(), dialect);
        return charset.name();
    }

    private static String workbook(byte[] bytes, RowSink sink, Findings findings) throws IOException {
        try {
            new WorkbookRows(Archive.open(ByteBuffer.wrap(bytes), ArchiveLimits.WORKBOOK), sink, findings).read();
            return "workbook";
        } catch (BadArchive refused) {
            findings.add(Finding.unreadable(refused.flaw()));
            return "";
        }
    }

    private static String json(ByteSource source, RowSink sink, Findings findings) throws IOException {
        TextForm form = TextProbe.probe(source);
        Charset charset = form.charset();
        Optional.ofNullable(form.finding()).ifPresent(findings::add);
        if (charset == null) {
            return "";
        }
        byte[] bytes = held(source);
        int mark = form.markBytes();
        new JsonRows(sink, findings).read(new String(bytes, mark, bytes.length - mark, charset));
        return charset.name();
    }

    private static byte[] held(ByteSource source) throws IOException {
        try (InputStream bytes = source.open()) {
            return bytes.readNBytes(MOST_BYTES_HELD);
        }
    }
}
