package org.ohmstead.intake;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.FileRows;
import org.ohmstead.intake.file.Findings;
import org.ohmstead.intake.file.Row;
import org.ohmstead.intake.repair.Delimiter;
import org.ohmstead.intake.repair.RemarkedRows;
import org.ohmstead.intake.repair.RemarkedRows.Why;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** "Your file plus a column saying why": the rows as they were handed in, each with what was remarked on it. */
@Service
public class RemarkedFiles {

    private final Intake intake;
    private final Access access;

    RemarkedFiles(Intake intake, Access access) {
        this.intake = intake;
        this.access = access;
    }

    /** As delimited text, parted as the file itself is. A file without rows that can be read comes back as its remarks. */
    @Transactional(readOnly = true)
    public String of(UUID id) {
        access.require(SEE_ESTATE);
        List<Why> remarks = intake.upload(id).remarks().stream()
                .map(remark -> new Why(remark.line(), remark.place(), words(remark)))
                .toList();
        List<Row> rows = new ArrayList<>();
        Delimiter delimiter = new Delimiter();
        read(intake.raw(id), delimiter, rows);
        return RemarkedRows.write(rows, remarks, delimiter.sign());
    }

    private static void read(byte[] bytes, Delimiter delimiter, List<Row> rows) {
        try {
            FileRows.read(ByteSource.of(bytes), delimiter::dialect, null, rows::add, new Findings());
        } catch (IOException impossible) {
            throw new UncheckedIOException("Bytes in memory cannot fail to be read", impossible);
        }
    }

    private static String words(RemarkView remark) {
        String seen = remark.seen().isEmpty() ? "" : " Seen: " + remark.seen() + ".";
        String expected = remark.expected().isEmpty() ? "" : " Expected: " + remark.expected() + ".";
        return remark.severity().word() + ", " + remark.code() + ", " + remark.place() + ": " + remark.message() + seen
                + expected;
    }
}
