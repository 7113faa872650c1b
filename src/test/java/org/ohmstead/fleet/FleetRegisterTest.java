package org.ohmstead.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;

@ServiceTest
class FleetRegisterTest {

    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jarsAndLinks;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Announcements announcements;

    private String tag = "";
    private long areaId;

    @TestConfiguration(proxyBeanMethods = false)
    static class Announcements {
        final List<Long> changed = new ArrayList<>();

        @EventListener
        void on(StringChanged event) {
            changed.add(event.stringId());
        }
    }

    @BeforeEach
    void anAreaASiteAndAJarType() {
        tag = "FR" + ++count;
        signIn(Role.ADMINISTRATOR, Reach.EVERYWHERE);
        areaId = register.createArea(Entries.area(tag)).id();
        register.createSite(Entries.site(tag + "-S", tag));
        register.createJarType(Entries.jarType(tag + "-J"));
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    @Test
    void whatIsWrittenComesBack() {
        assertThat(register.site(tag + "-S").entry()).isEqualTo(Entries.site(tag + "-S", tag));
        assertThat(register.jarType(tag + "-J").entry()).isEqualTo(Entries.jarType(tag + "-J"));
        StringView string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 30, 30));
        assertThat(register.string(string.id()).entry()).isEqualTo(Entries.string(tag + "-S", "A", tag + "-J", 30, 30));
        assertThat(register.findString(tag + "-S", "A")).contains(string);
        assertThat(string.positions()).isEqualTo(60);
    }

    @Test
    void linksFollowFromTheTiers() {
        StringView string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 3, 2));
        assertThat(register.blueprint(string.id()).links())
                .extracting(LinkView::kind)
                .containsExactly(
                        LinkKind.TERMINAL,
                        LinkKind.STRAP,
                        LinkKind.STRAP,
                        LinkKind.TIER_CABLE,
                        LinkKind.STRAP,
                        LinkKind.TERMINAL);
        assertThat(register.blueprint(string.id()).links())
                .extracting(LinkView::straps)
                .containsExactly(1, 2, 2, 1, 2, 1);
    }

    @Test
    void aLargerPlanKeepsWhatWasEnteredForUntouchedLinks() {
        StringView string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 3, 2));
        var cable = new org.ohmstead.kernel.Conductor("95", org.ohmstead.kernel.Conductor.Flexibility.CLASS_5, 1.2, 2);
        jarsAndLinks.changeLink(
                new org.ohmstead.fleet.csv.LinkEntry(tag + "-S", "A", 3, LinkKind.TIER_CABLE, 1, cable));
        register.changeString(string.id(), string.version(), Entries.string(tag + "-S", "A", tag + "-J", 3, 4));
        List<LinkView> links = register.blueprint(string.id()).links();
        assertThat(links).hasSize(8);
        assertThat(links.get(3).conductor()).isEqualTo(cable);
        assertThat(links.get(5).kind()).isEqualTo(LinkKind.STRAP);
        assertThat(links.get(7).kind()).isEqualTo(LinkKind.TERMINAL);
    }

    @Test
    void aPlanTooSmallForItsJarsIsRefused() {
        StringView string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 3, 2));
        jarsAndLinks.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
        assertThatThrownBy(() -> register.changeString(
                        string.id(), string.version(), Entries.string(tag + "-S", "A", tag + "-J", 4)))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws())
                                .singleElement()
                                .satisfies(flaw -> assertThat(flaw.message()).contains("4 positions", "up to 5")));
        assertThat(register.string(string.id()).positions()).isEqualTo(5);
    }

    @Test
    void aBrokenRuleIsRefusedAtItsColumn() {
        var entry = new org.ohmstead.fleet.csv.AreaEntry("lower case", "", null);
        assertThatThrownBy(() -> register.createArea(entry))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws())
                                .extracting(flaw -> flaw.column())
                                .containsExactly(1, 2));
    }

    @Test
    void theSameCodeTwiceConflicts() {
        assertThatThrownBy(() -> register.createSite(Entries.site(tag + "-S", tag)))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("There is already a site " + tag + "-S");
    }

    @Test
    void anUnknownAreaIsRefusedWithTheValidOnes() {
        assertThatThrownBy(() -> register.createSite(Entries.site(tag + "-T", "NOWHERE")))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws().get(0).remedy()).contains(tag));
    }

    @Test
    void theSecondOfTwoChangesToTheSameVersionConflicts() {
        SiteView site = register.site(tag + "-S");
        register.changeSite(site.id(), site.version(), Entries.site(tag + "-S", tag, "Asia/Kathmandu"));
        assertThatThrownBy(() -> register.changeSite(site.id(), site.version(), Entries.site(tag + "-S", tag, "UTC")))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("Somebody else changed this");
        assertThat(register.site(tag + "-S").timeZone().getId()).isEqualTo("Asia/Kathmandu");
    }

    @Test
    void aSiteWithStringsInUseIsNotRetired() {
        StringView string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 3));
        LocalDate on = LocalDate.of(2025, 1, 1);
        assertThatThrownBy(() -> register.retireSite(tag + "-S", on)).isInstanceOf(Conflict.class);
        assertThatThrownBy(() -> register.retireArea(tag, on)).isInstanceOf(Conflict.class);
        assertThat(register.retireString(string.id(), on).retiredOn()).isEqualTo(on);
        assertThat(register.retireSite(tag + "-S", on).retiredOn()).isEqualTo(on);
        assertThat(register.retireArea(tag, on).retiredOn()).isEqualTo(on);
    }

    @Test
    void aChangedJarTypeAnnouncesEveryStringBuiltWithIt() {
        StringView a = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 3));
        StringView b = register.createString(Entries.string(tag + "-S", "B", tag + "-J", 3));
        announcements.changed.clear();
        JarTypeView jarType = register.jarType(tag + "-J");
        register.changeJarType(jarType.id(), jarType.version(), Entries.jarType(tag + "-J"));
        assertThat(announcements.changed).containsExactlyInAnyOrder(a.id(), b.id());
    }

    @Test
    void whatIsOutOfReachDoesNotExist() {
        StringView string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 3));
        signIn(Role.ENGINEER, new Reach(false, Set.of(areaId + 1000)));
        assertThat(register.areas()).isEmpty();
        assertThat(register.sites()).isEmpty();
        assertThat(register.strings()).isEmpty();
        assertThat(register.blueprints(List.of(string.id()))).isEmpty();
        assertThat(register.findString(tag + "-S", "A")).isEmpty();
        assertThatThrownBy(() -> register.site(tag + "-S")).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> register.string(string.id())).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> jarsAndLinks.fillEmptyPositions(string.id(), Entries.COMMISSIONED))
                .isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> register.changeString(string.id(), string.version(), string.entry()))
                .isInstanceOf(NotFound.class);
    }

    @Test
    void aCrewReadsTheRegisterAndDoesNotChangeIt() {
        signIn(Role.CREW, Reach.EVERYWHERE);
        SiteView site = register.site(tag + "-S");
        assertThatThrownBy(() -> register.changeSite(site.id(), site.version(), site.entry()))
                .isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> register.createJarType(Entries.jarType(tag + "-K")))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void everyChangeIsWrittenDownWithOldAndNew() {
        SiteView site = register.site(tag + "-S");
        register.changeSite(site.id(), site.version(), Entries.site(tag + "-S", tag, "Asia/Kathmandu"));
        String detail = jdbc.sql(
                        "select detail::text from audit_entry where subject_id = ? and action = 'site changed'")
                .param(tag + "-S")
                .query(String.class)
                .single();
        assertThat(detail).isEqualTo("{\"time_zone\": [\"Europe/Oslo\", \"Asia/Kathmandu\"]}");
    }

    @Test
    void blueprintsOfManyStringsComeTogether() {
        List<Long> ids = new ArrayList<>();
        for (String name : List.of("A", "B", "C")) {
            StringView string = register.createString(Entries.string(tag + "-S", name, tag + "-J", 4));
            jarsAndLinks.fillEmptyPositions(string.id(), Entries.COMMISSIONED);
            jarsAndLinks.recordRemake(Entries.remake(string, 2, LocalDate.of(2020, 5, 5)));
            ids.add(string.id());
        }
        Map<Long, StringBlueprint> blueprints = register.blueprints(ids);
        assertThat(blueprints).containsOnlyKeys(ids);
        assertThat(blueprints.values()).allSatisfy(blueprint -> {
            assertThat(blueprint.links()).hasSize(5);
            assertThat(blueprint.occupancies())
                    .extracting(OccupancyView::position)
                    .containsExactly(1, 2, 3, 4);
            assertThat(blueprint.remakes()).singleElement().satisfies(remake -> {
                assertThat(remake.ordinal()).isEqualTo(2);
                assertThat(remake.remadeOn()).isEqualTo(LocalDate.of(2020, 5, 5));
                assertThat(remake.asFoundMicroohms()).isEqualTo(61.0);
            });
            assertThat(blueprint.site().code()).isEqualTo(tag + "-S");
            assertThat(blueprint.jarType().code()).isEqualTo(tag + "-J");
        });
    }

    private static void signIn(Role role, Reach reach) {
        Person person = new Person(1, "somebody", "Somebody", role, reach);
        SecurityContextHolder.getContext().setAuthentication(new PersonAuthentication(person));
    }
}
