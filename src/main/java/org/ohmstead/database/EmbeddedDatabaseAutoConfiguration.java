package org.ohmstead.database;

import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.AutoConfiguration;
import org.springframework.boot.autoconfigure.condition.ConditionalOnMissingBean;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;

/** Brings the embedded server, unless the environment names a database ({@code SPRING_DATASOURCE_URL}). */
@AutoConfiguration(before = DataSourceAutoConfiguration.class)
@ConditionalOnProperty(name = "spring.datasource.url", havingValue = "embedded", matchIfMissing = true)
@ConditionalOnMissingBean(JdbcConnectionDetails.class)
class EmbeddedDatabaseAutoConfiguration {

    @Bean
    EmbeddedDatabase embeddedDatabase(@Value("${ohmstead.database.directory}") Path directory) {
        return EmbeddedDatabase.startIn(directory);
    }

    @Bean
    JdbcConnectionDetails embeddedDatabaseConnection(EmbeddedDatabase database) {
        return new Connection(database);
    }

    private record Connection(EmbeddedDatabase database) implements JdbcConnectionDetails {

        @Override
        public String getUsername() {
            return database.username();
        }

        @Override
        public String getPassword() {
            return database.password();
        }

        @Override
        public String getJdbcUrl() {
            return database.jdbcUrl();
        }
    }
}
