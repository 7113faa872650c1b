package org.ohmstead.programme.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.programme.rules.Interval.Unit;

class CountingTest {

    private static final LocalDate FIRST = LocalDate.of(1999, 1, 1);
    private static final int DAYS = 366 * 40;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/programme/counting.csv", numLinesToSkip = 1)
    void dueDaysAreThoseOfTheTable(
            LocalDate done, int count, Unit unit, Counting counting, LocalDate due, String source) {
        assertThat(new Interval(count, unit, counting).dueAfter(done))
                .as(source)
                .isEqualTo(due);
    }

    /** A thousand random days and lengths; seeded, so that a failure comes back. */
    private static Stream<Case> cases(Counting counting) {
        Random random = new Random(20_240_229L + counting.ordinal());
        return Stream.generate(() -> {
                    boolean years = counting == Counting.END_OF_YEAR || random.nextInt(4) == 0;
                    int months = counting == Counting.FIXED_CALENDAR_QUARTER
                            ? 3 * (1 + random.nextInt(24))
                            : 1 + random.nextInt(72);
                    Interval interval = years
                            ? Interval.ofYears(1 + random.nextInt(12), counting)
                            : Interval.ofMonths(months, counting);
                    return new Case(FIRST.plusDays(random.nextInt(DAYS)), interval);
                })
                .limit(1000);
    }

    private record Case(LocalDate done, Interval interval) {

        LocalDate due() {
            return interval.dueAfter(done);
        }
    }

    @ParameterizedTest
    @EnumSource(Counting.class)
    void whatIsDoneLaterIsNeverDueEarlier(Counting counting) {
        assertThat(cases(counting))
                .allSatisfy(one -> assertThat(one.interval().dueAfter(one.done().plusDays(1)))
                        .isAfterOrEqualTo(one.due()));
    }

    @ParameterizedTest
    @EnumSource(Counting.class)
    void theDueDayLiesAfterTheWholeLengthLessAMonth(Counting counting) {
        assertThat(cases(counting))
                .allSatisfy(one -> assertThat(one.due())
                        .isAfter(one.done())
                        .isAfterOrEqualTo(one.done().plusMonths(one.interval().months())));
    }

    @ParameterizedTest
    @EnumSource(Counting.class)
    void aShorterIntervalIsNeverDueLaterThanTheStandards(Counting counting) {
        Random random = new Random(7);
        assertThat(cases(counting).filter(one -> one.interval().months() > 1)).allSatisfy(one -> {
            int months = 1 + random.nextInt(one.interval().months() - 1);
            assertThat(one.interval().shortenedTo(months).dueAfter(one.done())).isBeforeOrEqualTo(one.due());
        });
    }

    @Test
    void calendarMonthsEndWithTheLastDayOfTheNthMonth() {
        assertThat(cases(Counting.END_OF_MONTH)).allSatisfy(one -> {
            assertThat(one.due().plusDays(1).getDayOfMonth()).isEqualTo(1);
            YearMonth counted = YearMonth.from(one.done());
            for (int month = 0; month < one.interval().months(); month++) {
                counted = counted.plusMonths(1);
            }
            assertThat(YearMonth.from(one.due())).isEqualTo(counted);
        });
    }

    @Test
    void calendarYearsEndOnTheLastDayOfDecember() {
        assertThat(cases(Counting.END_OF_YEAR)).allSatisfy(one -> {
            assertThat(one.due().getMonth()).isEqualTo(Month.DECEMBER);
            assertThat(one.due().getDayOfMonth()).isEqualTo(31);
            assertThat(one.due().getYear() - one.done().getYear())
                    .isEqualTo(one.interval().count());
        });
    }

    @Test
    void theWholeDayOfTheMonthOfCompletionMakesNoDifferenceToCalendarCounting() {
        Stream.of(Counting.END_OF_MONTH, Counting.FIXED_CALENDAR_QUARTER)
                .flatMap(CountingTest::cases)
                .forEach(one -> assertThat(one.interval().dueAfter(one.done().withDayOfMonth(1)))
                        .isEqualTo(one.due()));
    }

    @Test
    void everyCalendarQuarterEndsWithItsOwnLastDay() {
        assertThat(cases(Counting.FIXED_CALENDAR_QUARTER)).allSatisfy(one -> {
            LocalDate next = one.due().plusDays(1);
            assertThat(next.get(IsoFields.DAY_OF_QUARTER)).isEqualTo(1);
        });
    }

    @Test
    void anIntervalThatCannotBeCountedThatWayIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Interval.ofMonths(0, Counting.END_OF_MONTH));
        assertThatIllegalArgumentException().isThrownBy(() -> Interval.ofMonths(18, Counting.END_OF_YEAR));
        assertThatIllegalArgumentException().isThrownBy(() -> Interval.ofMonths(4, Counting.FIXED_CALENDAR_QUARTER));
    }

    @Test
    void theOwnersIntervalMustBeShorter() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Interval.ofMonths(4, Counting.END_OF_MONTH).shortenedTo(4))
                .withMessageContaining("shorter than 4 calendar months: 1 to 3 months");
    }
}
