package org.ohmstead.fleet;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.csv.SheetWriter;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** The register as files: out, and in again after editing. A file is brought in whole or not at all. */
@Service
public class RegisterFiles {

    private final Shelves shelves;
    private final Access access;
    private final TransactionTemplate transaction;

    RegisterFiles(Shelves shelves, Access access, PlatformTransactionManager transactions) {
        this.shelves = shelves;
        this.access = access;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** The names of the files, in the order in which they must be brought in. */
    public List<String> kinds() {
        return shelves.all().stream().map(shelf -> shelf.sheet().name()).toList();
    }

    /**
     * Writes what lies within reach as CSV; the stream is left open.
     *
     * @param kind such as {@code sites}
     * @throws NotFound when there is no such file
     */
    @Transactional(readOnly = true)
    public void write(String kind, OutputStream out) throws IOException {
        access.require(Permission.SEE_ESTATE);
        write(shelves.named(kind), out);
    }

    /** Writes a ZIP of all files; the stream is left open. */
    @Transactional(readOnly = true)
    public void writeAll(OutputStream out) throws IOException {
        access.require(Permission.SEE_ESTATE);
        ZipOutputStream zip = new ZipOutputStream(out);
        for (Shelf<?> shelf : shelves.all()) {
            zip.putNextEntry(new ZipEntry(shelf.sheet().name() + ".csv"));
            write(shelf, zip);
            zip.closeEntry();
        }
        zip.finish();
    }

    /** What the file would do; the same code as bringing it in, and everything undone at the end. */
    public ImportReport preview(String kind, InputStream in) throws IOException {
        access.require(Permission.EDIT_REGISTER);
        return run(FileImport.of(shelves.named(kind), in), false);
    }

    /** @throws Refused with every flaw when there is one; nothing was written then */
    public ImportReport bringIn(String kind, InputStream in) throws IOException {
        access.require(Permission.EDIT_REGISTER);
        ImportReport report = run(FileImport.of(shelves.named(kind), in), true);
        if (!report.flaws().isEmpty()) {
            throw new Refused(
                    "The file " + kind + ".csv was not brought in: " + report.summary() + ".", report.flaws());
        }
        return report;
    }

    private ImportReport run(FileImport<?> file, boolean write) {
        return transaction.execute(status -> {
            ImportReport report = file.run(write);
            if (!report.written()) {
                status.setRollbackOnly();
            }
            return report;
        });
    }

    private static <E> void write(Shelf<E> shelf, OutputStream out) throws IOException {
        try (SheetWriter<E> writer = new SheetWriter<>(shelf.sheet(), out)) {
            shelf.entries().forEach(writer::write);
        }
    }
}
