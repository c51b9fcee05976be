package org.loomwright.config;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;

/**
 * The generated passwords of the embedded server, kept in a file that only its owner can read. Three lines: superuser, owner of
 * the tables, application. They hold letters, digits, {@code -} and {@code _} only, so they can stand in SQL as they are.
 *
 * @param superuser of PostgreSQL's own superuser
 * @param owner of the role that owns the tables
 * @param app of the role that the program works as
 */
record DatabasePasswords(String superuser, String owner, String app) {

    private static final int BYTES = 24;

    static DatabasePasswords readOrCreate(Path file) {
        try {
            if (!Files.exists(file)) {
                writeForOwnerOnly(file, List.of(random(), random(), random()));
            }
            List<String> lines = Files.readAllLines(file);
            if (lines.size() != 3) {
                throw new IllegalStateException(file + " must have three lines");
            }
            return new DatabasePasswords(lines.get(0), lines.get(1), lines.get(2));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void writeForOwnerOnly(Path file, List<String> lines) throws IOException {
        Path parts = file.resolveSibling(file.getFileName() + ".part");
        Files.deleteIfExists(parts);
        Files.createFile(parts, ownerOnly());
        Files.write(parts, lines, StandardCharsets.US_ASCII, StandardOpenOption.SYNC);
        Files.move(parts, file);
    }

    private static FileAttribute<?>[] ownerOnly() {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(
                            PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    private static String random() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    @Override
    public String toString() {
        return "DatabasePasswords[]";
    }
}
