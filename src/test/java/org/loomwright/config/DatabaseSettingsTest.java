package org.loomwright.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.config.DatabaseAccess.Login;

class DatabaseSettingsTest {

    private static final String URL = "jdbc:postgresql://db/loomwright";

    @Test
    void aUrlNeedsBothUsersWithTheirPasswords() {
        assertThatThrownBy(() -> new DatabaseSettings(URL, "a", "b", "c", null, 0).toAccess())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("loomwright.database.app-password must be set too");
        assertThatThrownBy(() -> new DatabaseSettings(URL, " ", "b", "c", "d", 0).toAccess())
                .hasMessageContaining("loomwright.database.owner-user must be set too");
        assertThat(new DatabaseSettings(URL, "a", "b", "c", "d", 0).toAccess())
                .isEqualTo(new DatabaseAccess(URL, new Login("a", "b"), new Login("c", "d")));
    }

    @Test
    void theApplicationMayNotBeTheOwner() {
        assertThatThrownBy(() -> new DatabaseSettings(URL, "a", "b", "a", "b", 0).toAccess())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("must not work as the owner");
    }

    @Test
    void aRoleNameThatCouldEndItsQuotesIsRefused() {
        assertThatThrownBy(() -> new Login("app\"; drop table loom; --", "x"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("plain letters");
    }

    @Test
    void passwordsAreNotPrinted() {
        DatabaseSettings settings = new DatabaseSettings(URL, "a", "sesame", "c", "sesame", 0);
        assertThat(settings.toString()).doesNotContain("sesame");
        assertThat(settings.toAccess().toString()).doesNotContain("sesame");
    }
}
