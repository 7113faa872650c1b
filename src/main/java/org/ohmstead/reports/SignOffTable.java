package org.ohmstead.reports;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Signatures, and the signed lines themselves. */
@Component
class SignOffTable {

    private final JdbcClient jdbc;

    SignOffTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(Quarter quarter, @Nullable Long areaId, byte[] sha256, byte[] lines, String note, String by, Instant at) {
        jdbc.sql("""
                        insert into compliance_sign_off
                          (quarter, area_id, sha256, lines_gzip, line_count, note, signed_at, signed_by)
                        values (:quarter, :area, :sha256, :lines, :count, :note, :at, :by)
                        """)
                .param("quarter", quarter.toString())
                .param("area", areaId, java.sql.Types.BIGINT)
                .param("sha256", sha256)
                .param("lines", packed(lines))
                .param("count", lines(lines).size())
                .param("note", note)
                .param("at", Timestamp.from(at))
                .param("by", by)
                .update();
    }

    /** The latest of that scope, beside the lines as they stand now. */
    Optional<SignOff> latest(Quarter quarter, @Nullable Long areaId, byte[] now) {
        return jdbc.sql("""
                        select signed_by, signed_at, sha256, note, lines_gzip from compliance_sign_off
                        where quarter = :quarter and area_id is not distinct from :area
                        order by id desc limit 1
                        """)
                .param("quarter", quarter.toString())
                .param("area", areaId, java.sql.Types.BIGINT)
                .query((row, n) -> {
                    List<String> signed = lines(unpacked(row.getBytes("lines_gzip")));
                    List<String> standing = lines(now);
                    return new SignOff(
                            row.getString("signed_by"),
                            row.getTimestamp("signed_at").toInstant(),
                            HexFormat.of().formatHex(row.getBytes("sha256")),
                            row.getString("note"),
                            without(signed, standing),
                            without(standing, signed));
                })
                .optional();
    }

    private static List<String> without(List<String> lines, List<String> others) {
        Set<String> there = new HashSet<>(others);
        return lines.stream().filter(line -> !there.contains(line)).toList();
    }

    /** Without the heading. No cell holds a line break. */
    private static List<String> lines(byte[] csv) {
        return new String(csv, StandardCharsets.UTF_8).lines().skip(1).toList();
    }

    private static byte[] packed(byte[] lines) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static byte[] unpacked(byte[] packed) {
        try (GZIPInputStream gzip = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            return gzip.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
