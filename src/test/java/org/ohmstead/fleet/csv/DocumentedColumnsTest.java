package org.ohmstead.fleet.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** docs/register.md lists the columns that the files really have. */
class DocumentedColumnsTest {

    static final List<Sheet<?>> SHEETS = Sheets.ALL;

    private static final Pattern ROW = Pattern.compile("(?m)^\\| (\\*\\*)?([a-z0-9_]+)(\\*\\*)? \\| (yes)? ?\\|");

    @ParameterizedTest
    @FieldSource("SHEETS")
    void everyColumnIsDocumentedInOrderWithKeyAndNeed(Sheet<?> sheet) throws IOException {
        List<MatchResult> rows = ROW.matcher(section(sheet.name()))
                .results()
                .filter(row -> !row.group(2).equals("column"))
                .toList();
        assertThat(rows).extracting(row -> row.group(2)).containsExactlyElementsOf(sheet.headers());
        List<String> keys = sheet.key().stream().map(Column::header).toList();
        assertThat(rows)
                .filteredOn(row -> row.group(1) != null)
                .extracting(row -> row.group(2))
                .containsExactlyElementsOf(keys);
        List<String> required = sheet.columns().stream()
                .filter(Column::required)
                .map(Column::header)
                .toList();
        assertThat(rows)
                .filteredOn(row -> row.group(4) != null)
                .extracting(row -> row.group(2))
                .containsExactlyElementsOf(required);
    }

    private static String section(String name) throws IOException {
        String text = Files.readString(Path.of("docs/register.md"));
        int start = text.indexOf("## " + name + ".csv");
        int end = text.indexOf("\n## ", start + 1);
        return text.substring(start, end < 0 ? text.length() : end);
    }
}
