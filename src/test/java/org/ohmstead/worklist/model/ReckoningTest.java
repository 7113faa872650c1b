package org.ohmstead.worklist.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.WorkItem.Done;
import org.ohmstead.worklist.model.WorkItem.Plan;

/** Random lives of a string: surveys that ask or don't, jars and joints made anew, people who plan, do, dismiss, take back. */
class ReckoningTest {

    private static final List<WorkKey> KEYS = List.of(
            new WorkKey(WorkKind.REMAKE_LINK, Subject.link(1)),
            new WorkKey(WorkKind.MEASURE_AGAIN, Subject.link(1)),
            new WorkKey(WorkKind.REPLACE_JAR, Subject.jar(1)),
            new WorkKey(WorkKind.MEASURE_AGAIN, Subject.jar(1)),
            new WorkKey(WorkKind.INVESTIGATE, Subject.jar(1)),
            new WorkKey(WorkKind.TEST_CAPACITY, Subject.STRING),
            new WorkKey(WorkKind.MEASURE_AGAIN, Subject.STRING));

    private static final int DAYS = 120;

    /** A life, day by day. */
    private static final class Life {

        private final Random random;
        private final Map<Long, WorkItem> items = new HashMap<>();
        private final Map<Long, LocalDate> surveyDays = new HashMap<>();
        private final List<Seen.Test> tests = new ArrayList<>();
        private LocalDate today = LocalDate.parse("2026-01-01");
        private LocalDate jarSince = today.minusYears(5);
        private LocalDate linkSince = today.minusYears(5);
        private LocalDate asOf = today.minusYears(5);
        private Long survey;
        private Set<Subject> read = Set.of();
        private Wants wants = new Wants();
        private long ids;
        private int proven;

        Life(long seed) {
            random = new Random(seed);
        }

        void day() {
            today = today.plusDays(1);
            switch (random.nextInt(9)) {
                case 0, 1 -> survey();
                case 2 -> {
                    linkSince = today;
                    judgeAnew(Subject.link(1));
                }
                case 3 -> {
                    jarSince = today;
                    judgeAnew(Subject.jar(1));
                }
                case 4 -> {
                    tests.add(new Seen.Test(random.nextInt(1000), today));
                    judgeAnew(Subject.STRING);
                }
                default -> act();
            }
            reckon();
            assertThat(Reckoning.of(1, seen(), wants, known()))
                    .as("the same once more")
                    .isEmpty();
        }

        private void survey() {
            survey = ++ids;
            asOf = today;
            surveyDays.put(survey, today);
            read = new HashSet<>(Set.of(Subject.STRING));
            if (random.nextInt(5) > 0) {
                read.add(Subject.jar(1));
            }
            if (random.nextInt(5) > 0) {
                read.add(Subject.link(1));
            }
            wants = new Wants();
            for (WorkKey key : KEYS) {
                int drawn = random.nextInt(4);
                if (drawn == 0) {
                    wants.add(new Want(
                            key,
                            since(key.subject()),
                            Urgency.PLAN,
                            today.plusDays(30),
                            "asked on " + today,
                            Source.JUDGEMENT,
                            random.nextInt(5) > 0));
                } else if (drawn == 1 && random.nextInt(4) == 0) {
                    wants.excuse(key, "overruled");
                }
            }
        }

        /** What changed in the register is judged anew: mostly nothing is asked of what is new. A test asks for no other. */
        private void judgeAnew(Subject changed) {
            Wants renewed = new Wants();
            for (Want want : wants.asked()) {
                boolean touched = want.key().subject().equals(changed);
                boolean tested = touched && want.key().kind() == WorkKind.TEST_CAPACITY;
                if (!touched) {
                    renewed.add(want);
                } else if (!tested && random.nextInt(3) == 0) {
                    renewed.add(new Want(
                            want.key(),
                            since(changed),
                            want.urgency(),
                            want.by(),
                            want.reason(),
                            want.source(),
                            want.raises()));
                }
            }
            wants = renewed;
        }

        private LocalDate since(Subject subject) {
            return switch (subject.kind()) {
                case JAR -> jarSince;
                case LINK -> linkSince;
                case STRING, DUTY -> null;
            };
        }

        private Seen seen() {
            LocalDate before = today.minusYears(6);
            Map<Subject, Seen.Unit> units = new HashMap<>();
            for (Subject subject : List.of(Subject.jar(1), Subject.link(1), Subject.STRING)) {
                units.put(subject, new Seen.Unit(since(subject), read.contains(subject) ? asOf : before));
            }
            return new Seen(today, asOf, survey, null, units, tests);
        }

        private List<WorkItem> known() {
            return items.values().stream()
                    .sorted(java.util.Comparator.comparingLong(WorkItem::id))
                    .toList();
        }

        private void act() {
            List<WorkItem> all = known();
            if (all.isEmpty()) {
                return;
            }
            WorkItem item = all.get(random.nextInt(all.size()));
            List<Function<WorkItem, Step>> acts = List.of(
                    one -> one.plan(new Plan("someone", today.plusDays(1), null), ""),
                    one -> one.reportDone(new Done(today, "someone", "", false), null),
                    one -> one.dismiss("no", random.nextBoolean() ? null : today.plusDays(10)),
                    one -> one.undo(""));
            try {
                Step step = acts.get(random.nextInt(acts.size())).apply(item);
                boolean reopened = !item.isOpen() && step.after().isOpen();
                if (!reopened
                        || all.stream()
                                .noneMatch(one -> one.isOpen() && one.key().equals(item.key()))) {
                    items.put(item.id(), step.after());
                }
            } catch (Conflict refused) {
                assertThat(refused.getMessage()).isNotBlank();
            }
        }

        private void reckon() {
            Seen seen = seen();
            for (Step step : Reckoning.of(1, seen, wants, known())) {
                WorkItem after = step.after();
                if (after.id() == 0) {
                    items.put(++ids, withId(after, ids));
                    continue;
                }
                if (after.state() == WorkState.PROVEN) {
                    proven(items.get(after.id()), after);
                }
                items.put(after.id(), after);
            }
            Set<WorkKey> open = new HashSet<>();
            known().stream()
                    .filter(WorkItem::isOpen)
                    .forEach(item -> assertThat(open.add(item.key()))
                            .as("open once: " + item)
                            .isTrue());
        }

        private void proven(WorkItem before, WorkItem after) {
            proven++;
            assertThat(before.state()).isEqualTo(WorkState.DONE);
            Evidence proof = after.proof();
            assertThat(proof).isNotNull();
            if (after.key().kind() == WorkKind.TEST_CAPACITY) {
                assertThat(proof.kind()).isEqualTo(Evidence.Kind.CAPACITY_TEST);
                return;
            }
            assertThat(proof.kind()).isEqualTo(Evidence.Kind.SURVEY);
            assertThat(proof.id()).isNotEqualTo(after.asked().surveyId());
            assertThat(surveyDays.get(proof.id())).isAfterOrEqualTo(after.done().on());
            assertThat(read).contains(after.key().subject());
            assertThat(wants.of(after.key())).isNull();
            assertThat(wants.excuse(after.key())).isNull();
        }

        private static WorkItem withId(WorkItem item, long id) {
            return new WorkItem(
                    id,
                    item.stringId(),
                    item.key(),
                    item.raisedOn(),
                    item.state(),
                    item.asked(),
                    item.plan(),
                    item.done(),
                    item.proof(),
                    item.closing());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void noItemIsTwiceOpenAndNoneIsProvenWithoutALaterReading(long seed) {
        int proven = 0;
        int items = 0;
        for (int n = 0; n < 50; n++) {
            Life life = new Life(seed * 1000 + n);
            for (int day = 0; day < DAYS; day++) {
                life.day();
            }
            proven += life.proven;
            items += life.items.size();
        }
        assertThat(proven).as("proven at all").isGreaterThan(100);
        assertThat(items).isGreaterThan(proven);
    }
}
