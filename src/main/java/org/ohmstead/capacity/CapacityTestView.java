package org.ohmstead.capacity;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.capacity.model.Capacity;
import org.ohmstead.capacity.model.Discharge;
import org.ohmstead.capacity.model.JarFinding;
import org.ohmstead.capacity.model.JarResult;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;

/**
 * A recorded capacity test.
 *
 * @param jars one per position when jars were read, else empty
 * @param voidedBecause null while the test stands
 */
public record CapacityTestView(
        long id,
        long stringId,
        LocalDate testedOn,
        String testedBy,
        TestKind kind,
        Method method,
        Ratings ratings,
        Discharge drawn,
        @Nullable Double linearCoefficient,
        @Nullable Double stringEndVolts,
        Capacity capacity,
        double jarLineVolts,
        List<JarResult> jars,
        String note,
        Instant recordedAt,
        String recordedBy,
        @Nullable String voidedBecause,
        @Nullable Raw raw) {

    /**
     * The record it was read from.
     *
     * @param sha256 in hexadecimal
     */
    public record Raw(String name, String sha256, int bytes) {}

    public boolean stands() {
        return voidedBecause == null;
    }

    /** Whether it stands and tells the string's capacity. */
    public boolean counts() {
        return stands() && kind.showsCapacity();
    }

    /** Weak and reversed ones. */
    public List<JarResult> failed() {
        return jars.stream().filter(jar -> jar.finding().isFailed()).toList();
    }

    public long jarsRead() {
        return jars.stream().filter(jar -> jar.finding() != JarFinding.UNREAD).count();
    }
}
