package org.ohmstead.intake.map;

import java.util.List;

/**
 * How some table becomes surveys. What is left out of its JSON form has the usual value. The form is described in {@code docs/survey-files.md}.
 *
 * @param delimiter between the cells of a text file: one character
 * @param quote round a cell: one character, or empty for none
 * @param encoding "UTF-8", "windows-1252" and so on; empty to find it out
 * @param decimalMark "." or ","
 * @param thousandsMark empty when there is none
 * @param timePattern as java.time has it: "dd.MM.yyyy HH:mm"; empty for year first
 * @param columns by the titles of the tables
 * @param quantities names of blocks of readings, or words of a column of quantities
 * @param valuesInOrder whether a block's readings follow one another, or each stands after its position
 * @param linkBefore whether the link in a jar's row is the one before it
 * @param passOver first words of rows that are no readings: "average"
 */
public record ColumnMap(
        String delimiter,
        String quote,
        String encoding,
        String decimalMark,
        String thousandsMark,
        String timePattern,
        List<FactRule> facts,
        List<ColumnRule> columns,
        List<ColumnRule> quantities,
        Boolean valuesInOrder,
        Boolean linkBefore,
        List<String> passOver) {

    public ColumnMap {
        delimiter = delimiter == null || delimiter.isEmpty() ? "," : delimiter;
        quote = quote == null ? "\"" : quote;
        encoding = encoding == null ? "" : encoding;
        decimalMark = decimalMark == null || decimalMark.isEmpty() ? "." : decimalMark;
        thousandsMark = thousandsMark == null ? "" : thousandsMark;
        timePattern = timePattern == null ? "" : timePattern;
        facts = facts == null ? List.of() : List.copyOf(facts);
        columns = columns == null ? List.of() : List.copyOf(columns);
        quantities = quantities == null ? List.of() : List.copyOf(quantities);
        valuesInOrder = Boolean.TRUE.equals(valuesInOrder);
        linkBefore = Boolean.TRUE.equals(linkBefore);
        passOver = passOver == null ? List.of() : List.copyOf(passOver);
    }
}
