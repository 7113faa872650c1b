package org.ohmstead.intake.history.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ohmstead.intake.history.Histories;
import org.ohmstead.intake.history.HistoryReceipt;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.springframework.web.multipart.MaxUploadSizeExceededException;

/** Streams what is sent to a file on disk, no further than the limit, hands it in and removes it. */
@Component
class HistoryBody {

    private static final int CHUNK = 1 << 16;

    private final Histories histories;
    private final long limit;

    HistoryBody(Histories histories, @Value("${ohmstead.history.max-file-size}") DataSize limit) {
        this.histories = histories;
        this.limit = limit.toBytes();
    }

    /** @throws MaxUploadSizeExceededException when there is more than the limit, also when only announced */
    HistoryReceipt receive(String name, InputStream body, long announcedBytes) throws IOException {
        if (announcedBytes > limit) {
            throw new MaxUploadSizeExceededException(limit);
        }
        Path file = Files.createTempFile("history", ".part");
        try {
            keep(body, file);
            return histories.receive(name, file);
        } finally {
            Files.delete(file);
        }
    }

    private void keep(InputStream body, Path file) throws IOException {
        byte[] chunk = new byte[CHUNK];
        long kept = 0;
        try (OutputStream out = Files.newOutputStream(file)) {
            for (int read = body.read(chunk); read >= 0; read = body.read(chunk)) {
                kept += read;
                if (kept > limit) {
                    throw new MaxUploadSizeExceededException(limit);
                }
                out.write(chunk, 0, read);
            }
        }
    }
}
