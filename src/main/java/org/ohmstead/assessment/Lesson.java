package org.ohmstead.assessment;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.estate.CapacityLimit;
import org.ohmstead.assessment.model.estate.ReferenceLevel;
import org.ohmstead.kernel.Sha256;

/**
 * What the estate teaches of a jar type today, before anybody applies it.
 *
 * @param reference null with too few settled jars
 * @param usesReference whether it would be used: not where the maker gave one
 * @param limit null with too few capacity tests
 * @param tested jars whose capacity test is on record
 * @param failed of these
 * @param inForce what was applied last; null when nothing is
 */
public record Lesson(
        String jarTypeCode,
        @Nullable ReferenceLevel reference,
        boolean usesReference,
        @Nullable CapacityLimit limit,
        int tested,
        int failed,
        @Nullable Learned inForce) {

    /** What somebody applied. */
    public record Learned(
            int version,
            Instant appliedAt,
            String appliedBy,
            @Nullable ReferenceLevel reference,
            @Nullable CapacityLimit limit) {}

    /** Names the values, so that nobody applies others than they were shown. */
    @JsonProperty
    public String key() {
        byte[] said = (jarTypeCode + reference + limit).getBytes(StandardCharsets.UTF_8);
        return HexFormat.of().formatHex(Sha256.of(said), 0, 8);
    }

    /** Whether applying it would change anything. */
    public boolean teaches() {
        return (reference != null && usesReference) || limit != null;
    }
}
