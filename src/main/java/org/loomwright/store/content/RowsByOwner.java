package org.loomwright.store.content;

import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The rows of one table, gathered under the id of the row that each hangs on, in the order in which the query gives them.
 *
 * @param <T> what a row says
 */
final class RowsByOwner<T> {

    private final Map<String, List<T>> rows = new HashMap<>();

    /**
     * @param jdbc the database
     * @param sql a query with one parameter, the content; its first column is the owner's id
     * @param contentId the content
     * @param mapper reads what a row says
     */
    RowsByOwner(JdbcClient jdbc, String sql, long contentId, RowMapper<T> mapper) {
        jdbc.sql(sql)
                .param(contentId)
                .query(
                        row -> {
                            T part = mapper.mapRow(row, row.getRow());
                            rows.computeIfAbsent(row.getString(1), id -> new ArrayList<>())
                                    .add(part);
                        });
    }

    List<T> of(String owner) {
        return rows.getOrDefault(owner, List.of());
    }
}
