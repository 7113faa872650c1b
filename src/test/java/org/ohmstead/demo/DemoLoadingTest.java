package org.ohmstead.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.ledger.StringSurveys;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;

@ServiceTest
@ActiveProfiles({"test", "demo"})
class DemoLoadingTest {

    @Autowired
    private DemoLoading loading;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void theFirstStartLoadsTheEstateAndTheSecondLeavesItAsItIs() {
        List<Long> before = counts();
        assertThat(before.get(0)).isEqualTo(40);
        assertThat(before.get(1)).isBetween(95L, 105L);
        assertThat(before.get(2)).isGreaterThan(900);
        loading.run(new DefaultApplicationArguments());
        assertThat(counts()).isEqualTo(before);
    }

    @Test
    void everyStringHasAHistoryOfItsOwnLength() {
        java.util.ArrayList<StringSurveys> strings = new java.util.ArrayList<>();
        access.asSystem("demo test", () -> ledger.streamAll(strings::add));
        assertThat(strings).hasSize(counts().get(1).intValue());
        assertThat(strings).allSatisfy(string -> assertThat(string.surveys()).hasSizeGreaterThanOrEqualTo(2));
    }

    @Test
    void theFourPeopleOfTheSignInPageAreThere() {
        assertThat(jdbc.sql("select username from app_user where password_hash is not null order by username")
                        .query(String.class)
                        .list())
                .containsExactly("administrator", "crew", "engineer", "manager");
    }

    private List<Long> counts() {
        return List.of("site", "battery_string", "survey", "occupancy", "link", "app_user").stream()
                .map(table -> jdbc.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single())
                .toList();
    }
}
