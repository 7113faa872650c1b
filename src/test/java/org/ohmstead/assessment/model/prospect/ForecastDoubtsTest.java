package org.ohmstead.assessment.model.prospect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.forecast.DataDoubt;
import org.ohmstead.assessment.model.forecast.NextVisit;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.forecast.UnitForecast;

class ForecastDoubtsTest {

    private static List<UnitForecast> doubted(int count, DataDoubt doubt) {
        return IntStream.rangeClosed(1, 12)
                .mapToObj(k -> k <= count
                        ? Said.of(k).doubted(doubt).done()
                        : Said.of(k).done())
                .toList();
    }

    private static List<Doubt> doubts(List<UnitForecast> jars, List<UnitForecast> links, DataDoubt... ofString) {
        NextVisit next = new NextVisit(Said.DAY.plusYears(2), NextVisit.Governs.LONGEST_INTERVAL, false, -1);
        return ForecastDoubts.of(
                new StringForecast(Said.DAY, 2, jars, links, 0, 0.004, 0, 0.01, 0.015, next, Set.of(ofString)));
    }

    private static List<UnitForecast> sound() {
        return doubted(0, DataDoubt.PENDING_READING);
    }

    @Test
    void unitsWithoutDoubtsRaiseNone() {
        assertThat(doubts(sound(), sound())).isEmpty();
        assertThat(doubts(doubted(12, DataDoubt.NOT_IN_LAST_SURVEY), sound())).isEmpty();
    }

    @Test
    void sixAreNamedAndMoreAreCounted() {
        assertThat(doubts(doubted(6, DataDoubt.PENDING_READING), sound()))
                .containsExactly(new Doubt(Doubt.Kind.READ_APART, "Set aside until read again: jar 1, 2, 3, 4, 5, 6."));
        assertThat(doubts(sound(), doubted(9, DataDoubt.PENDING_READING)))
                .containsExactly(new Doubt(
                        Doubt.Kind.READ_APART, "Set aside until read again: link 1, 2, 3, 4, 5, 6 and 3 more."));
    }

    @Test
    void jarsAndLinksStandInOneSentence() {
        assertThat(doubts(doubted(1, DataDoubt.RENEWED_WITHOUT_RECORD), doubted(2, DataDoubt.RENEWED_WITHOUT_RECORD)))
                .singleElement()
                .satisfies(doubt -> {
                    assertThat(doubt.kind()).isEqualTo(Doubt.Kind.RENEWED_WITHOUT_RECORD);
                    assertThat(doubt.words()).endsWith("if there was one: jar 1; link 1, 2.");
                });
    }

    @Test
    void aWholeStringThatReadsLikeNewIsSaidOnceInsteadOfJarByJar() {
        assertThat(doubts(
                        doubted(12, DataDoubt.RENEWED_WITHOUT_RECORD),
                        sound(),
                        DataDoubt.STRING_RENEWED_WITHOUT_RECORD))
                .singleElement()
                .satisfies(doubt -> assertThat(doubt.words()).startsWith("The whole string reads like new"));
    }
}
