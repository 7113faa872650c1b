package org.ohmstead.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContextHolder;

@ServiceTest
class JarsAndLinksTest {

    private static final LocalDate BEGIN = Entries.COMMISSIONED;
    private static final LocalDate SWAP = LocalDate.of(2022, 3, 15);

    private static int count;

    @Autowired
    private FleetRegister register;

    @Autowired
    private JarsAndLinks jarsAndLinks;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Access access;

    private StringView string;
    private StringView other;

    @BeforeEach
    void twoStringsOfFourJars() {
        Person person = new Person(1, "somebody", "Somebody", Role.ADMINISTRATOR, Reach.EVERYWHERE);
        SecurityContextHolder.getContext().setAuthentication(new PersonAuthentication(person));
        String tag = "JL" + ++count;
        register.createArea(Entries.area(tag));
        register.createSite(Entries.site(tag + "-S", tag));
        register.createJarType(Entries.jarType(tag + "-J"));
        string = register.createString(Entries.string(tag + "-S", "A", tag + "-J", 4));
        other = register.createString(Entries.string(tag + "-S", "B", tag + "-J", 4));
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    @Test
    void aReplacedJarLeavesOnTheDayItsSuccessorComes() {
        jarsAndLinks.placeJar(Entries.jar(string, 2, "S-1", BEGIN));
        jarsAndLinks.replaceJar(Entries.jar(string, 2, "S-2", SWAP));
        List<OccupancyView> jars = register.blueprint(string.id()).occupancies();
        assertThat(jars).extracting(OccupancyView::serial).containsExactly("S-1", "S-2");
        assertThat(jars.get(0).during().contains(SWAP.minusDays(1))).isTrue();
        assertThat(jars.get(0).during().contains(SWAP)).isFalse();
        assertThat(jars.get(1).during().contains(SWAP)).isTrue();
    }

    @Test
    void twoJarsNeverSitAtOnePosition() {
        jarsAndLinks.placeJar(Entries.jar(string, 2, "S-1", BEGIN));
        assertThatThrownBy(() -> jarsAndLinks.placeJar(Entries.jar(string, 2, "S-2", SWAP)))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("Position 2 of " + string.title() + " holds jar S-1 since 2018-04-01");
    }

    @Test
    void oneJarNeverSitsAtTwoPlaces() {
        jarsAndLinks.placeJar(Entries.jar(string, 2, "S-1", BEGIN));
        assertThatThrownBy(() -> jarsAndLinks.placeJar(Entries.jar(other, 3, "S-1", SWAP)))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("Jar S-1 sits at position 2 of " + string.title());
    }

    @Test
    void aJarMayMoveOnTheDayItLeft() {
        jarsAndLinks.placeJar(Entries.jar(string, 2, "S-1", BEGIN));
        jarsAndLinks.removeJar(string.id(), 2, SWAP, "moved");
        assertThat(jarsAndLinks
                        .placeJar(Entries.jar(other, 3, "S-1", SWAP))
                        .during()
                        .from())
                .isEqualTo(SWAP);
    }

    @Test
    void jarsWithoutSerialMaySitAnywhere() {
        jarsAndLinks.fillEmptyPositions(string.id(), BEGIN);
        assertThat(jarsAndLinks.fillEmptyPositions(other.id(), BEGIN)).isEqualTo(4);
        assertThat(jarsAndLinks.fillEmptyPositions(other.id(), BEGIN)).isZero();
    }

    @Test
    void theDatabaseItselfKeepsTwoJarsApart() {
        jarsAndLinks.placeJar(Entries.jar(string, 2, "S-1", BEGIN));
        assertThatThrownBy(() -> insert(string, 2, "S-9", SWAP))
                .isInstanceOf(DataIntegrityViolationException.class)
                .hasMessageContaining("one_jar_per_position");
        assertThatThrownBy(() -> insert(other, 1, "S-1", SWAP))
                .isInstanceOf(DataIntegrityViolationException.class)
                .hasMessageContaining("one_place_per_serial");
    }

    @Test
    void ofManyWhoPlaceAJarAtOncePreciselyOneSucceedsAndTheOthersHearWhy() throws Exception {
        ExecutorService crowd = Executors.newFixedThreadPool(6);
        List<Callable<String>> attempts = java.util.stream.IntStream.range(0, 6)
                .<Callable<String>>mapToObj(i -> () -> access.asSystem("test", () -> attempt("R-" + i)))
                .toList();
        List<String> outcomes = new java.util.ArrayList<>();
        for (Future<String> outcome : crowd.invokeAll(attempts)) {
            outcomes.add(outcome.get());
        }
        crowd.shutdown();
        assertThat(outcomes).filteredOn("placed"::equals).hasSize(1);
        assertThat(outcomes)
                .filteredOn(outcome -> !outcome.equals("placed"))
                .hasSize(5)
                .allMatch(outcome -> outcome.contains("one position") || outcome.contains("holds jar R-"));
    }

    @Test
    void aReplacementTakenBackSeatsTheFormerJarAgain() {
        jarsAndLinks.placeJar(Entries.jar(string, 2, "S-1", BEGIN));
        OccupancyView successor = jarsAndLinks.replaceJar(Entries.jar(string, 2, "S-2", SWAP));
        jarsAndLinks.takeBack(successor.id());
        assertThat(register.blueprint(string.id()).occupancies())
                .singleElement()
                .satisfies(jar -> {
                    assertThat(jar.serial()).isEqualTo("S-1");
                    assertThat(jar.during().isOpenEnded()).isTrue();
                    assertThat(jar.leftReason()).isEmpty();
                });
    }

    @Test
    void aJarCannotLeaveOnTheDayItCame() {
        jarsAndLinks.placeJar(Entries.jar(string, 2, "S-1", BEGIN));
        assertThatThrownBy(() -> jarsAndLinks.replaceJar(Entries.jar(string, 2, "S-2", BEGIN)))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("came on that very day");
        assertThatThrownBy(() -> jarsAndLinks.replaceJar(Entries.jar(string, 3, "S-2", SWAP)))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("No jar sits at position 3");
    }

    @Test
    void aPositionBeyondThePlanIsRefused() {
        assertThatThrownBy(() -> jarsAndLinks.placeJar(Entries.jar(string, 5, "S-1", BEGIN)))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws().get(0).remedy()).contains("1 to 4"));
    }

    @Test
    void aStayMustEndAfterItBegins() {
        assertThatThrownBy(() -> jarsAndLinks.placeJar(Entries.jar(string, 1, "S-1", BEGIN, BEGIN)))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.flaws().get(0).message()).contains("leave before it came"));
        assertThat(jarsAndLinks
                        .placeJar(Entries.jar(string, 1, "S-1", BEGIN, BEGIN.plusDays(1)))
                        .during()
                        .until())
                .isEqualTo(BEGIN.plusDays(1));
    }

    @Test
    void aLinkIsRemadeOnceADay() {
        RemakeView remake = jarsAndLinks.recordRemake(Entries.remake(string, 0, SWAP));
        assertThat(remake.asLeftMicroohms()).isEqualTo(24.5);
        assertThatThrownBy(() -> jarsAndLinks.recordRemake(Entries.remake(string, 0, SWAP)))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("already has a remake on 2022-03-15");
        assertThatThrownBy(() -> jarsAndLinks.recordRemake(Entries.remake(string, 5, SWAP)))
                .isInstanceOf(NotFound.class)
                .hasMessageContaining("0 to 4");
        jarsAndLinks.takeBackRemake(remake.id());
        assertThat(register.blueprint(string.id()).remakes()).isEmpty();
    }

    private String attempt(String serial) {
        try {
            jarsAndLinks.placeJar(Entries.jar(string, 4, serial, BEGIN));
            return "placed";
        } catch (Conflict e) {
            return String.valueOf(e.getMessage());
        }
    }

    private void insert(StringView at, int position, String serial, LocalDate from) {
        jdbc.sql("insert into occupancy (string_id, position, jar_type_id, serial, from_on) values (?, ?, ?, ?, ?)")
                .params(at.id(), position, at.jarTypeId(), serial, from)
                .update();
    }
}
