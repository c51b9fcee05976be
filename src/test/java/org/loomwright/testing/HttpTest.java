package org.loomwright.testing;

import org.loomwright.LoomwrightApplication;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A test of the whole program over HTTP, on a port of its own and a real PostgreSQL that holds the demonstration. Test classes that
 * say no more than this share one running program; they look only at what they made themselves.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        classes = LoomwrightApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@ContextConfiguration(initializers = PostgresForTests.FreshDatabase.class)
public @interface HttpTest {}
