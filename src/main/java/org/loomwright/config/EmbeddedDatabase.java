package org.loomwright.config;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A real PostgreSQL server that the program brings along, on a folder that outlives it.
 *
 * <p>Listens on the loopback address only and asks every role for its password. Commits are durable: the library underneath is
 * made for tests and would lose them. A new server is made in {@code postgres.new} and renamed to {@code postgres} when it is
 * complete, so that a start that was broken off leaves nothing half-made behind. The server's programs (60 MB) are unpacked beside
 * it, where no other user can put theirs in their place. As root the library runs PostgreSQL in a user namespace of its own
 * ({@code unshare -U}), because PostgreSQL refuses to run as root; as anybody else it runs it plainly.
 */
public final class EmbeddedDatabase implements AutoCloseable {

    static final String OWNER = "loomwright_owner";
    static final String APP = "loomwright_app";
    static final String DATABASE = "loomwright";

    private static final Duration START_WAIT = Duration.ofMinutes(2);

    private final FolderLock lock;
    private final Postmaster postmaster;
    private final EmbeddedPostgres server;
    private final DatabasePasswords passwords;

    private EmbeddedDatabase(
            FolderLock lock,
            Postmaster postmaster,
            EmbeddedPostgres server,
            DatabasePasswords passwords) {
        this.lock = lock;
        this.postmaster = postmaster;
        this.server = server;
        this.passwords = passwords;
    }

    /**
     * Starts the server, after stopping one that a killed program left behind.
     *
     * @param dataDir the program's data folder, made if need be
     * @param port port to listen on, 0 for any free one
     * @return the running server
     * @throws IllegalStateException if another running program uses the folder, or the server will not start
     */
    public static EmbeddedDatabase start(Path dataDir, int port) {
        try {
            Path folder = Files.createDirectories(dataDir).toRealPath();
            FolderLock lock = FolderLock.take(folder.resolve("postgres.lock"));
            try {
                return start(lock, folder, port);
            } catch (IOException | InterruptedException | RuntimeException e) {
                lock.close();
                throw e;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while starting the database", e);
        }
    }

    private static EmbeddedDatabase start(FolderLock lock, Path dataDir, int port)
            throws IOException, InterruptedException {
        Path passwordFile = dataDir.resolve("postgres.passwords");
        Path folder = dataDir.resolve("postgres");
        if (Files.exists(folder) && !Files.exists(passwordFile)) {
            throw new IllegalStateException(
                    "%s is missing; without it nobody can log in to the database in %s"
                            .formatted(passwordFile, folder));
        }
        DatabasePasswords passwords = DatabasePasswords.readOrCreate(passwordFile);
        if (!Files.exists(folder)) {
            make(dataDir, folder, passwordFile, passwords);
        }
        Postmaster postmaster = new Postmaster(folder);
        postmaster.stopLeftOver();
        EmbeddedPostgres server = run(folder, port, passwordFile, passwords);
        return new EmbeddedDatabase(lock, postmaster, server, passwords);
    }

    private static void make(
            Path dataDir, Path folder, Path passwordFile, DatabasePasswords passwords)
            throws IOException, InterruptedException {
        Path unfinished = dataDir.resolve("postgres.new");
        new Postmaster(unfinished).stopLeftOver();
        deleteAll(unfinished);
        try (EmbeddedPostgres server = run(unfinished, 0, passwordFile, passwords)) {
            makeRoles(server, passwords);
        } catch (SQLException e) {
            throw new IllegalStateException("cannot set up the database", e);
        }
        new Postmaster(unfinished).stopLeftOver();
        Files.move(unfinished, folder, StandardCopyOption.ATOMIC_MOVE);
    }

    /** The options of {@code initdb} go by way of the "locale" settings, which the library hands over as they are. */
    private static EmbeddedPostgres run(
            Path folder, int port, Path passwordFile, DatabasePasswords passwords)
            throws IOException, InterruptedException {
        EmbeddedPostgres.Builder builder =
                EmbeddedPostgres.builder()
                        .setDataDirectory(folder)
                        .setOverrideWorkingDirectory(
                                folder.resolveSibling("postgres.programs").toFile())
                        .setCleanDataDirectory(false)
                        .setRegisterShutdownHook(false)
                        .setPGStartupWait(START_WAIT)
                        .setPort(port)
                        .setLocaleConfig("locale", "C")
                        .setLocaleConfig("locale-provider", "builtin")
                        .setLocaleConfig("builtin-locale", "C.UTF-8")
                        .setLocaleConfig("auth", "scram-sha-256")
                        .setLocaleConfig("pwfile", passwordFile.toString())
                        .setConnectConfig("password", passwords.superuser())
                        .setServerConfig("listen_addresses", "localhost")
                        .setServerConfig("unix_socket_directories", "")
                        .setServerConfig("max_connections", "100")
                        .setServerConfig("fsync", "on")
                        .setServerConfig("full_page_writes", "on")
                        .setServerConfig("synchronous_commit", "on");
        try {
            return builder.start();
        } catch (IOException | RuntimeException e) {
            new Postmaster(folder).stopLeftOver();
            throw new IllegalStateException(
                    "the database in %s does not start".formatted(folder), e);
        }
    }

    private static void makeRoles(EmbeddedPostgres server, DatabasePasswords passwords)
            throws SQLException {
        List<String> steps =
                List.of(
                        "create role %s login password '%s'".formatted(OWNER, passwords.owner()),
                        "create role %s login password '%s'".formatted(APP, passwords.app()),
                        "create database %s owner %s".formatted(DATABASE, OWNER),
                        "revoke all on database %s from public".formatted(DATABASE),
                        "grant connect on database %s to %s".formatted(DATABASE, APP));
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            for (String step : steps) {
                statement.execute(step);
            }
        }
    }

    private static void deleteAll(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** @return how to reach the database of this program */
    public DatabaseAccess access() {
        return new DatabaseAccess(
                "jdbc:postgresql://localhost:%d/%s".formatted(server.getPort(), DATABASE),
                new DatabaseAccess.Login(OWNER, passwords.owner()),
                new DatabaseAccess.Login(APP, passwords.app()));
    }

    /** Stops the server and waits until it has gone. */
    @Override
    public void close() {
        try (lock) {
            server.close();
            postmaster.stopLeftOver();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while stopping the database", e);
        }
    }
}
