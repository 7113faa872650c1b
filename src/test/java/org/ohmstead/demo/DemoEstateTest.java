package org.ohmstead.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;

class DemoEstateTest {

    private static final LocalDate TODAY = LocalDate.parse("2026-03-10");

    private final DemoEstate estate = DemoEstate.on(TODAY);

    @Test
    void theEstateHasTheSizeThatTheDemoPromises() {
        assertThat(Places.AREAS).hasSize(4);
        assertThat(Places.sites()).hasSize(40);
        assertThat(estate.strings()).hasSizeBetween(95, 105);
        assertThat(estate.strings())
                .extracting(DemoString::positions)
                .allMatch(positions -> positions >= 24 && positions <= 240)
                .contains(24, 240);
        assertThat(estate.strings().stream()
                        .map(string -> string.design().jarType().technology())
                        .collect(Collectors.toSet()))
                .hasSize(3);
    }

    @Test
    void siteCodesAreUnique() {
        assertThat(Places.sites()).extracting("code").doesNotHaveDuplicates();
        assertThat(Places.sites()).extracting("name").doesNotHaveDuplicates();
    }

    @Test
    void twoEstatesOfOneDayAreTheSame() {
        DemoEstate again = DemoEstate.on(TODAY);
        for (int i = 0; i < estate.strings().size(); i += 9) {
            assertThat(history(again.strings().get(i)))
                    .isEqualTo(history(estate.strings().get(i)));
        }
    }

    @Test
    void surveysGoBackEightYearsAndEndBeforeToday() {
        List<LocalDate> days = new ArrayList<>();
        estate.strings().forEach(string -> days.addAll(SurveyDays.of(string, TODAY)));
        assertThat(days)
                .allMatch(day ->
                        day.isBefore(TODAY) && !day.isBefore(TODAY.minusYears(8).minusDays(3)));
        assertThat(days).anyMatch(day -> day.isBefore(TODAY.minusYears(7).minusMonths(6)));
    }

    @Test
    void noSurveyFallsOnAMondaySoThatSampleFilesNeverMeetOneOfTheSameDay() {
        for (int day = 0; day < 7; day++) {
            DemoEstate other = DemoEstate.on(TODAY.plusDays(day));
            other.strings()
                    .forEach(string -> assertThat(SurveyDays.of(string, other.today()))
                            .noneMatch(on -> on.getDayOfWeek() == DayOfWeek.MONDAY));
        }
    }

    @Test
    void onlyTheStringsOfTheStoryAreLate() {
        List<String> late = estate.strings().stream()
                .filter(string -> last(SurveyDays.of(string, TODAY))
                        .plusMonths(string.entry().surveyIntervalMonths())
                        .isBefore(TODAY))
                .map(DemoString::title)
                .toList();
        assertThat(late).containsExactly(title(10, "C"), title(27, "A"), title(33, "B"));
    }

    @Test
    void aDryingJarRisesFarAboveItsNeighbours() {
        double[] ohmic = lastReadings(2, "A").ohmic();
        assertThat(ohmic[6] / ohmic[5]).isGreaterThan(1.4);
    }

    @Test
    void aShortedCellLosesVoltsAndOhmicValueTogether() {
        Readings last = lastReadings(12, "A");
        assertThat(last.volts()[25]).isLessThan(2.12);
        assertThat(last.ohmic()[25] / last.ohmic()[24]).isLessThan(0.85);
    }

    @Test
    void aRemadeLinkRisesAndComesBack() {
        DemoString string = estate.string(0, "B");
        List<NewSurvey> history = history(string);
        double best = last(history).readings().linkMicroohms()[19][0];
        LocalDate remade = TODAY.minusMonths(14);
        double worst = history.stream()
                .filter(survey -> survey.facts().takenOn().isBefore(remade))
                .mapToDouble(survey -> survey.readings().linkMicroohms()[19][0])
                .max()
                .orElseThrow();
        assertThat(worst / best).isGreaterThan(1.3);
    }

    @Test
    void theTestSetThatReadsHighIsTheOnlyOneInItsAreaToday() {
        assertThat(Instrument.inUse(2, TODAY, TODAY)).isEqualTo(new Instrument("TS-0923", 1.03));
        assertThat(Instrument.inUse(2, TODAY.minusYears(1), TODAY).reads()).isEqualTo(1);
        assertThat(Instrument.inUse(1, TODAY, TODAY).reads()).isEqualTo(1);
    }

    @Test
    void oneSurveyLostCurrentPastItsClamp() {
        var facts = last(history(estate.string(29, "A"))).facts();
        assertThat(facts.clampedAmps() / facts.injectedAmps()).isLessThan(0.92);
    }

    private Readings lastReadings(int site, String name) {
        return last(history(estate.string(site, name))).readings();
    }

    private List<NewSurvey> history(DemoString string) {
        return new Simulation(string, TODAY).history(1);
    }

    private String title(int site, String name) {
        return estate.string(site, name).title();
    }

    private static <T> T last(List<T> list) {
        return list.get(list.size() - 1);
    }
}
