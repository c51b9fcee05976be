package org.loomwright.store;

import org.loomwright.app.IdempotencyKeys;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import java.time.Instant;
import java.util.Optional;

/** Answered requests by operation and key. */
@Component
class JdbcIdempotencyKeys implements IdempotencyKeys {

    private final JdbcClient jdbc;

    JdbcIdempotencyKeys(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public Optional<Answer> find(String operation, String key) {
        return jdbc.sql(
                        """
                        select request_hash, resource_id
                        from idempotency_key
                        where operation = ? and key = ?
                        """)
                .param(operation)
                .param(key)
                .query(
                        (row, number) ->
                                new Answer(
                                        row.getString("request_hash"),
                                        row.getString("resource_id")))
                .optional();
    }

    @Override
    public boolean tryRecord(String operation, String key, Answer answer, Instant at) {
        int rows =
                jdbc.sql(
                                """
                                insert into idempotency_key (
                                    operation, key, request_hash, resource_id, created_at)
                                values (?, ?, ?, ?, ?)
                                on conflict (operation, key) do nothing
                                """)
                        .param(operation)
                        .param(key)
                        .param(answer.requestHash())
                        .param(answer.resourceId())
                        .param(PageStart.parameter(at))
                        .update();
        return rows == 1;
    }
}
