package org.ohmstead.reports;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.ohmstead.kernel.Sha256;

/** A ZIP whose last entry, {@code SHA256SUMS}, holds the sums of the others. The same contents give the same bytes. */
final class SummedZip {

    private final ZipOutputStream zip;
    private final LocalDate day;
    private final Map<String, String> sums = new LinkedHashMap<>();

    /** @param day of every entry, instead of the moment of writing */
    SummedZip(OutputStream out, LocalDate day) {
        this.zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        this.day = day;
    }

    void add(String name, byte[] content) throws IOException {
        sums.put(name, HexFormat.of().formatHex(Sha256.of(content)));
        put(name, content);
    }

    void finish() throws IOException {
        StringBuilder manifest = new StringBuilder();
        sums.forEach(
                (name, sum) -> manifest.append(sum).append("  ").append(name).append('\n'));
        put("SHA256SUMS", manifest.toString().getBytes(StandardCharsets.UTF_8));
        zip.finish();
    }

    private void put(String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(day.atStartOfDay());
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
