package org.ohmstead.support;

import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** Points a test's application context to a fresh database, and gives it a clock that stands still until moved. */
@TestConfiguration(proxyBeanMethods = false)
class TestDatabaseConfiguration {

    @Bean
    JdbcConnectionDetails testDatabase() {
        TestDatabase.Access access = TestDatabase.create();
        return new JdbcConnectionDetails() {
            @Override
            public String getUsername() {
                return access.username();
            }

            @Override
            public String getPassword() {
                return access.password();
            }

            @Override
            public String getJdbcUrl() {
                return access.jdbcUrl();
            }
        };
    }

    @Bean
    @Primary
    SettableClock settableClock() {
        return new SettableClock();
    }
}
