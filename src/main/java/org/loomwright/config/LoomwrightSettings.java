package org.loomwright.config;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

import java.nio.file.Path;

/**
 * The program's own settings.
 *
 * @param dataDir folder for what the program keeps on disk: the embedded database and its passwords
 * @param database which database to use
 */
@ConfigurationProperties("loomwright")
public record LoomwrightSettings(
        @DefaultValue("data") Path dataDir, @DefaultValue DatabaseSettings database) {}
