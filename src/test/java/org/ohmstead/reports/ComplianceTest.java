package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.NewVisit.Item;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Report;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.worklist.NewWork;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/** A vented string under the usual pack since 10 January 2025; today is 10 March 2026. */
@ServiceTest
class ComplianceTest {

    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private VisitBook visits;

    @Autowired
    private Compliance compliance;

    @Autowired
    private EvidencePack pack;

    @Autowired
    private WorkList work;

    @Autowired
    private Access access;

    @Autowired
    private MockMvc mvc;

    private String area;
    private StringView string;

    @BeforeEach
    void aVentedString() {
        area = "CMP-" + ++count;
        string = access.asSystem("test", () -> {
            register.createArea(Entries.area(area));
            register.createSite(Entries.site(area, area));
            register.createJarType(Entries.jarType(area));
            StringView made = register.createString(Entries.string(area, "A", area, 6, 6));
            keeping.assign(made.id(), null, LocalDate.parse("2025-01-10"));
            return made;
        });
        signIn(Role.MANAGER, Reach.EVERYWHERE);
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    private static Person signIn(Role role, Reach reach) {
        Person person = new Person(9, "compliance.test", "Mara Manager", role, reach);
        SecurityContextHolder.getContext().setAuthentication(new PersonAuthentication(person));
        return person;
    }

    private long groundsLookedAt(String on) {
        return access.asSystem(
                "test",
                () -> visits.record(new NewVisit(
                        string.id(),
                        LocalDate.parse(on),
                        "A. Crew",
                        "",
                        List.of(Item.sound(EvidenceKind.CHECK_GROUNDS)))));
    }

    private ComplianceSummary summary(String quarter) {
        return compliance.summary(Quarter.parse(quarter), area);
    }

    private List<ComplianceLine> grounds(String quarter) {
        return summary(quarter).lines().stream()
                .filter(line -> line.requirement().equals("grounds"))
                .toList();
    }

    /** Four calendar months end with the fourth month: NERC PRC-005-6, Table 1-4, and its definition of the interval. */
    @Test
    void eachQuarterSaysWhatWasKnownOnItsLastDay() {
        groundsLookedAt("2025-05-20");
        long late = groundsLookedAt("2025-10-02");

        assertThat(grounds("2025-Q2"))
                .filteredOn(line -> line.doneOn() != null)
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.dueOn()).isEqualTo("2025-05-31");
                    assertThat(line.state()).isEqualTo(DutyState.ON_TIME);
                });
        assertThat(grounds("2025-Q3")).singleElement().satisfies(line -> {
            assertThat(line.dueOn()).isEqualTo("2025-09-30");
            assertThat(line.doneOn()).isNull();
            assertThat(line.lastDoneOn()).isEqualTo("2025-05-20");
        });
        assertThat(grounds("2025-Q4"))
                .filteredOn(line -> line.doneOn() != null)
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.state()).isEqualTo(DutyState.LATE);
                    assertThat(line.evidence()).isEqualTo("visit " + late);
                });
    }

    @Test
    void theTotalsCountEveryLineOnce() {
        groundsLookedAt("2025-05-20");
        ComplianceSummary summary = summary("2025-Q2");

        long counted = summary.totals().stream()
                .mapToLong(total -> total.counts().values().stream()
                        .mapToLong(Long::longValue)
                        .sum())
                .sum();
        assertThat(counted).isEqualTo(summary.lines().size()).isGreaterThanOrEqualTo(10);
        assertThat(summary.count(DutyState.MISSED))
                .isEqualTo(summary.exceptions().size());
    }

    /** Raised today, 10 March 2026: open in the quarter that runs, unknown to the one before, and no part of what is signed. */
    @Test
    void whatIsOpenOnTheWorkListWhenTheQuarterEndsIsNamed() {
        String before = summary("2026-Q1").sha256();
        access.asSystem(
                "test",
                () -> work.raise(new NewWork(
                        string.id(), WorkKind.INVESTIGATE, Subject.Kind.JAR, 5, Urgency.PLAN, null, "Smells of acid")));

        ComplianceSummary running = summary("2026-Q1");
        assertThat(running.unresolved())
                .filteredOn(open -> open.kind() == WorkKind.INVESTIGATE)
                .singleElement()
                .satisfies(open -> assertThat(open.what()).contains("5"));
        assertThat(running.sha256()).isEqualTo(before);
        for (Report report : List.of(compliance.report(running), compliance.printed(running))) {
            assertThat(report.section(UnresolvedTable.TITLE).rows())
                    .hasSameSizeAs(running.unresolved())
                    .anySatisfy(row -> assertThat(row).contains(Cell.of("Smells of acid")));
        }
        assertThat(summary("2025-Q4").unresolved()).isEmpty();
    }

    @Test
    void aSignedQuarterSaysWhatWasAmendedSince() {
        long visit = groundsLookedAt("2025-05-20");
        ComplianceSummary seen = summary("2025-Q2");
        ComplianceSummary signed = compliance.sign(seen.quarter(), area, seen.sha256(), "read with care");
        assertThat(signed.signOff()).isNotNull();
        assertThat(signed.signOff().isUnchanged()).isTrue();
        assertThat(signed.signOff().signedBy()).isEqualTo("Mara Manager");
        assertThat(signed.signOff().sha256()).isEqualTo(seen.sha256());

        access.asSystem("test", () -> {
            visits.voidVisit(visit, "it was another string");
            return null;
        });
        SignOff after = summary("2025-Q2").signOff();
        assertThat(after.isUnchanged()).isFalse();
        assertThat(after.gone()).anySatisfy(line -> assertThat(line).contains("visit " + visit));
        assertThat(after.come()).anySatisfy(line -> assertThat(line).contains("missed"));
    }

    @Test
    void aSignedQuarterIsTheSameBytesAgainUntilItIsAmended() throws IOException {
        long visit = groundsLookedAt("2025-05-20");
        ComplianceSummary seen = summary("2025-Q2");
        compliance.sign(seen.quarter(), area, seen.sha256(), "");
        ByteArrayOutputStream signed = new ByteArrayOutputStream();
        pack.write(summary("2025-Q2"), signed);
        groundsLookedAt("2025-10-02");
        ByteArrayOutputStream again = new ByteArrayOutputStream();
        pack.write(summary("2025-Q2"), again);
        assertThat(again.toByteArray()).as("what came later is no part of it").isEqualTo(signed.toByteArray());
        access.asSystem("test", () -> {
            visits.voidVisit(visit, "it was another string");
            return null;
        });
        assertThat(compliance.report(summary("2025-Q2")).facts())
                .anySatisfy(fact -> assertThat(fact.words()).contains("CHANGED SINCE"));
        assertThat(compliance
                        .report(summary("2025-Q2"))
                        .section("Changed since signed")
                        .rows())
                .isNotEmpty();
    }

    @Test
    void onlyWhatWasSeenIsSignedAndOnlyWhenTheQuarterIsOver() {
        ComplianceSummary seen = summary("2025-Q2");
        groundsLookedAt("2025-05-20");
        assertThatThrownBy(() -> compliance.sign(seen.quarter(), area, seen.sha256(), ""))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("changed since you saw it");
        ComplianceSummary running = summary("2026-Q1");
        assertThatThrownBy(() -> compliance.sign(running.quarter(), area, running.sha256(), ""))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("is not over");
    }

    @Test
    void anEngineerMaySignNothingAndNobodyWhatHeDoesNotSee() {
        ComplianceSummary seen = summary("2025-Q2");
        signIn(Role.MANAGER, new Reach(false, Set.of(string.areaId())));
        assertThatThrownBy(() -> compliance.sign(seen.quarter(), null, seen.sha256(), ""))
                .isInstanceOf(AccessDeniedException.class);
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
        assertThatThrownBy(() -> compliance.sign(seen.quarter(), area, seen.sha256(), ""))
                .isInstanceOf(AccessDeniedException.class);
        signIn(Role.MANAGER, new Reach(false, Set.of(-1L)));
        assertThatThrownBy(() -> summary("2025-Q2")).isInstanceOf(NotFound.class);
    }

    @Test
    void aWordThatIsNoQuarterIsRefusedWithAnExample() {
        assertThatThrownBy(() -> Quarter.parse("2025-5"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("2026-Q3");
    }

    @Test
    void theEvidencePackIsTheSameEachTimeAndItsSumsAreRight() throws IOException {
        groundsLookedAt("2025-05-20");
        ByteArrayOutputStream first = new ByteArrayOutputStream();
        ByteArrayOutputStream second = new ByteArrayOutputStream();
        pack.write(summary("2025-Q2"), first);
        pack.write(summary("2025-Q2"), second);

        assertThat(second.toByteArray()).isEqualTo(first.toByteArray());
        Map<String, byte[]> files = unpacked(first.toByteArray());
        String manifest = new String(files.remove("SHA256SUMS"), StandardCharsets.UTF_8);
        assertThat(manifest.lines()).hasSize(files.size()).hasSize(3);
        files.forEach((name, content) ->
                assertThat(manifest).contains(HexFormat.of().formatHex(Sha256.of(content)) + "  " + name + "\n"));
    }

    private static Map<String, byte[]> unpacked(byte[] zip) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream entries = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                files.put(entry.getName(), entries.readAllBytes());
            }
        }
        return files;
    }

    @Test
    void pageAndFilesAreThereForAManager() throws Exception {
        Person manager = signIn(Role.MANAGER, Reach.EVERYWHERE);
        var as = authentication(new PersonAuthentication(manager));
        mvc.perform(get("/compliance/2025-Q2").param("area", area).with(as))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.containsString("Sign what stands here")));
        mvc.perform(get("/compliance").with(as)).andExpect(status().is3xxRedirection());
        mvc.perform(get("/api/compliance/2025-Q2/file.pdf").param("area", area).with(as))
                .andExpect(status().isOk())
                .andExpect(
                        header().string("Content-Disposition", Matchers.containsString("compliance-2025-Q2-" + area)));
        mvc.perform(get("/api/compliance/2025-Q2/file.doc").with(as)).andExpect(status().isUnprocessableContent());
    }
}
