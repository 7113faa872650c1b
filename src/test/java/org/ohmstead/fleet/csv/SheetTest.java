package org.ohmstead.fleet.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Partial;

class SheetTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+2",
                "+49 5",
                "-dash",
                "@home",
                "'=quoted",
                "''=twice",
                "'plain",
                "＝wide",
                "a, \"b\"; c",
                "mΩ ↔ °C",
                "two\nlines"
            })
    void everyTextComesBackAsItWas(String text) throws IOException {
        SiteEntry site = site(text, -33.9, -70.6);
        assertThat(read(Sheets.SITES, written(Sheets.SITES, site)).rows())
                .extracting(Line::entry)
                .containsExactly(site);
    }

    /** Formula triggers of spreadsheet programs: OWASP, "CSV Injection". */
    @ParameterizedTest
    @ValueSource(strings = {"=1+2", "+49 5", "-dash", "@home", "＝wide"})
    void noTextCellBeginsLikeAFormula(String text) throws IOException {
        assertThat(written(Sheets.SITES, site(text, 1.0, 2.0)))
                .contains(",'" + text)
                .doesNotContain("," + text);
    }

    @Test
    void negativeNumbersStayNumbers() throws IOException {
        assertThat(written(Sheets.SITES, site("load", -33.9, -70.65))).contains(",-33.9,-70.65,");
    }

    @Test
    void linesEndAsRfc4180Asks() throws IOException {
        assertThat(written(Sheets.AREAS, new AreaEntry("NORTH", "North, \"upper\"", null)))
                .isEqualTo("code,name,retired_on\r\nNORTH,\"North, \"\"upper\"\"\",\r\n");
    }

    @Test
    void everyLinkComesBackAsItWas() throws IOException {
        Conductor cable = new Conductor("2/0 AWG", Conductor.Flexibility.CLASS_2, 1.25, 2);
        LinkEntry link = new LinkEntry("FEL-03", "A", 30, LinkKind.TIER_CABLE, 1, cable);
        assertThat(read(Sheets.LINKS, written(Sheets.LINKS, link)).rows())
                .extracting(Line::entry)
                .containsExactly(link);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "code,name\nNORTH,North",
                "\uFEFFcode,name\r\nNORTH,North\r\n",
                "code;name\nNORTH;North\n\n",
                "name\tcode\nNorth\tNORTH",
                "name,retired_on,code\n North ,, NORTH "
            })
    void formsOfTheSameFileReadTheSame(String file) throws IOException {
        assertThat(read(Sheets.AREAS, file).rows())
                .extracting(Line::entry)
                .containsExactly(new AreaEntry("NORTH", "North", null));
    }

    @Test
    void aSemicolonFileMayWriteDecimalCommas() throws IOException {
        String file = "site;string;link;remade_on;as_found_uohm\nFEL-03;A;7;2024-05-06;61,5";
        assertThat(read(Sheets.REMAKES, file).rows().get(0).entry().asFoundMicroohms())
                .isEqualTo(61.5);
    }

    @Test
    void everyFlawOfARowNamesLineColumnValueAndRemedy() throws IOException {
        String file = "code,name,area,time_zone,latitude_deg,longitude_deg\n"
                + "FEL-01,Fell,NORTH,Europe/Oslo,60.1,10\n"
                + "fel 2,,NORTH,Europe/Nowhere,91,10\n";
        Partial<Line<SiteEntry>> read = read(Sheets.SITES, file);
        assertThat(read.rows()).hasSize(1);
        assertThat(read.flaws())
                .extracting(Flaw::place)
                .containsExactly("line 3, column 1", "line 3, column 2", "line 3, column 4", "line 3, column 5");
        assertThat(read.flaws().get(2).value()).isEqualTo("Europe/Nowhere");
        assertThat(read.flaws().get(3).remedy()).isEqualTo("Write a number from -90 to 90.");
    }

    @Test
    void anUnknownChoiceIsToldTheValidOnes() throws IOException {
        String file = "site,string,link,kind\nFEL-03,A,1,WIRE";
        assertThat(read(Sheets.LINKS, file).flaws().get(0).remedy())
                .isEqualTo("Write one of STRAP, TIER_CABLE, ROW_CABLE, TERMINAL.");
    }

    @Test
    void aCableWithoutLengthIsNotSilentlyDropped() throws IOException {
        String file = "site,string,link,kind,conductor_mm2_or_awg,conductor_m\nFEL-03,A,1,TIER_CABLE,95,";
        assertThat(read(Sheets.LINKS, file).flaws())
                .singleElement()
                .satisfies(flaw -> assertThat(flaw.column()).isEqualTo(6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2024-02-30", "2024-2-3", "03/02/2024", "+12024-01-01", "24-01-01", "1066-01-01"})
    void onlyRealDatesAreDates(String date) throws IOException {
        assertThat(read(Sheets.AREAS, "code,name,retired_on\nNORTH,North," + date)
                        .flaws())
                .singleElement()
                .satisfies(flaw -> assertThat(flaw.value()).isEqualTo(date));
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "1,5", "0x1p3", "1e999", "0", "-3", "12 mV"})
    void onlyPositiveFiniteNumbersAreResistances(String number) throws IOException {
        String file = "site,string,link,remade_on,as_found_uohm\nFEL-03,A,7,2024-05-06,\"" + number + "\"";
        assertThat(read(Sheets.REMAKES, file).flaws()).hasSize(1);
    }

    @Test
    void aHeaderThatDoesNotExistIsToldTheOnesThatDo() throws IOException {
        assertThat(read(Sheets.AREAS, "code,nmae\nNORTH,North").flaws())
                .singleElement()
                .satisfies(flaw -> {
                    assertThat(flaw.value()).isEqualTo("nmae");
                    assertThat(flaw.remedy()).isEqualTo("Columns are: code, name, retired_on.");
                });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n",
                "name\nNorth",
                "code,code\nA,B",
                "code,name\nNORTH",
                "code,name\nA,B,C",
                "code,name\nA,\"B"
            })
    void aBrokenFileSaysHow(String file) throws IOException {
        Partial<Line<AreaEntry>> read = read(Sheets.AREAS, file);
        assertThat(read.rows()).isEmpty();
        assertThat(read.flaws()).isNotEmpty();
    }

    @Test
    void bytesThatAreNoUtf8SaySo() throws IOException {
        byte[] latin = "code,name\nNORTH,Nørd".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(SheetReader.read(Sheets.AREAS, new ByteArrayInputStream(latin))
                        .flaws())
                .singleElement()
                .satisfies(flaw -> assertThat(flaw.message()).contains("not UTF-8"));
    }

    @Test
    void tiersReadWithPlusSigns() throws IOException {
        String file = "site,name,jar_type,tiers,in_service_on\nFEL-03,A,OP-300,30 + 30+12,2019-01-01\n"
                + "FEL-03,B,OP-300,30+0,2019-01-01\nFEL-03,C,OP-300,400+100,2019-01-01";
        Partial<Line<StringEntry>> read = read(Sheets.STRINGS, file);
        assertThat(read.rows().get(0).entry().tiers()).containsExactly(30, 30, 12);
        assertThat(read.flaws()).extracting(Flaw::line).containsExactly(3, 4);
    }

    private static SiteEntry site(String text, double latitude, double longitude) {
        return new SiteEntry(
                "FEL-03",
                "Fell",
                "NORTH",
                ZoneId.of("Asia/Kathmandu"),
                latitude,
                longitude,
                text.contains("\n") ? "" : text,
                text,
                "",
                LocalDate.of(2024, 2, 29));
    }

    private static <E> String written(Sheet<E> sheet, E entry) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (SheetWriter<E> writer = new SheetWriter<>(sheet, out)) {
            List.of(entry).forEach(writer::write);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private static <E> Partial<Line<E>> read(Sheet<E> sheet, String file) throws IOException {
        return SheetReader.read(sheet, new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
    }
}
