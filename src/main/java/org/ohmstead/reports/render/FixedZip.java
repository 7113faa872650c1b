package org.ohmstead.reports.render;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Writes a workbook's parts again with the report's day for every time, so that the same contents give the same bytes. */
final class FixedZip {

    private FixedZip() {}

    static void copy(Path zip, LocalDate day, OutputStream out) throws IOException {
        try (ZipFile parts = new ZipFile(zip.toFile())) {
            ZipOutputStream fixed = new ZipOutputStream(out);
            for (ZipEntry part : Collections.list(parts.entries())) {
                fixed.putNextEntry(entry(part.getName(), day));
                fixed.write(dated(part.getName(), parts.getInputStream(part).readAllBytes(), day));
                fixed.closeEntry();
            }
            fixed.finish();
        }
    }

    private static ZipEntry entry(String name, LocalDate day) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(day.atStartOfDay());
        return entry;
    }

    private static byte[] dated(String name, byte[] part, LocalDate day) {
        return name.equals("docProps/core.xml")
                ? new String(part, StandardCharsets.UTF_8)
                        .replaceAll("\\d{4}-\\d\\d-\\d\\dT[0-9:.]+Z", day + "T00:00:00Z")
                        .getBytes(StandardCharsets.UTF_8)
                : part;
    }
}
