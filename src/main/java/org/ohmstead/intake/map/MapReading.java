package org.ohmstead.intake.map;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.Dialect;
import org.ohmstead.intake.file.FileRows;
import org.ohmstead.intake.file.Findings;

/** Reads a file as a column map says. */
public final class MapReading {

    private MapReading() {}

    /**
     * Reads a file.
     *
     * @throws IOException when the source itself fails
     */
    public static MappedFile read(ByteSource source, ColumnMap map) throws IOException {
        Findings findings = new Findings();
        TableWalk walk = new TableWalk(map, findings);
        FileRows.read(source, start -> dialect(map), charset(map), walk::accept, findings);
        Set<String> wanted = new HashSet<>();
        map.columns().forEach(rule -> wanted.add(FactsFound.bare(rule.title())));
        if (map.columns().isEmpty()) {
            map.quantities().forEach(rule -> wanted.add(FactsFound.bare(rule.title())));
        }
        boolean all = walk.titlesSeen().containsAll(wanted);
        return new MappedFile(walk.finish(), all ? wanted.size() : 0, findings.all());
    }

    private static Dialect dialect(ColumnMap map) {
        return new Dialect(
                map.delimiter().charAt(0),
                map.quote().isEmpty() ? '\u0000' : map.quote().charAt(0));
    }

    private static @Nullable Charset charset(ColumnMap map) {
        return map.encoding().isEmpty() ? null : Charset.forName(map.encoding());
    }
}
