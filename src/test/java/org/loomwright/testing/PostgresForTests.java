package org.loomwright.testing;

import org.flywaydb.core.Flyway;
import org.loomwright.config.DatabaseAccess;
import org.loomwright.config.DatabaseAccess.Login;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * PostgreSQL for tests: one server for the whole test run, a fresh database for whoever asks, migrated from empty once and then
 * copied. Roles are those of production: an owner, and an application that owns nothing.
 */
public final class PostgresForTests {

    private static final Login OWNER = new Login("test_owner", "owner of the tables");
    private static final Login APP = new Login("test_app", "application");
    private static final String TEMPLATE = "migrated";

    private static final AtomicInteger DATABASES = new AtomicInteger();

    private PostgresForTests() {}

    /** Gives a Spring context a fresh database. */
    public static final class FreshDatabase
            implements ApplicationContextInitializer<ConfigurableApplicationContext> {

        @Override
        public void initialize(ConfigurableApplicationContext context) {
            DatabaseAccess access = freshDatabase();
            TestPropertyValues.of(
                            "loomwright.database.url=" + access.url(),
                            "loomwright.database.owner-user=" + access.owner().user(),
                            "loomwright.database.owner-password=" + access.owner().password(),
                            "loomwright.database.app-user=" + access.app().user(),
                            "loomwright.database.app-password=" + access.app().password())
                    .applyTo(context);
        }
    }

    /** @return a database that nobody else uses, with every table and no loom */
    public static synchronized DatabaseAccess freshDatabase() {
        TestServer server = TestServer.running();
        if (DATABASES.get() == 0) {
            prepare(server);
        }
        String name = "test_" + DATABASES.incrementAndGet();
        run(
                server,
                "create database %s template %s owner %s".formatted(name, TEMPLATE, OWNER.user()),
                "revoke all on database %s from public".formatted(name),
                "grant connect on database %s to %s".formatted(name, APP.user()));
        return access(server, name);
    }

    /** Migrates a fresh database for an application that would work as the superuser. */
    public static void migrateForSuperuser() {
        DatabaseAccess fresh = freshDatabase();
        TestServer server = TestServer.running();
        run(server, "create database for_superuser owner " + OWNER.user());
        migrate(
                new DatabaseAccess(
                        server.url("for_superuser"),
                        fresh.owner(),
                        new Login(server.superuser(), server.password())));
    }

    private static void prepare(TestServer server) {
        run(
                server,
                "create role %s login password '%s'".formatted(OWNER.user(), OWNER.password()),
                "create role %s login password '%s'".formatted(APP.user(), APP.password()),
                "create database %s owner %s".formatted(TEMPLATE, OWNER.user()));
        migrate(access(server, TEMPLATE));
    }

    private static void migrate(DatabaseAccess access) {
        Flyway.configure()
                .dataSource(access.url(), access.owner().user(), access.owner().password())
                .placeholders(Map.of("appRole", access.app().user()))
                .load()
                .migrate();
    }

    private static DatabaseAccess access(TestServer server, String database) {
        return new DatabaseAccess(server.url(database), OWNER, APP);
    }

    private static void run(TestServer server, String... steps) {
        try (Connection connection =
                        DriverManager.getConnection(
                                server.url("postgres"), server.superuser(), server.password());
                Statement statement = connection.createStatement()) {
            for (String step : steps) {
                statement.execute(step);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
