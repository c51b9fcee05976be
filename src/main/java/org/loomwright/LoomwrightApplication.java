package org.loomwright;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

import java.util.Locale;

/** Starts Loomwright. */
@SpringBootApplication
public class LoomwrightApplication {

    /** @param args Spring Boot's own options */
    public static void main(String[] args) {
        // What is written is English, with figures from 0 to 9, wherever the machine stands.
        Locale.setDefault(Locale.ROOT);
        SpringApplication.run(LoomwrightApplication.class, args);
    }
}
