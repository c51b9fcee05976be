package org.loomwright;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Loomwright. */
@SpringBootApplication
public class LoomwrightApplication {

    /** @param args Spring Boot's own options */
    public static void main(String[] args) {
        SpringApplication.run(LoomwrightApplication.class, args);
    }
}
