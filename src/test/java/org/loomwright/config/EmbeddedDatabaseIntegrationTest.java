package org.loomwright.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.config.DatabaseAccess.Login;
import org.loomwright.testing.PostgresForTests;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

@Timeout(value = 5, unit = TimeUnit.MINUTES)
class EmbeddedDatabaseIntegrationTest {

    @TempDir private Path folder;

    /** The library unpacks PostgreSQL once a run; with the tests' own server up, not once for every folder below. */
    @BeforeAll
    static void unpackOnce() {
        assertThat(PostgresForTests.freshDatabase().url()).startsWith("jdbc:postgresql:");
    }

    @Test
    void commitsAreDurableAndOnlyThisMachineIsHeard() throws SQLException {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder, 0)) {
            Map<String, String> settings = new TreeMap<>();
            for (String name :
                    new String[] {
                        "fsync",
                        "full_page_writes",
                        "synchronous_commit",
                        "listen_addresses",
                        "password_encryption"
                    }) {
                settings.put(name, ask(database.access(), "show " + name));
            }
            assertThat(settings)
                    .containsEntry("fsync", "on")
                    .containsEntry("full_page_writes", "on")
                    .containsEntry("synchronous_commit", "on")
                    .containsEntry("listen_addresses", "localhost")
                    .containsEntry("password_encryption", "scram-sha-256");
        }
    }

    @Test
    void nobodyGetsInWithoutThePassword() {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder, 0)) {
            String url = database.access().url();
            for (String user :
                    new String[] {EmbeddedDatabase.APP, EmbeddedDatabase.OWNER, "postgres"}) {
                assertThatThrownBy(() -> DriverManager.getConnection(url, user, "guess").close())
                        .isInstanceOfSatisfying(
                                SQLException.class,
                                refusal -> assertThat(refusal.getSQLState()).isEqualTo("28P01"));
            }
        }
    }

    @Test
    void passwordsAreReadableByTheirOwnerOnly() throws IOException {
        DatabasePasswords made = DatabasePasswords.readOrCreate(folder.resolve("passwords"));
        assertThat(
                        PosixFilePermissions.toString(
                                Files.getPosixFilePermissions(folder.resolve("passwords"))))
                .isEqualTo("rw-------");
        assertThat(made.app()).hasSizeGreaterThan(30).isNotEqualTo(made.owner());
        assertThat(made.toString()).doesNotContain(made.app());
        assertThat(DatabasePasswords.readOrCreate(folder.resolve("passwords"))).isEqualTo(made);
    }

    @Test
    void whatWasWrittenIsThereAfterARestart() throws SQLException {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder, 0)) {
            write(database.access(), "kept");
        }
        assertThat(new Postmaster(folder.resolve("postgres")))
                .satisfies(postmaster -> assertThat(postmaster.findRunning()).isEmpty());
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder, 0)) {
            assertThat(ask(database.access(), "select word from note")).isEqualTo("kept");
        }
    }

    @Test
    void aSecondProgramIsKeptOffTheFolder() {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder, 0)) {
            assertThat(database.access().url()).contains("localhost");
            assertThatThrownBy(() -> EmbeddedDatabase.start(folder, 0))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("another running program uses the data folder");
        }
    }

    @Test
    void aStartThatWasBrokenOffLeavesNothingHalfMade() throws IOException, SQLException {
        Files.createDirectories(folder.resolve("postgres.new/base"));
        Files.writeString(folder.resolve("postgres.new/postgresql.conf"), "");
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder, 0)) {
            assertThat(ask(database.access(), "select 1")).isEqualTo("1");
        }
        assertThat(folder.resolve("postgres.new")).doesNotExist();
    }

    @Test
    void aLostPasswordFileIsSaidPlainly() throws IOException {
        Files.createDirectories(folder.resolve("postgres"));
        assertThatThrownBy(() -> EmbeddedDatabase.start(folder, 0))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("postgres.passwords is missing");
    }

    @Test
    void aServerLeftOverByAKilledProgramIsStoppedAndItsCommitsAreThere()
            throws IOException, InterruptedException, SQLException {
        Process program = startInAnotherProgram();
        Postmaster postmaster = new Postmaster(folder.resolve("postgres").toRealPath());
        ProcessHandle leftOver = postmaster.findRunning().orElseThrow();
        program.destroyForcibly().waitFor();
        assertThat(leftOver.isAlive()).as("the server outlives the killed program").isTrue();

        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder, 0)) {
            assertThat(ask(database.access(), "select word from note")).isEqualTo("committed");
            assertThat(postmaster.findRunning().orElseThrow().pid()).isNotEqualTo(leftOver.pid());
        }
        assertThat(postmaster.findRunning()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"another program", "no program"})
    void aPidFileThatNamesNoPostgresIsRemovedAndNobodyIsStopped(String named)
            throws IOException, InterruptedException {
        Process bystander = new ProcessBuilder("sleep", "600").start();
        try {
            if (named.equals("no program")) {
                bystander.destroyForcibly().waitFor();
            }
            Files.writeString(
                    folder.resolve("postmaster.pid"), bystander.pid() + "\n" + folder + "\n");
            new Postmaster(folder).stopLeftOver();
            assertThat(folder.resolve("postmaster.pid")).doesNotExist();
            assertThat(bystander.isAlive()).isEqualTo(named.equals("another program"));
        } finally {
            bystander.destroyForcibly();
        }
    }

    @Test
    void aServerOnAnotherFolderIsLeftAlone() throws IOException, InterruptedException {
        Path other = Files.createDirectories(folder.resolve("other"));
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder.resolve("own"), 0)) {
            Path pidFile = folder.resolve("own/postgres/postmaster.pid");
            Files.copy(pidFile, other.resolve("postmaster.pid"));
            new Postmaster(other).stopLeftOver();
            assertThat(new Postmaster(folder.resolve("own/postgres")).findRunning()).isPresent();
            assertThat(database.access().app().user()).isEqualTo(EmbeddedDatabase.APP);
        }
    }

    private Process startInAnotherProgram() throws IOException {
        Process program =
                new ProcessBuilder(
                                ProcessHandle.current().info().command().orElseThrow(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                StartAndWrite.class.getName(),
                                folder.toString())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        BufferedReader output = program.inputReader();
        String line = output.readLine();
        while (line != null && !line.equals(StartAndWrite.WRITTEN)) {
            line = output.readLine();
        }
        assertThat(line).as("the other program has committed").isEqualTo(StartAndWrite.WRITTEN);
        return program;
    }

    /** The program to be killed: starts the server, commits one row, then waits for ever. */
    static final class StartAndWrite {

        static final String WRITTEN = "written";

        private StartAndWrite() {}

        public static void main(String[] args) throws SQLException, IOException {
            EmbeddedDatabase database = EmbeddedDatabase.start(Path.of(args[0]), 0);
            write(database.access(), "committed");
            System.out.println(WRITTEN);
            int end = System.in.read();
            throw new IllegalStateException("not killed but told to go on with " + end);
        }
    }

    private static void write(DatabaseAccess access, String word) throws SQLException {
        try (Connection connection = connect(access, access.owner());
                Statement statement = connection.createStatement()) {
            statement.execute("create table note (word text)");
            statement.execute("insert into note values ('%s')".formatted(word));
        }
    }

    private static String ask(DatabaseAccess access, String question) throws SQLException {
        try (Connection connection = connect(access, access.owner());
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(question)) {
            assertThat(rows.next()).isTrue();
            return rows.getString(1);
        }
    }

    private static Connection connect(DatabaseAccess access, Login login) throws SQLException {
        return DriverManager.getConnection(access.url(), login.user(), login.password());
    }
}
