package org.loomwright.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;

import org.jspecify.annotations.Nullable;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * The one PostgreSQL server of this test run: the embedded one, or with {@code -Pcontainers} one in a container. It ends with the
 * run. Its commits need not outlive anything, so it does not wait for the disk.
 *
 * @param address host and port
 * @param superuser role that may make databases
 * @param password its password
 */
record TestServer(String address, String superuser, String password) {

    private static final String CHOICE = "loomwright.test.database";
    private static final String IMAGE = "postgres:17";

    private static @Nullable TestServer running;

    /** @return the server, started at the first call */
    static synchronized TestServer running() {
        TestServer server = running;
        if (server == null) {
            server = "container".equals(System.getProperty(CHOICE)) ? container() : embedded();
            running = server;
        }
        return server;
    }

    private static TestServer embedded() {
        try {
            EmbeddedPostgres server =
                    EmbeddedPostgres.builder()
                            .setLocaleConfig("locale", "C")
                            .setLocaleConfig("locale-provider", "builtin")
                            .setLocaleConfig("builtin-locale", "C.UTF-8")
                            .start();
            return new TestServer("localhost:" + server.getPort(), "postgres", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Asked for by name, so that a missing engine is a failure and never a silent skip. */
    @SuppressWarnings("resource")
    private static TestServer container() {
        if (!DockerClientFactory.instance().isDockerAvailable()) {
            throw new IllegalStateException(
                    "-Pcontainers needs a running Docker engine, and there is none");
        }
        PostgreSQLContainer server = new PostgreSQLContainer(IMAGE).withUsername("postgres");
        server.start();
        return new TestServer(
                server.getHost() + ":" + server.getFirstMappedPort(),
                server.getUsername(),
                server.getPassword());
    }

    /** @return JDBC URL of one of its databases */
    String url(String database) {
        return "jdbc:postgresql://%s/%s".formatted(address, database);
    }
}
