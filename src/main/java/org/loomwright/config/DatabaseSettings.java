package org.loomwright.config;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Which PostgreSQL to use. Without a URL the program starts its own server in the data folder and ignores the users given here.
 *
 * @param url JDBC URL of a PostgreSQL server, or null for the embedded one
 * @param ownerUser role that owns the tables and migrates them; used for nothing else
 * @param ownerPassword its password
 * @param appUser role that the program works as; neither a superuser nor a member of the owner
 * @param appPassword its password
 * @param embeddedPort port of the embedded server on the loopback address, 0 for any free one
 */
public record DatabaseSettings(
        @Nullable String url,
        @Nullable String ownerUser,
        @Nullable String ownerPassword,
        @Nullable String appUser,
        @Nullable String appPassword,
        @DefaultValue("0") int embeddedPort) {

    /**
     * @return access to the server that the URL names
     * @throws IllegalStateException if anything else that it needs is missing
     */
    DatabaseAccess toAccess() {
        return new DatabaseAccess(
                required("url", url),
                new DatabaseAccess.Login(
                        required("owner-user", ownerUser),
                        required("owner-password", ownerPassword)),
                new DatabaseAccess.Login(
                        required("app-user", appUser), required("app-password", appPassword)));
    }

    private static String required(String name, @Nullable String value) {
        if (value == null || value.isBlank()) {
            throw new IllegalStateException(
                    "loomwright.database.url is set, so loomwright.database.%s must be set too"
                            .formatted(name));
        }
        return value;
    }

    @Override
    public String toString() {
        return "DatabaseSettings[url=%s, ownerUser=%s, appUser=%s, embeddedPort=%d]"
                .formatted(url, ownerUser, appUser, embeddedPort);
    }
}
