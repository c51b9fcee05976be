package org.loomwright.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.LoomwrightApplication;
import org.loomwright.testing.PostgresForTests;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.nio.file.Path;
import java.util.UUID;

/** The program as a person starts it: no database named, an empty folder. */
class StartIntegrationTest {

    @TempDir private Path folder;

    @Test
    void startsOnAnEmptyFolderAndFindsItsRowsAgain() {
        UUID id = UUID.randomUUID();
        try (ConfigurableApplicationContext program = start()) {
            JdbcClient jdbc = program.getBean(JdbcClient.class);
            assertThat(jdbc.sql("select current_user").query(String.class).single())
                    .isEqualTo(EmbeddedDatabase.APP);
            jdbc.sql("insert into idempotency_key values ('test', ?, repeat('a', 64), 'x', now())")
                    .param(id.toString())
                    .update();
        }
        try (ConfigurableApplicationContext program = start()) {
            assertThat(
                            program.getBean(JdbcClient.class)
                                    .sql("select resource_id from idempotency_key where key = ?")
                                    .param(id.toString())
                                    .query(String.class)
                                    .single())
                    .isEqualTo("x");
        }
    }

    @Test
    void aRoleThatCouldChangeWhatIsFrozenIsRefused() {
        assertThatThrownBy(PostgresForTests::migrateForSuperuser)
                .hasStackTraceContaining("must neither be a superuser nor belong to");
    }

    private ConfigurableApplicationContext start() {
        return SpringApplication.run(
                LoomwrightApplication.class,
                "--loomwright.data-dir=" + folder,
                "--server.port=0",
                "--server.address=127.0.0.1");
    }
}
