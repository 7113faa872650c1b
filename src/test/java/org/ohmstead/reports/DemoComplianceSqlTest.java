package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;

/** The demo estate's last finished quarter as of 10 March 2026. */
@ServiceTest
@ActiveProfiles({"test", "demo"})
class DemoComplianceSqlTest {

    @Autowired
    private Compliance compliance;

    @Autowired
    private Access access;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void everyFigureIsThatOfTheDocumentedQuery() {
        access.asSystem("demo test", () -> {
            Quarter quarter = compliance.latestFinished();
            ComplianceSummary summary = compliance.summary(quarter, null);
            assertThat(summary.lines()).hasSizeGreaterThan(800);
            FiguresInSql.of(jdbc, quarter, null).agreeWith(summary);
            return null;
        });
    }
}
