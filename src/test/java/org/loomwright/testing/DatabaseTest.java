package org.loomwright.testing;

import org.loomwright.LoomwrightApplication;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A test of the whole program on a real PostgreSQL. Test classes that say no more than this share one context and so one database;
 * they look only at what they made themselves.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(classes = LoomwrightApplication.class)
@ContextConfiguration(initializers = PostgresForTests.FreshDatabase.class)
public @interface DatabaseTest {}
