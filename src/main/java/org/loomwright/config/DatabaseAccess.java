package org.loomwright.config;

import java.util.regex.Pattern;

/**
 * How to reach the database: as the owner of the tables, for migrations only, and as the application.
 *
 * @param url JDBC URL
 * @param owner the role that owns the tables
 * @param app the role that the program works as
 */
public record DatabaseAccess(String url, Login owner, Login app) {

    public DatabaseAccess {
        if (owner.user().equals(app.user())) {
            throw new IllegalStateException(
                    "the application must not work as the owner of its tables, %s: it could change what is frozen"
                            .formatted(owner.user()));
        }
    }

    /**
     * A role with its password.
     *
     * @param user a plain role name, because it goes into migrations
     * @param password its password
     */
    public record Login(String user, String password) {

        private static final Pattern PLAIN = Pattern.compile("[A-Za-z_][A-Za-z0-9_-]{0,62}");

        public Login {
            if (!PLAIN.matcher(user).matches()) {
                throw new IllegalStateException(
                        "a database role must be named with plain letters, digits, underlines and dashes, was '%s'"
                                .formatted(user));
            }
        }

        @Override
        public String toString() {
            return "Login[user=" + user + "]";
        }
    }
}
