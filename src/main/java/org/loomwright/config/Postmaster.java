package org.loomwright.config;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * The PostgreSQL server that may still run on a data folder, because the program that started it was killed.
 *
 * <p>{@code postmaster.pid} names a process, but after a crash of the machine that number may belong to any program. So the
 * process has to be a postgres with this folder on its command line (where the system tells the command line; else the name of
 * the program must do) before it is told to stop.
 */
final class Postmaster {

    private static final Logger LOG = LoggerFactory.getLogger(Postmaster.class);
    private static final Duration STOP_WAIT = Duration.ofSeconds(60);
    private static final Duration LOOK_AGAIN = Duration.ofMillis(50);

    private final Path folder;
    private final Path pidFile;

    Postmaster(Path folder) {
        this.folder = folder;
        this.pidFile = folder.resolve("postmaster.pid");
    }

    /**
     * Leaves the folder without a running server and without a stale pid file.
     *
     * @throws IllegalStateException if a server runs there and does not stop within a minute
     */
    void stopLeftOver() throws IOException, InterruptedException {
        Optional<ProcessHandle> running = findRunning();
        if (running.isPresent()) {
            LOG.warn("A database server left over on {} is being stopped", folder);
            stop(running.get());
        }
        if (Files.deleteIfExists(pidFile)) {
            LOG.warn("Removed a stale {}", pidFile);
        }
    }

    Optional<ProcessHandle> findRunning() throws IOException {
        return readPid().flatMap(ProcessHandle::of).filter(this::isPostgresOnThisFolder);
    }

    private Optional<Long> readPid() throws IOException {
        if (!Files.exists(pidFile)) {
            return Optional.empty();
        }
        List<String> lines = Files.readAllLines(pidFile);
        return lines.isEmpty() || !lines.getFirst().strip().matches("[0-9]{1,18}")
                ? Optional.empty()
                : Optional.of(Long.valueOf(lines.getFirst().strip()));
    }

    private boolean isPostgresOnThisFolder(ProcessHandle process) {
        ProcessHandle.Info info = process.info();
        boolean postgres =
                info.command()
                        .map(Path::of)
                        .map(Path::getFileName)
                        .filter(name -> name.toString().matches("postgres(\\.exe)?"))
                        .isPresent();
        return postgres
                && info.arguments()
                        .map(given -> Arrays.stream(given).anyMatch(this::isFolder))
                        .orElse(true);
    }

    private boolean isFolder(String argument) {
        try {
            return Files.isSameFile(folder, Path.of(argument));
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    /** An interrupt is PostgreSQL's fast shutdown: sessions end, a checkpoint is written. */
    private void stop(ProcessHandle process) throws IOException, InterruptedException {
        Instant deadline = Instant.now().plus(STOP_WAIT);
        interrupt(process);
        while (process.isAlive() && Files.exists(pidFile)) {
            if (Instant.now().isAfter(deadline)) {
                throw new IllegalStateException(
                        "the database server %d on %s did not stop within %d seconds"
                                .formatted(process.pid(), folder, STOP_WAIT.toSeconds()));
            }
            awaitExit(process);
        }
    }

    private static void interrupt(ProcessHandle process) throws IOException, InterruptedException {
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        if (windows) {
            process.destroy();
            return;
        }
        int status =
                new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
        if (status != 0 && process.isAlive()) {
            throw new IllegalStateException(
                    "may not stop the database server "
                            + process.pid()
                            + ": is it another user's?");
        }
    }

    private static void awaitExit(ProcessHandle process) throws InterruptedException {
        try {
            process.onExit().get(LOOK_AGAIN.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            LOG.trace("The database server {} still runs", process.pid());
        } catch (ExecutionException e) {
            throw new IllegalStateException(e);
        }
    }
}
