package org.ohmstead.intake.history;

import java.io.IOException;
import java.io.InputStream;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ohmstead.intake.file.Archive;
import org.ohmstead.intake.file.ArchiveEntry;
import org.ohmstead.intake.file.ArchiveLimits;
import org.ohmstead.intake.file.BadArchive;
import org.ohmstead.kernel.Refused;

/** Cuts what was sent into its files: the entries of an archive, the sheets of a long text, or the one file that it is. */
final class HistoryPieces {

    static final long LARGEST = ArchiveLimits.HISTORY.entryBytes();
    private static final String WORKBOOK = "xl/workbook.xml";
    /** What the archivers of some desktops add of their own accord. */
    private static final String NOT_OF_THE_USER = "(?s)(?:.*/)?(?:__MACOSX/.*|\\.DS_Store|Thumbs\\.db|desktop\\.ini)";

    private HistoryPieces() {}

    /** @throws Refused when it is no history, with the reason */
    static void cut(Path file, String name, PieceSink sink) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            if (Archive.isArchive(bytes.readNBytes(4))) {
                archive(file, name, sink);
                return;
            }
        }
        SheetPieces.cut(file, name, sink);
    }

    private static void archive(Path file, String name, PieceSink sink) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            MappedByteBuffer bytes = channel.map(FileChannel.MapMode.READ_ONLY, 0, channel.size());
            Archive archive = Archive.open(bytes, ArchiveLimits.HISTORY);
            if (archive.entry(WORKBOOK).isPresent()) {
                sink.accept(new Piece(name, held(file)));
                return;
            }
            entries(archive, sink);
        } catch (BadArchive refused) {
            throw new Refused(refused.flaw().message(), List.of(refused.flaw()));
        }
    }

    private static void entries(Archive archive, PieceSink sink) throws IOException {
        int count = 0;
        for (ArchiveEntry entry : archive.entries()) {
            if (!entry.isFolder() && !entry.name().matches(NOT_OF_THE_USER)) {
                try (InputStream bytes = archive.open(entry)) {
                    sink.accept(new Piece(entry.name(), bytes.readAllBytes()));
                    count++;
                }
            }
        }
        if (count == 0) {
            throw new Refused("The archive holds no file. Pack the survey files themselves into it.");
        }
    }

    /** The whole file, which is one survey file like any other. */
    static byte[] held(Path file) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new Refused(
                    "The file is larger than " + (LARGEST >> 20) + " MB and is not made of survey sheets that could"
                            + " be taken one by one. Cut it into smaller files and send them as a ZIP archive.");
        }
        return Files.readAllBytes(file);
    }
}
