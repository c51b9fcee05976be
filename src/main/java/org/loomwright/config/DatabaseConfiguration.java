package org.loomwright.config;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.boot.flyway.autoconfigure.FlywayConnectionDetails;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

import java.util.Map;

/**
 * The two ways into the database: Flyway goes as the owner of the tables, everything else as the application. Spring Boot makes
 * its connection pool and its migrations from these, so the server is up before the one and the tables before the other.
 */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(LoomwrightSettings.class)
class DatabaseConfiguration {

    @Bean(destroyMethod = "close")
    @Conditional(NoUrl.class)
    EmbeddedDatabase embeddedDatabase(LoomwrightSettings settings) {
        return EmbeddedDatabase.start(settings.dataDir(), settings.database().embeddedPort());
    }

    @Bean
    DatabaseAccess databaseAccess(
            LoomwrightSettings settings, ObjectProvider<EmbeddedDatabase> embedded) {
        EmbeddedDatabase own = embedded.getIfAvailable();
        return own == null ? settings.database().toAccess() : own.access();
    }

    @Bean
    JdbcConnectionDetails appConnection(DatabaseAccess access) {
        return new AppConnection(access);
    }

    @Bean
    FlywayConnectionDetails ownerConnection(DatabaseAccess access) {
        return new OwnerConnection(access);
    }

    @Bean
    FlywayConfigurationCustomizer appRoleInMigrations(DatabaseAccess access) {
        return flyway -> flyway.placeholders(Map.of("appRole", access.app().user()));
    }

    /** True where no server is named. */
    static final class NoUrl implements Condition {

        @Override
        public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
            return !StringUtils.hasText(
                    context.getEnvironment().getProperty("loomwright.database.url"));
        }
    }

    private record AppConnection(DatabaseAccess access) implements JdbcConnectionDetails {

        @Override
        public String getUsername() {
            return access.app().user();
        }

        @Override
        public String getPassword() {
            return access.app().password();
        }

        @Override
        public String getJdbcUrl() {
            return access.url();
        }
    }

    private record OwnerConnection(DatabaseAccess access) implements FlywayConnectionDetails {

        @Override
        public String getUsername() {
            return access.owner().user();
        }

        @Override
        public String getPassword() {
            return access.owner().password();
        }

        @Override
        public String getJdbcUrl() {
            return access.url();
        }
    }
}
