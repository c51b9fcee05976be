package org.loomwright.config;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps two running programs off one data folder. The system gives the lock back when the program ends, however it ends.
 */
final class FolderLock implements AutoCloseable {

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * @param file the file to lock, made if need be
     * @return the lock
     * @throws IllegalStateException if a running program holds it
     */
    static FolderLock take(Path file) throws IOException {
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (!tryLock(channel)) {
            channel.close();
            throw new IllegalStateException(
                    "another running program uses the data folder %s".formatted(file.getParent()));
        }
        return new FolderLock(channel);
    }

    private static boolean tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
