package org.ohmstead.capacity;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.Permission;
import org.ohmstead.capacity.model.Capacities;
import org.ohmstead.capacity.model.Capacity;
import org.ohmstead.capacity.model.Discharge;
import org.ohmstead.capacity.model.DischargeFigures;
import org.ohmstead.capacity.model.DischargeFile;
import org.ohmstead.capacity.model.DischargeRecord;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.NextTest;
import org.ohmstead.capacity.model.Practice;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Partial;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The discharge tests of strings. Append-only: a wrong one is voided with a reason, a corrected one is entered. They are
 * evidence of the programme's capacity duties from the moment they are recorded.
 */
@Service
@Transactional
public class CapacityTests {

    private final FleetRegister register;
    private final CapacityTable table;
    private final Access access;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    CapacityTests(
            FleetRegister register,
            CapacityTable table,
            Access access,
            AuditTrail audit,
            ApplicationEventPublisher events,
            Clock clock) {
        this.register = register;
        this.table = table;
        this.access = access;
        this.audit = audit;
        this.events = events;
        this.clock = clock;
    }

    /**
     * @return the test's id
     * @throws NotFound when there is no such string within reach
     * @throws Refused when a figure cannot be, or the method does not hold for it
     * @throws Conflict when a test of that kind and day stands already
     */
    public long record(NewCapacityTest test, Drawn drawn) {
        StringView string = inReach(HAND_IN_SURVEYS, test.stringId());
        return store(test, drawn, string);
    }

    /**
     * Works the discharge out of a recorder's file and keeps the file.
     *
     * @throws Refused with every flaw of the file, each with line, column and remedy
     */
    public long recordFrom(NewCapacityTest test, String fileName, byte[] content) {
        StringView string = inReach(HAND_IN_SURVEYS, test.stringId());
        long id = store(test, drawn(test, string, fileName, content), string);
        table.insertFile(id, fileName.isBlank() ? "record.csv" : fileName, Sha256.of(content), content);
        return id;
    }

    private Drawn drawn(NewCapacityTest test, StringView string, String fileName, byte[] content) {
        DischargeRecord all = read(fileName, content, string.positions());
        double jarLine =
                test.ratings().endVoltsPerCell() * jarType(string).entry().cellsPerJar();
        DischargeFigures figures = DischargeFigures.of(all, jarLine * string.positions(), jarLine);
        return new Drawn(
                figures.amps(),
                figures.minutes(),
                figures.stoppedEarly(),
                figures.stringEndVolts(),
                figures.jarEndVolts(),
                figures.jarMinutes());
    }

    private static DischargeRecord read(String fileName, byte[] content, int positions) {
        Partial<DischargeRecord> read = DischargeFile.read(content, positions);
        if (!read.isFlawless()) {
            throw new Refused(
                    fileName + " cannot be read as a discharge record: "
                            + read.flaws().get(0)
                            + (read.flaws().size() == 1
                                    ? ""
                                    : " There are " + (read.flaws().size() - 1) + " more."),
                    read.flaws());
        }
        return read.rows().get(0);
    }

    private long store(NewCapacityTest test, Drawn drawn, StringView string) {
        requirePlausible(test, drawn, string);
        Capacity capacity = Capacities.of(
                test.method(),
                test.ratings(),
                new Discharge(drawn.amps(), drawn.minutes(), test.celsius(), drawn.stoppedEarly()),
                jarType(string).technology(),
                test.linearCoefficient());
        table.lock(string.id());
        requireFirst(test);
        long id = table.insert(
                test, drawn, capacity, coefficient(test), access.current().username());
        audit.record(
                "capacity test recorded",
                "capacity test",
                String.valueOf(id),
                string.areaId(),
                Map.of(
                        "string",
                        string.title(),
                        "on",
                        test.testedOn().toString(),
                        "percent",
                        Math.round(capacity.percent() * 10) / 10.0));
        events.publishEvent(new CapacityTestsChanged(string.id()));
        return id;
    }

    private static @Nullable Double coefficient(NewCapacityTest test) {
        return test.method() == Method.LINEAR
                ? (Double) Capacities.coefficient(test.ratings(), test.linearCoefficient())
                : null;
    }

    private void requireFirst(NewCapacityTest test) {
        table.of(test.stringId()).stream()
                .filter(other -> other.stands()
                        && other.kind() == test.kind()
                        && other.testedOn().equals(test.testedOn()))
                .findFirst()
                .ifPresent(other -> {
                    throw new Conflict("A " + test.kind().words() + " of that day is recorded already as test "
                            + other.id() + ". If it is wrong, void it first.");
                });
    }

    /** @throws Conflict when it is voided already */
    public void voidTest(long testId, String reason) {
        access.require(SETTLE_SURVEYS);
        CapacityTestView test = table.find(testId).orElseThrow(() -> NotFound.of("capacity test", testId));
        StringView string = inReach(SETTLE_SURVEYS, test.stringId());
        if (reason.isBlank()) {
            throw new Refused("Give the reason, so that others understand it later.");
        }
        table.lock(string.id());
        CapacityTestView now = table.find(testId).orElseThrow();
        if (!now.stands()) {
            throw new Conflict("Capacity test " + testId + " is voided already: " + now.voidedBecause());
        }
        table.voidTest(testId, reason.strip(), access.current().username());
        audit.record(
                "capacity test voided",
                "capacity test",
                String.valueOf(testId),
                string.areaId(),
                Map.of("reason", reason.strip()));
        events.publishEvent(new CapacityTestsChanged(string.id()));
    }

    /** Of a string, the latest first, voided ones among them. */
    @Transactional(readOnly = true)
    public List<CapacityTestView> testsOf(long stringId) {
        inReach(SEE_ESTATE, stringId);
        List<CapacityTestView> tests = new java.util.ArrayList<>(table.of(stringId));
        java.util.Collections.reverse(tests);
        return tests;
    }

    @Transactional(readOnly = true)
    public CapacityTestView test(long testId) {
        access.require(SEE_ESTATE);
        CapacityTestView test = table.find(testId).orElseThrow(() -> NotFound.of("capacity test", testId));
        if (!access.reach().everywhere()) {
            inReach(SEE_ESTATE, test.stringId());
        }
        return test;
    }

    /** The record of a test as it came, if it had one. */
    @Transactional(readOnly = true)
    public byte[] raw(long testId) {
        return rawOf(test(testId)).orElseThrow(() -> NotFound.of("record of capacity test", testId));
    }

    private Optional<byte[]> rawOf(CapacityTestView test) {
        return table.content(test.id());
    }

    /** The record of a test, read again; empty when the test was typed. */
    @Transactional(readOnly = true)
    public Optional<DischargeRecord> curve(long testId) {
        CapacityTestView test = test(testId);
        int positions = register.string(test.stringId()).positions();
        return rawOf(test).map(content -> read("record", content, positions));
    }

    /** The tests that count, how they trend, and when the practice wants the next one. */
    @Transactional(readOnly = true)
    public CapacityStanding standing(long stringId) {
        StringView string = inReach(SEE_ESTATE, stringId);
        List<CapacityTestView> tests =
                table.of(stringId).stream().filter(CapacityTestView::counts).toList();
        return new CapacityStanding(tests, next(tests, string), pointsPerYear(tests));
    }

    private @Nullable NextTest next(List<CapacityTestView> tests, StringView string) {
        JarTypeView type = jarType(string);
        return tests.isEmpty()
                ? null
                : Practice.next(
                        tests.stream().map(CapacityTests::tested).toList(),
                        type.technology(),
                        string.inServiceOn(),
                        type.entry().designLifeYears());
    }

    private static Practice.Tested tested(CapacityTestView test) {
        return new Practice.Tested(
                test.testedOn(), test.capacity().percent(), test.capacity().atLeast());
    }

    private static @Nullable Double pointsPerYear(List<CapacityTestView> tests) {
        if (tests.size() < 2) {
            return null;
        }
        CapacityTestView first = tests.get(0);
        CapacityTestView last = tests.get(tests.size() - 1);
        double years = ChronoUnit.DAYS.between(first.testedOn(), last.testedOn()) / 365.25;
        return years <= 0
                ? null
                : (Double) ((last.capacity().percent() - first.capacity().percent()) / years);
    }

    private JarTypeView jarType(StringView string) {
        return register.jarType(string.jarTypeCode());
    }

    private StringView inReach(Permission permission, long stringId) {
        access.require(permission);
        StringView string = register.string(stringId);
        access.require(permission, string.areaId());
        return string;
    }

    private void requirePlausible(NewCapacityTest test, Drawn drawn, StringView string) {
        LocalDate today = LocalDate.ofInstant(
                clock.instant(), register.site(string.siteCode()).timeZone());
        if (test.testedBy().isBlank()) {
            throw new Refused("Say who made the test.");
        }
        if (test.testedOn().isAfter(today)) {
            throw new Refused("The test lies ahead: at the site it is " + today + ".");
        }
        if (test.testedOn().isBefore(string.inServiceOn())) {
            throw new Refused("The string came into service on " + string.inServiceOn() + ", after that test.");
        }
        int read = drawn.jarEndVolts().length;
        if (read != 0 && read != string.positions()) {
            throw new Refused("The string has " + string.positions() + " jars; end voltages of " + read
                    + " were given. Give one per position, and leave those empty that were not read.");
        }
        double most = 4.0 * jarType(string).entry().cellsPerJar();
        for (int i = 0; i < read; i++) {
            if (Math.abs(drawn.jarEndVolts()[i]) > most) {
                throw new Refused("Jar " + (i + 1) + " ended at " + drawn.jarEndVolts()[i]
                        + " V, which no such jar has. Check the reading and its unit, volts.");
            }
        }
        if (drawn.stringEndVolts() != null && !(drawn.stringEndVolts() > 0)) {
            throw new Refused("The string's volts at the end are a number above zero.");
        }
    }
}
