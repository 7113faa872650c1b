package org.ohmstead.intake.repair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.intake.file.Row;
import org.ohmstead.intake.repair.RemarkedRows.Why;

/** "Your file plus a column saying why". */
class RemarkedRowsTest {

    private static final List<Row> ROWS = List.of(
            Row.of(1, List.of("ohmstead survey sheet", "1")),
            Row.of(2, List.of("position", "jar mΩ", "jar V")),
            Row.of(4, List.of("1", "0.412", "2.25")),
            Row.of(5, List.of("2", "-0.5", "2.25")),
            Row.of(6, List.of("3", "=1+1", "a,b")));

    @Test
    void everyRowKeepsItsCellsAndGetsOneMoreInTheSameColumn() {
        String written = RemarkedRows.write(ROWS, List.of(new Why(5, "line 5, column 2", "too low")), ',');

        assertThat(written.lines())
                .containsExactly(
                        "ohmstead survey sheet,1,,why",
                        "position,jar mΩ,jar V,",
                        "1,0.412,2.25,",
                        "2,-0.5,2.25,too low",
                        "3,'=1+1,\"a,b\",");
    }

    @Test
    void aRemarkOnJarsStandsBesideEachOfThem() {
        String written = RemarkedRows.write(ROWS, List.of(new Why(4, "jars 1, 3–9", "odd")), ';');

        assertThat(written.lines()).contains("1;0.412;2.25;odd", "2;-0.5;2.25;", "3;'=1+1;a,b;odd");
    }

    @Test
    void whatConcernsTheWholeStandsBesideTheFirstRow() {
        String written = RemarkedRows.write(
                ROWS, List.of(new Why(0, "site and string", "unknown"), new Why(0, "the file", "=old")), ',');

        assertThat(written.lines().findFirst()).hasValue("ohmstead survey sheet,1,,why: unknown | =old");
    }

    @Test
    void aFileWithoutRowsComesBackAsItsRemarksAndNoneOfThemIsAFormula() {
        assertThat(RemarkedRows.write(List.of(), List.of(new Why(0, "the file", "=cmd")), ','))
                .isEqualTo("'=cmd\r\n");
    }

    @Test
    void theSignThatPartsTheMostIsTheDelimiter() {
        Delimiter delimiter = new Delimiter();
        delimiter.dialect("a;b;c\n0,5;1,2;3\n");
        assertThat(delimiter.sign()).isEqualTo(';');
        delimiter.dialect("plain");
        assertThat(delimiter.sign()).isEqualTo(',');
    }
}
