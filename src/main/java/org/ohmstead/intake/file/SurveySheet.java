package org.ohmstead.intake.file;

import java.util.List;
import java.util.Map;

/**
 * One sheet as it stands in the file.
 *
 * @param line of its heading
 * @param factLines the line each key of the upper part stands in, by the key without its unit
 * @param columns number of the first column of each kind that the sheet has
 * @param strapColumns how many link columns it has
 * @param rows in the order of the file
 */
public record SurveySheet(
        int line,
        SheetFacts facts,
        Map<String, Integer> factLines,
        Map<ColumnKind, Integer> columns,
        int strapColumns,
        List<ReadingRow> rows,
        List<Finding> findings) {

    public SurveySheet {
        factLines = Map.copyOf(factLines);
        columns = Map.copyOf(columns);
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    /** Whether it is complete enough to be matched to a string and checked. */
    public boolean isReadable() {
        return findings.stream().noneMatch(finding -> finding.weight() == Weight.UNREADABLE);
    }

    /** The line in which a fact is given, counted from 1; 0 when the sheet does not give it. */
    public int lineOfFact(String key) {
        return factLines.getOrDefault(key, 0);
    }

    /** The column of a kind of reading, counted from 1; 0 when the sheet has none. */
    public int columnOf(ColumnKind kind) {
        return columns.getOrDefault(kind, 0);
    }
}
