package org.ohmstead.intake.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.springframework.web.multipart.MaxUploadSizeExceededException;

/** Reads a raw request body, no further than the same limit that multipart files have. */
@Component
class UploadBody {

    private final int limit;

    UploadBody(@Value("${spring.servlet.multipart.max-file-size}") DataSize limit) {
        this.limit = Math.toIntExact(limit.toBytes());
    }

    /** @throws MaxUploadSizeExceededException when there is more than the limit, also when only announced */
    byte[] read(HttpServletRequest request) throws IOException {
        if (request.getContentLengthLong() > limit) {
            throw new MaxUploadSizeExceededException(limit);
        }
        byte[] bytes = request.getInputStream().readNBytes(limit + 1);
        if (bytes.length > limit) {
            throw new MaxUploadSizeExceededException(limit);
        }
        return bytes;
    }
}
