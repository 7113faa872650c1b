package org.ohmstead.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ohmstead.ledger.LedgerEstate.only;
import static org.ohmstead.ledger.LedgerEstate.signIn;
import static org.ohmstead.ledger.LedgerEstate.surveyOf;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@ServiceTest
@RecordApplicationEvents
class BulkLedgerTest {

    private static final double NONE = Double.NaN;

    @Autowired
    private BulkLedger bulk;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private ApplicationEvents events;

    private LedgerEstate estate;

    @BeforeEach
    void anEngineerIsSignedIn() {
        estate = new LedgerEstate(jdbc);
        signIn(Role.ENGINEER, Reach.EVERYWHERE);
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    @Test
    void aCopiedSurveyEqualsTheSameSurveyAccepted() {
        var place = estate.stringOf(240);
        NewSurvey survey = new NewSurvey(
                surveyOf(place, "2024-06-30T23:30:00.123456Z"),
                twoStraps(240, new Random(5)),
                UUID.fromString("6f2b8c1e-1111-4222-8333-944455556666"),
                new byte[32]);
        ledger.accept(survey);
        NewSurvey later = new NewSurvey(
                surveyOf(place, "2024-07-30T23:30:00.123456Z"),
                survey.readings(),
                survey.uploadId(),
                survey.rawSha256());
        bulk.copyIn(Stream.of(later));
        SurveyRecord accepted = ledger.surveysOf(place.stringId()).get(0);
        SurveyRecord copied = ledger.surveysOf(place.stringId()).get(1);
        assertThat(copied.facts()).isEqualTo(later.facts());
        assertThat(copied.readings()).isEqualTo(accepted.readings()).isEqualTo(survey.readings());
        assertThat(copied)
                .usingRecursiveComparison()
                .ignoringFields("id", "facts", "readings")
                .isEqualTo(accepted);
    }

    @Test
    void loadingAHistoryTwiceDoesNotDoubleIt() {
        var place = estate.stringOf(4);
        List<NewSurvey> history = history(place, 25);
        assertThat(bulk.copyIn(history.stream())).isEqualTo(new BulkOutcome(25, 0, List.of()));
        assertThat(bulk.copyIn(history.stream())).isEqualTo(new BulkOutcome(0, 25, List.of()));
        assertThat(ledger.surveysOf(place.stringId())).hasSize(25);
    }

    @Test
    void aSurveyTwiceInOneLoadIsStoredOnce() {
        var place = estate.stringOf(4);
        List<NewSurvey> history = history(place, 3);
        BulkOutcome outcome = bulk.copyIn(Stream.concat(history.stream(), history.stream()));
        assertThat(outcome).isEqualTo(new BulkOutcome(3, 3, List.of()));
    }

    @Test
    void anAcceptedSurveyIsRecognisedThoughItsDigitsExceedWhatIsStored() {
        var place = estate.stringOf(2);
        NewSurvey survey =
                NewSurvey.of(surveyOf(place, "2024-01-01T10:00:00Z"), Readings.ofOhmic(0.123456789012, 1.0 / 3));
        ledger.accept(survey);
        assertThat(bulk.copyIn(Stream.of(survey))).isEqualTo(new BulkOutcome(0, 1, List.of()));
    }

    @Test
    void anotherSurveyOfTheSameInstantIsReportedAndNotStored() {
        var place = estate.stringOf(1);
        SurveyFacts facts = surveyOf(place, "2024-01-01T10:00:00Z");
        bulk.copyIn(Stream.of(NewSurvey.of(facts, Readings.ofOhmic(0.4))));
        BulkOutcome outcome = bulk.copyIn(Stream.of(NewSurvey.of(facts, Readings.ofOhmic(0.5))));
        assertThat(outcome).isEqualTo(new BulkOutcome(0, 0, List.of(facts)));
        assertThat(ledger.surveysOf(place.stringId())).hasSize(1);
    }

    @Test
    void aVoidedSurveyDoesNotComeBackByLoadingItsHistoryAgain() {
        var place = estate.stringOf(1);
        List<NewSurvey> history = history(place, 2);
        bulk.copyIn(history.stream());
        ledger.withdraw(ledger.surveysOf(place.stringId()).get(0).id(), "wrong site");
        assertThat(bulk.copyIn(history.stream()).stored()).isZero();
        assertThat(ledger.surveysOf(place.stringId())).hasSize(1);
    }

    @Test
    void aLoadOfMoreThanABatchArrivesWhole() {
        var place = estate.stringOf(2);
        assertThat(bulk.copyIn(history(place, 2_300).stream()).stored()).isEqualTo(2_300);
        assertThat(ledger.surveysOf(place.stringId())).hasSize(2_300);
    }

    @Test
    void oneBadSurveyLeavesNothingOfTheLoadBehind() {
        var place = estate.stringOf(2);
        NewSurvey tooShort = NewSurvey.of(surveyOf(place, "2024-01-01T10:00:00Z"), Readings.ofOhmic(0.4));
        Stream<NewSurvey> load = Stream.concat(history(place, 1_500).stream(), Stream.of(tooShort));
        assertThatThrownBy(() -> bulk.copyIn(load)).isInstanceOf(Refused.class);
        assertThat(ledger.surveysOf(place.stringId())).isEmpty();
    }

    @Test
    void anInfiniteReadingBreaksOffCleanly() {
        var place = estate.stringOf(1);
        NewSurvey infinite =
                NewSurvey.of(surveyOf(place, "2024-01-01T10:00:00Z"), Readings.ofOhmic(Double.POSITIVE_INFINITY));
        assertThatThrownBy(() -> bulk.copyIn(Stream.of(infinite))).isInstanceOf(IllegalArgumentException.class);
        assertThat(ledger.surveysOf(place.stringId())).isEmpty();
        assertThat(bulk.copyIn(history(place, 3).stream()).stored()).isEqualTo(3);
    }

    @Test
    void aStringOutOfReachStopsTheLoad() {
        var near = estate.stringOf(1);
        var far = estate.stringOf(1);
        signIn(Role.CREW, only(near));
        assertThatThrownBy(() -> bulk.copyIn(history(far, 1).stream())).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> bulk.copyIn(history(new LedgerEstate.Place(0, 0, Long.MAX_VALUE, 1), 1).stream()))
                .isInstanceOf(NotFound.class);
    }

    @Test
    void aLoadIsAnnouncedOnceWithTheStringsThatHaveNews() {
        var one = estate.stringOf(1);
        var two = estate.stringOf(1);
        bulk.copyIn(history(one, 2).stream());
        bulk.copyIn(Stream.concat(history(one, 2).stream(), history(two, 2).stream()));
        bulk.copyIn(history(one, 2).stream());
        assertThat(events.stream(HistoryLoaded.class))
                .containsExactly(new HistoryLoaded(Set.of(one.stringId())), new HistoryLoaded(Set.of(two.stringId())));
    }

    private static List<NewSurvey> history(LedgerEstate.Place place, int surveys) {
        Random random = new Random(place.stringId());
        Instant first = Instant.parse("2016-01-01T10:00:00Z");
        List<NewSurvey> history = new ArrayList<>();
        for (int i = 0; i < surveys; i++) {
            String takenAt = first.plus(Duration.ofDays(i)).toString();
            history.add(NewSurvey.of(surveyOf(place, takenAt), twoStraps(place.positions(), random)));
        }
        return history;
    }

    /** Random readings of six digits, some missing. */
    private static Readings twoStraps(int positions, Random random) {
        double[][] links = new double[positions + 1][];
        for (int i = 0; i < links.length; i++) {
            links[i] = some(2, 20, random);
        }
        return new Readings(
                some(positions, 0.4, random),
                some(positions, 2.2, random),
                some(positions, 21, random),
                some(positions, 1.2, random),
                links);
    }

    private static double[] some(int count, double base, Random random) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = random.nextInt(10) == 0 ? NONE : Math.round(base * (1 + random.nextDouble()) * 1e3) / 1e3;
        }
        return values;
    }
}
