package org.ohmstead.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command tells what it cannot read, where, and goes on with the rest. */
class ReplayCommandTest {
    private static final String SHEET = """
            ohmstead survey sheet,1
            site,OAK
            string,A
            taken at,2021-05-04T09:00
            ohmic kind,impedance

            position,jar mΩ,jar V,link µΩ
            0,,,12
            1,0.41,2.25,24
            2,0.42,2.24,25
            3,0.40,2.25,12
            """;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream messages = new ByteArrayOutputStream();

    @BeforeEach
    void aStringOfThreeJars() throws IOException {
        write("sites.csv", "code,name,area,time_zone\nOAK,Oak,N,Europe/Oslo\n");
        write(
                "jar-types.csv",
                "code,technology,cells_per_jar,nominal_v,rated_ah,rated_h\nV400,VENTED_LEAD_ACID,1,2,400,8\n");
        write("strings.csv", "site,name,jar_type,tiers,in_service_on\nOAK,A,V400,2+1,2020-01-01\n");
        write("2021/may.csv", SHEET);
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private int run() {
        return ReplayCommand.run(List.of(folder.toString(), out().toString()), stream());
    }

    private PrintStream stream() {
        return new PrintStream(messages, true, StandardCharsets.UTF_8);
    }

    private Path out() {
        return folder.resolve("out.csv");
    }

    private String told() {
        return messages.toString(StandardCharsets.UTF_8);
    }

    private List<String> rows() throws IOException {
        List<String> lines = Files.readAllLines(out());
        return lines.subList(1, lines.size());
    }

    @Test
    void oneSheetGivesARowPerJarAndLink() throws IOException {
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(rows()).hasSize(3 + 4);
        assertThat(rows().get(0)).startsWith("OAK,A,1,jar,2021-05-04,0.");
        assertThat(rows().get(6)).startsWith("OAK,A,3,link,2021-05-04,0.");
        assertThat(told()).contains("left out: 0 files, sheets or rows, and 0 single values");
    }

    @Test
    void aFileThatIsNoSheetIsToldAndPassedOver() throws IOException {
        write("2021/shopping.csv", "milk,2\nbread,1\n");
        write("2021/workbook.csv", "PK\u0003\u0004\u0000\u0000");
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(rows()).hasSize(7);
        assertThat(told()).contains("shopping.csv").contains("line 1").contains("left out: 2 files");
    }

    @Test
    void aValueThatCannotBeReadIsToldWithItsLineAndLeftOut() throws IOException {
        write("2021/june.csv", SHEET.replace("05-04", "06-04").replace("0.42", "0.4x2"));
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(rows()).hasSize(14);
        assertThat(told()).contains("june.csv: line 10, column 2").contains("and 1 single values");
        assertThat(rows()).anyMatch(row -> row.startsWith("OAK,A,2,jar,2021-06-04") && row.contains("NOT_IN_LAST"));
    }

    @Test
    void severalSheetsMayStandInOneFileAndAnywhereBelow() throws IOException {
        write("deep/er/two.csv", SHEET.replace("05-04", "07-04") + SHEET.replace("05-04", "08-04"));
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(rows()).hasSize(21);
        assertThat(rows().get(20)).contains("2021-08-04");
    }

    @Test
    void theSameSurveyTwiceCountsOnce() throws IOException {
        write("2021/copy.csv", SHEET);
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(rows()).hasSize(7);
        assertThat(told()).contains("A survey of this string at this time stands in");
    }

    @Test
    void aStringThatTheRegisterDoesNotKnowIsTold() throws IOException {
        write("2021/other.csv", SHEET.replace("string,A", "string,B"));
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(told()).contains("other.csv: line 1").contains("\"B\"");
    }

    @Test
    void aFlawedRegisterRowIsToldWithItsPlace() throws IOException {
        write(
                "occupancies.csv",
                "site,string,position,jar_type,from\nOAK,A,1,V400,long ago\nOAK,Z,1,V400,2020-01-01\n");
        write("remakes.csv", "site,string,link,remade_on\nOAK,A,2,2021-01-05\nOAK,A,2,2021-01-05\n");
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(told())
                .contains("occupancies.csv: line 2, column 5")
                .contains("occupancies.csv: line 3")
                .contains("remakes.csv: line 3");
    }

    @Test
    void whatAJarTypeNeedNotSayIsLeftOutWhenItCannotBeRead() throws IOException {
        write(
                "jar-types.csv",
                "code,technology,cells_per_jar,nominal_v,rated_ah,rated_h,design_life_years,ohmic_per_k\n"
                        + "V400,VENTED_LEAD_ACID,1,2,400,8,fifteen,-0.005083228057825355\n");
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(rows()).hasSize(7);
        assertThat(told()).contains("value left out: jar-types.csv: line 2, column 7");
    }

    @Test
    void recordedWorkCounts() throws IOException {
        String later = SHEET.replace("2021-05-04", "2023-05-04");
        write("2023/later.csv", later);
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        List<String> without = rows();
        write(
                "occupancies.csv",
                "site,string,position,jar_type,from,until\nOAK,A,1,V400,2020-01-01,2022-01-01\nOAK,A,1,V400,2022-01-01,\n");
        assertThat(run()).isEqualTo(ReplayCommand.DONE);
        assertThat(rows().subList(0, 7)).isEqualTo(without.subList(0, 7));
        assertThat(rows().get(7)).isNotEqualTo(without.get(7));
    }

    @Test
    void withoutStringsOrSurveysNothingIsWritten() throws IOException {
        Files.delete(folder.resolve("2021/may.csv"));
        assertThat(run()).isEqualTo(ReplayCommand.NOTHING);
        Files.delete(folder.resolve("strings.csv"));
        assertThat(run()).isEqualTo(ReplayCommand.NOTHING);
        assertThat(told()).contains("the folder needs strings.csv and jar-types.csv");
        assertThat(out()).doesNotExist();
    }

    @Test
    void aMiscallSaysHowToCall() {
        assertThat(ReplayCommand.run(List.of("one"), stream())).isEqualTo(ReplayCommand.MISCALLED);
        assertThat(ReplayCommand.run(List.of(folder + "/nowhere", "out.csv"), stream()))
                .isEqualTo(ReplayCommand.MISCALLED);
        assertThat(told()).contains("usage: replay FOLDER OUT.csv").contains("There is no folder");
    }
}
