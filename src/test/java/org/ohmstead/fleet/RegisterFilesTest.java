package org.ohmstead.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.ImportReport.Kind;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;

@ServiceTest
class RegisterFilesTest {

    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jarsAndLinks;

    @Autowired
    private RegisterFiles files;

    private String tag = "";
    private StringView string;

    @BeforeEach
    void aStringWithItsJarsAndARemake() {
        signIn(Role.ADMINISTRATOR);
        tag = "RF" + ++count;
        register.createArea(Entries.area(tag));
        register.createSite(Entries.site(tag + "-S", tag));
        register.createJarType(Entries.jarType(tag + "-J"));
        string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 2, 2));
        for (int position = 1; position <= 4; position++) {
            jarsAndLinks.placeJar(Entries.jar(string, position, tag + "-" + position, Entries.COMMISSIONED));
        }
        jarsAndLinks.recordRemake(Entries.remake(string, 2, LocalDate.of(2021, 6, 1)));
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    @ParameterizedTest
    @ValueSource(strings = {"areas", "sites", "jar-types", "strings", "links", "occupancies", "remakes"})
    void anExportBroughtInUnchangedChangesNothing(String kind) throws IOException {
        ImportReport report = bringIn(kind, exported(kind));
        assertThat(report.changes()).isEmpty();
        assertThat(report.unchanged()).isPositive();
        assertThat(report.summary()).isEqualTo("nothing changes");
    }

    @Test
    void theZipHoldsAllSeven() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        files.writeAll(out);
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertThat(names)
                .containsExactly(
                        "areas.csv",
                        "sites.csv",
                        "jar-types.csv",
                        "strings.csv",
                        "links.csv",
                        "occupancies.csv",
                        "remakes.csv");
    }

    @Test
    void aPreviewTellsOldAndNewAndWritesNothing() throws IOException {
        String file = exported("sites").replace("Substation " + tag + "-S,", "New name " + tag + ",");
        ImportReport report = preview("sites", file);
        assertThat(report.written()).isFalse();
        assertThat(report.changes()).singleElement().satisfies(change -> {
            assertThat(change.kind()).isEqualTo(Kind.CHANGED);
            assertThat(change.key()).isEqualTo(tag + "-S");
            assertThat(change.cells()).containsEntry("name", List.of("Substation " + tag + "-S", "New name " + tag));
        });
        assertThat(register.site(tag + "-S").name()).isEqualTo("Substation " + tag + "-S");
        assertThat(bringIn("sites", file).changed()).isEqualTo(1);
        assertThat(register.site(tag + "-S").name()).isEqualTo("New name " + tag);
    }

    @Test
    void aColumnLeftOutKeepsWhatTheRegisterSays() throws IOException {
        bringIn("sites", "code,contacts\n" + tag + "-S,the gate house");
        assertThat(register.site(tag + "-S").entry().contacts()).isEqualTo("the gate house");
        assertThat(register.site(tag + "-S").entry().latitudeDegrees()).isEqualTo(60.5);
    }

    @Test
    void aRetirementIsCalledOne() throws IOException {
        String file = "site,name,retired_on\n" + tag + "-S,A,2025-12-31";
        assertThat(preview("strings", file).retired()).isEqualTo(1);
        bringIn("strings", file);
        assertThat(register.string(string.id()).retiredOn()).isEqualTo(LocalDate.of(2025, 12, 31));
    }

    @Test
    void oneBadRowKeepsTheWholeFileOut() {
        String file = "code,name,area,time_zone\n" + tag + "-T,Good," + tag + ",UTC\n" + tag + "-U,Bad,NOWHERE,UTC";
        assertThatThrownBy(() -> bringIn("sites", file)).isInstanceOfSatisfying(Refused.class, refusal -> {
            assertThat(refusal.flaws()).hasSize(1);
            assertThat(refusal.flaws().get(0).place()).isEqualTo("line 3, column 3");
            assertThat(refusal.flaws().get(0).value()).isEqualTo("NOWHERE");
        });
        assertThatThrownBy(() -> register.site(tag + "-T")).isInstanceOf(NotFound.class);
    }

    @Test
    void jarsSwappedRowByRowFitAtTheEnd() throws IOException {
        String swapped = "site,string,position,jar_type,serial,from\n"
                + row(1, tag + "-2", "2018-04-01")
                + row(2, tag + "-1", "2018-04-01");
        assertThat(bringIn("occupancies", swapped).changed()).isEqualTo(2);
        assertThat(register.blueprint(string.id()).occupancies())
                .extracting(OccupancyView::serial)
                .startsWith(tag + "-2", tag + "-1");
    }

    @Test
    void aSecondJarAtAPositionIsAFlawOfItsLine() {
        String file = "site,string,position,jar_type,serial,from\n" + row(3, "new", "2024-01-01");
        assertThatThrownBy(() -> bringIn("occupancies", file)).isInstanceOfSatisfying(Refused.class, refusal -> {
            assertThat(refusal.flaws().get(0).place()).isEqualTo("line 2, column 6");
            assertThat(refusal.flaws().get(0).message()).contains("since 2018-04-01");
        });
        assertThat(register.blueprint(string.id()).occupancies()).hasSize(4);
    }

    @Test
    void oneSerialAtTwoPlacesIsAFlawOfItsLine() {
        String file = "site,string,position,jar_type,serial,from\n" + row(3, tag + "-1", "2018-04-01");
        assertThatThrownBy(() -> bringIn("occupancies", file))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws().get(0).message())
                                .contains("position 1 of " + tag + "-S / A"));
    }

    @Test
    void aJarIsReplacedByTwoRows() throws IOException {
        String file = "site,string,position,jar_type,serial,from,until\n"
                + row(3, tag + "-3", "2018-04-01,2024-01-01")
                + row(3, "new", "2024-01-01,");
        ImportReport report = bringIn("occupancies", file);
        assertThat(report.created()).isEqualTo(1);
        assertThat(report.changed()).isEqualTo(1);
    }

    @Test
    void aLinkBeyondThePlanIsAFlawOfItsLine() {
        String file = "site,string,link,kind\n" + tag + "-S,A,5,STRAP";
        assertThatThrownBy(() -> bringIn("links", file))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws().get(0).remedy()).contains("0 to 4"));
    }

    @Test
    void aRowThatStandsTwiceIsAFlaw() {
        String file = "code,name\n" + tag + "X,One\n" + tag + "X,Two";
        assertThatThrownBy(() -> bringIn("areas", file))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws().get(0).message()).contains("stands on line 2 already"));
    }

    @Test
    void whoMayNotEditMayNotBringInFilesButMayReadThem() throws IOException {
        signIn(Role.MANAGER);
        assertThat(exported("strings")).contains(tag + "-S,A,");
        assertThatThrownBy(() -> preview("sites", "code\nX")).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> bringIn("sites", "code\nX")).isInstanceOf(AccessDeniedException.class);
    }

    private String row(int position, String serial, String dates) {
        return tag + "-S,A," + position + "," + tag + "-J," + serial + "," + dates + "\n";
    }

    private String exported(String kind) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        files.write(kind, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private ImportReport preview(String kind, String file) throws IOException {
        return files.preview(kind, new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
    }

    private ImportReport bringIn(String kind, String file) throws IOException {
        return files.bringIn(kind, new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
    }

    private static void signIn(Role role) {
        Person person = new Person(1, "somebody", "Somebody", role, Reach.EVERYWHERE);
        SecurityContextHolder.getContext().setAuthentication(new PersonAuthentication(person));
    }
}
