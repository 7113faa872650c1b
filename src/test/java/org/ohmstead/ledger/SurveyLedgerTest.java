package org.ohmstead.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ohmstead.ledger.LedgerEstate.only;
import static org.ohmstead.ledger.LedgerEstate.signIn;
import static org.ohmstead.ledger.LedgerEstate.surveyOf;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@ServiceTest
@RecordApplicationEvents
class SurveyLedgerTest {

    private static final double NONE = Double.NaN;

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
    void aSurveyComesBackAsItWasHandedIn() {
        var place = estate.stringOf(3);
        SurveyFacts facts = new SurveyFacts(
                place.stringId(),
                Instant.parse("2024-06-30T23:30:00.123456Z"),
                LocalDate.parse("2024-07-01"),
                "A. Crew",
                "SN 4711",
                LocalDate.parse("2025-01-31"),
                OhmicKind.CONDUCTANCE,
                60,
                21.4,
                135.02,
                0.41,
                1.2,
                0.05,
                10.1,
                9.8,
                false,
                "lid of 2 cracked; ω");
        Readings readings = new Readings(
                new double[] {812.5, NONE, 799},
                new double[] {2.251, 2.249, NONE},
                new double[] {NONE, 22.1, 22.4},
                new double[] {1.215, 1.214, 1.2155},
                new double[][] {{31.2}, {24.6, 25.1}, {24.9, NONE}, {30.8}});
        byte[] sha = new byte[32];
        sha[31] = 9;
        UUID upload = UUID.fromString("6f2b8c1e-1111-4222-8333-944455556666");

        long id = ledger.accept(new NewSurvey(facts, readings, upload, sha));

        SurveyRecord kept = ledger.survey(id);
        assertThat(kept.facts()).isEqualTo(facts);
        assertThat(kept.readings().ohmic()).containsExactly(812.5, NONE, 799);
        assertThat(kept.readings().volts()).containsExactly(2.251, 2.249, NONE);
        assertThat(kept.readings().celsius()).containsExactly(NONE, 22.1, 22.4);
        assertThat(kept.readings().gravity()).containsExactly(1.215, 1.214, 1.2155);
        assertThat(Arrays.deepToString(kept.readings().linkMicroohms())).isEqualTo(Arrays.deepToString(new double[][] {
            {31.2, NONE}, {24.6, 25.1}, {24.9, NONE}, {30.8, NONE}
        }));
        assertThat(kept.uploadId()).isEqualTo(upload);
        assertThat(kept.rawSha256()).isEqualTo(sha);
        assertThat(kept.recordedBy()).isEqualTo("engineer.test");
        assertThat(kept.stands()).isTrue();
        assertThat(ledger.surveysOf(place.stringId()).get(0).facts()).isEqualTo(facts);
    }

    @Test
    void whatWasNotMeasuredStaysUnmeasured() {
        var place = estate.stringOf(2);
        SurveyFacts facts = surveyOf(place, "2024-01-01T10:00:00Z");
        long id = ledger.accept(NewSurvey.of(facts, Readings.ofOhmic(NONE, NONE)));
        SurveyRecord kept = ledger.survey(id);
        assertThat(kept.facts()).isEqualTo(facts);
        assertThat(kept.facts().instrument()).isNull();
        assertThat(kept.readings().ohmic()).containsExactly(NONE, NONE);
        assertThat(kept.readings().gravity()).containsExactly(NONE, NONE);
        assertThat(Arrays.deepToString(kept.readings().linkMicroohms()))
                .isEqualTo(Arrays.deepToString(new double[][] {{NONE}, {NONE}, {NONE}}));
    }

    @Test
    void aMissingValueIsANullElementInTheTableAndAnUnmeasuredKindIsNull() {
        var place = estate.stringOf(3);
        double[] none = {};
        Readings readings = new Readings(
                new double[] {0.4, NONE, 0.5}, new double[] {NONE, NONE, NONE}, none, none, new double[][] {});
        long id = ledger.accept(NewSurvey.of(surveyOf(place, "2024-01-01T10:00:00Z"), readings));
        assertThat(text("select ohmic::text from survey where id = ?", id)).isEqualTo("{0.4,NULL,0.5}");
        assertThat(jdbc.sql("select num_nulls(volts, celsius, gravity, link_microohms) from survey where id = ?")
                        .param(id)
                        .query(Integer.class)
                        .single())
                .isEqualTo(4);
    }

    @Test
    void aSurveyOfTheWrongLengthIsRefused() {
        var place = estate.stringOf(3);
        NewSurvey tooShort = NewSurvey.of(surveyOf(place, "2024-01-01T10:00:00Z"), Readings.ofOhmic(0.4, 0.4));
        assertThatThrownBy(() -> ledger.accept(tooShort))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.flaws())
                                .singleElement()
                                .satisfies(flaw -> assertThat(flaw.message())
                                        .isEqualTo("The survey has 2 positions, the string has 3.")));
    }

    @Test
    void acceptanceIsAnnouncedAndAudited() {
        var place = estate.stringOf(1);
        long id = accept(place, "2024-01-01T10:00:00Z", 0.4);
        assertThat(events.stream(SurveyAccepted.class)).containsExactly(new SurveyAccepted(place.stringId(), id));
        assertThat(text(
                        "select action || ' ' || actor from audit_entry where subject_kind = 'survey' and subject_id = ?",
                        Long.toString(id)))
                .isEqualTo("survey accepted engineer.test");
    }

    @Test
    void surveysComeOldestFirstWhateverTheOrderOfTheirArrival() {
        var place = estate.stringOf(1);
        accept(place, "2024-01-01T10:00:00Z", 0.42);
        accept(place, "2022-01-01T10:00:00Z", 0.40);
        accept(place, "2023-01-01T10:00:00Z", 0.41);
        assertThat(ledger.surveysOf(place.stringId()))
                .extracting(survey -> survey.readings().ohmic()[0])
                .containsExactly(0.40, 0.41, 0.42);
    }

    @Test
    void aVoidedSurveyNoLongerCountsUntilItIsRestored() {
        var place = estate.stringOf(1);
        long id = accept(place, "2024-01-01T10:00:00Z", 0.4);
        ledger.withdraw(id, "wrong site");
        assertThat(ledger.surveysOf(place.stringId())).isEmpty();
        assertThat(ledger.allSurveysOf(place.stringId()))
                .singleElement()
                .satisfies(survey -> assertThat(survey.withdrawal())
                        .extracting("kind", "reason", "by")
                        .containsExactly(Withdrawal.Kind.VOIDED, "wrong site", "engineer.test"));
        assertThat(events.stream(SurveyWithdrawn.class)).containsExactly(new SurveyWithdrawn(place.stringId(), id));
        ledger.restore(id, "it was the right site");
        assertThat(ledger.surveysOf(place.stringId())).hasSize(1);
        assertThat(ledger.survey(id).stands()).isTrue();
        ledger.withdraw(id, "it was not");
        assertThat(ledger.survey(id).stands()).isFalse();
    }

    @Test
    void aSupersededSurveyNamesItsSuccessor() {
        var place = estate.stringOf(1);
        long wrong = accept(place, "2024-01-01T10:00:00Z", 4.0);
        long right = accept(place, "2024-01-01T10:00:00Z", 0.4);
        ledger.supersede(wrong, right, "unit slip");
        assertThat(ledger.surveysOf(place.stringId()))
                .extracting(SurveyRecord::id)
                .containsExactly(right);
        assertThat(ledger.survey(wrong).withdrawal())
                .extracting("kind", "supersededBy")
                .containsExactly(Withdrawal.Kind.SUPERSEDED, right);
    }

    @Test
    void whatDoesNotFitTheStateOfASurveyIsAConflict() {
        var place = estate.stringOf(1);
        long first = accept(place, "2024-01-01T10:00:00Z", 0.4);
        long second = accept(place, "2024-02-01T10:00:00Z", 0.4);
        long elsewhere = accept(estate.stringOf(1), "2024-01-01T10:00:00Z", 0.4);
        assertThatThrownBy(() -> ledger.restore(first, "why not")).isInstanceOf(Conflict.class);
        assertThatThrownBy(() -> ledger.supersede(first, first, "itself")).isInstanceOf(Conflict.class);
        assertThatThrownBy(() -> ledger.supersede(first, elsewhere, "other string"))
                .isInstanceOf(Conflict.class);
        ledger.withdraw(first, "wrong");
        assertThatThrownBy(() -> ledger.withdraw(first, "again")).isInstanceOf(Conflict.class);
        assertThatThrownBy(() -> ledger.supersede(second, first, "by a void one"))
                .isInstanceOf(Conflict.class);
        assertThatThrownBy(() -> ledger.withdraw(second, "  ")).isInstanceOf(Refused.class);
    }

    @Test
    void theLedgerStandsAgainstUpdateDeleteAndTruncate() {
        var place = estate.stringOf(1);
        long id = accept(place, "2024-01-01T10:00:00Z", 0.4);
        ledger.withdraw(id, "wrong");
        for (String table : List.of("survey", "survey_withdrawal")) {
            for (String change : List.of(
                    "update " + table + " set string_id = string_id",
                    "delete from " + table,
                    "truncate " + table + " cascade")) {
                assertThatThrownBy(() -> jdbc.sql(change).update()).hasMessageContaining("is append-only");
            }
        }
    }

    @Test
    void theDatabaseItselfRefusesNaNAndInfinityAndLopsidedArrays() {
        var place = estate.stringOf(2);
        for (String columns : List.of(
                "'{NaN,1}', null, null",
                "'{1,Infinity}', null, null",
                "'{1,1}', '{2,NaN}', null",
                "'{1,1}', '{2}', null",
                "'{1,1}', null, '{1,1}'",
                "'{1,1}', null, '{1,NaN,1}'",
                "'{}', null, null")) {
            assertThatThrownBy(() -> insertRow(place, columns)).hasMessageContaining("violates check constraint");
        }
        insertRow(place, "'{1,NULL}', '{NULL,2}', '{1,2,NULL}'");
    }

    @Test
    void crewHandsInWithinReachAndSettlesNothing() {
        var near = estate.stringOf(1);
        var far = estate.stringOf(1);
        long farSurvey = accept(far, "2024-01-01T10:00:00Z", 0.4);
        signIn(Role.CREW, only(near));
        long nearSurvey = accept(near, "2024-01-01T10:00:00Z", 0.4);
        assertThatThrownBy(() -> accept(far, "2024-02-01T10:00:00Z", 0.4)).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> ledger.survey(farSurvey)).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> ledger.surveysOf(far.stringId())).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> ledger.allSurveysOf(far.stringId())).isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> ledger.withdraw(nearSurvey, "mine")).isInstanceOf(AccessDeniedException.class);
        signIn(Role.ENGINEER, only(near));
        assertThatThrownBy(() -> ledger.withdraw(farSurvey, "not mine")).isInstanceOf(NotFound.class);
        signIn(Role.MANAGER, Reach.EVERYWHERE);
        assertThatThrownBy(() -> accept(near, "2024-03-01T10:00:00Z", 0.4)).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void listsShowOnlyWhatIsInReachLatestFirst() {
        var near = estate.stringOf(1);
        var far = estate.stringOf(1);
        long older = accept(near, "2024-05-01T10:00:00Z", 0.4);
        long newer = accept(near, "2024-01-01T10:00:00Z", 0.4);
        ledger.withdraw(newer, "wrong");
        accept(far, "2024-01-01T10:00:00Z", 0.4);
        signIn(Role.CREW, only(near));
        assertThat(ledger.recent(10)).extracting(SurveyEntry::surveyId).containsExactly(newer, older);
        assertThat(ledger.recent(10)).extracting(SurveyEntry::stands).containsExactly(false, true);
        assertThat(ledger.recent(1)).hasSize(1);
        assertThat(ledger.recentAt(near.siteId(), 10))
                .extracting(SurveyEntry::surveyId)
                .containsExactly(older, newer);
        assertThat(ledger.recentAt(far.siteId(), 10)).isEmpty();
    }

    @Test
    void theStreamGivesStringsWholeAndInOrderWithinReach() {
        var near = estate.stringOf(1);
        var far = estate.stringOf(1);
        accept(far, "2024-01-01T10:00:00Z", 0.3);
        accept(near, "2024-01-01T10:00:00Z", 0.42);
        accept(near, "2023-01-01T10:00:00Z", 0.41);
        ledger.withdraw(accept(near, "2022-01-01T10:00:00Z", 0.40), "wrong");
        assertThat(streamed())
                .extracting(StringSurveys::stringId)
                .contains(near.stringId(), far.stringId())
                .isSorted();
        signIn(Role.MANAGER, only(near));
        assertThat(streamed()).singleElement().satisfies(string -> {
            assertThat(string.stringId()).isEqualTo(near.stringId());
            assertThat(string.surveys())
                    .extracting(survey -> survey.readings().ohmic()[0])
                    .containsExactly(0.41, 0.42);
        });
    }

    @Test
    void theViewsGiveOneRowAReadingOfStandingSurveys() {
        var place = estate.stringOf(2);
        Readings readings = new Readings(
                new double[] {0.4, NONE}, new double[] {2.25, 2.24}, new double[] {}, new double[] {}, new double[][] {
                    {30.5}, {24.6, 25.1}, {NONE, 31}
                });
        ledger.accept(NewSurvey.of(surveyOf(place, "2024-01-01T10:00:00Z"), readings));
        ledger.withdraw(accept(place, "2024-02-01T10:00:00Z", 0.9, 0.9), "wrong");
        assertThat(rows(
                        "select position || ' ' || coalesce(ohmic::text, '-') || ' ' || volts || ' '"
                                + " || coalesce(celsius::text, '-') from jar_reading where string_id = ? order by position",
                        place))
                .containsExactly("1 0.4 2.25 -", "2 - 2.24 -");
        assertThat(rows(
                        "select ordinal || '.' || strap || ' ' || microohms from link_reading where string_id = ?"
                                + " order by ordinal, strap",
                        place))
                .containsExactly("0.1 30.5", "1.1 24.6", "1.2 25.1", "2.2 31");
        assertThat(jdbc.sql("select avg(ohmic) from jar_reading where string_id = ?")
                        .param(place.stringId())
                        .query(Double.class)
                        .single())
                .as("an average passes over what was not measured")
                .isEqualTo(0.4, org.assertj.core.api.Assertions.within(1e-7));
    }

    private List<StringSurveys> streamed() {
        List<StringSurveys> strings = new ArrayList<>();
        ledger.streamAll(strings::add);
        return strings;
    }

    private long accept(LedgerEstate.Place place, String takenAt, double... ohmic) {
        return ledger.accept(NewSurvey.of(surveyOf(place, takenAt), Readings.ofOhmic(ohmic)));
    }

    private void insertRow(LedgerEstate.Place place, String columns) {
        jdbc.sql(
                        "insert into survey (string_id, taken_at, taken_on, recorded_at, recorded_by, ohmic_kind, ohmic, volts,"
                                + " link_microohms) values (?, now(), '2024-01-01', now(), 'x', 'IMPEDANCE', " + columns
                                + ")")
                .param(place.stringId())
                .update();
    }

    private String text(String sql, Object parameter) {
        return jdbc.sql(sql).param(parameter).query(String.class).single();
    }

    private List<String> rows(String sql, LedgerEstate.Place place) {
        return jdbc.sql(sql).param(place.stringId()).query(String.class).list();
    }
}
