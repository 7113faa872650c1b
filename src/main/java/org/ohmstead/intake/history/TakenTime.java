package org.ohmstead.intake.history;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.TakenAt;

/** When a file's first survey was taken, as the file itself writes it. */
final class TakenTime {

    private TakenTime() {}

    /** Nothing for a file that is no survey sheet. */
    static Optional<LocalDateTime> of(byte[] bytes) {
        List<TakenAt> first = new ArrayList<>(1);
        try {
            SheetReader.read(ByteSource.of(bytes), sheet -> {
                if (first.isEmpty() && sheet.facts().takenAt() != null) {
                    first.add(Objects.requireNonNull(sheet.facts().takenAt()));
                }
            });
        } catch (IOException impossible) {
            throw new UncheckedIOException("Bytes in memory cannot fail to be read", impossible);
        }
        return first.stream().map(TakenAt::written).findFirst();
    }
}
