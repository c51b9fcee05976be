package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.springframework.jdbc.core.simple.JdbcClient;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How many rows every table has. */
final class StoredRows {

    private static final String TABLES =
            """
            select table_name from information_schema.tables
            where table_schema = 'public' and table_type = 'BASE TABLE'
            """;

    private final JdbcClient jdbc;
    private final List<String> tables;

    StoredRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.tables = jdbc.sql(TABLES).query(String.class).list();
        assertThat(tables).contains("loom", "wire", "specification", "idempotency_key");
    }

    Map<String, Long> counts() {
        Map<String, Long> counts = new TreeMap<>();
        for (String table : tables) {
            counts.put(table, jdbc.sql("select count(*) from " + table).query(Long.class).single());
        }
        return counts;
    }

    long count(String table) {
        return counts().getOrDefault(table, -1L);
    }
}
