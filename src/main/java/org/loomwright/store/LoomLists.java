package org.loomwright.store;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.LoomSummary;
import org.loomwright.app.Page;
import org.loomwright.app.PageKey;
import org.loomwright.core.catalogue.WireColour;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.UUID;

/** Looms as lines of a list, without reading their contents. */
@Component
class LoomLists {

    private static final String LINES =
            """
            select loom.id, loom.name, loom.version, loom.created_at, loom.updated_at,
                content.content_hash, content.vehicle_name, content.vehicle_year,
                (select count(*) from segment part where part.content_id = loom.content_id) as segments,
                (select count(*) from device part where part.content_id = loom.content_id) as devices,
                (select count(*) from wire part where part.content_id = loom.content_id) as wires
            from loom
            join loom_content content using (content_id)
            where (loom.created_at, loom.id) < (:createdAt, :id)
            %s
            order by loom.created_at desc, loom.id desc
            limit :most
            """;

    private static final String ALL = LINES.formatted("");

    private static final String HAVING_TRACER =
            LINES.formatted(
                    """
                    and exists (
                        select from wire
                        where wire.content_id = loom.content_id
                            and wire.body = :body and wire.tracer = :tracer)
                    """);

    private static final String HAVING_PLAIN =
            LINES.formatted(
                    """
                    and exists (
                        select from wire
                        where wire.content_id = loom.content_id
                            and wire.body = :body and wire.tracer is null)
                    """);

    private static final String HAVING_SIZE =
            LINES.formatted(
                    """
                    and exists (
                        select from wire
                        where wire.content_id = loom.content_id and wire.size = :wireSize)
                    """);

    private final JdbcClient jdbc;

    LoomLists(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Page<LoomSummary> all(@Nullable PageKey after, int size) {
        return page(jdbc.sql(ALL), after, size);
    }

    Page<LoomSummary> havingColour(WireColour colour, @Nullable PageKey after, int size) {
        JdbcClient.StatementSpec query =
                colour.tracer() == null
                        ? jdbc.sql(HAVING_PLAIN)
                        : jdbc.sql(HAVING_TRACER).param("tracer", colour.tracer());
        return page(query.param("body", colour.body()), after, size);
    }

    Page<LoomSummary> havingSize(String wireSize, @Nullable PageKey after, int size) {
        return page(jdbc.sql(HAVING_SIZE).param("wireSize", wireSize), after, size);
    }

    private static Page<LoomSummary> page(
            JdbcClient.StatementSpec query, @Nullable PageKey after, int size) {
        PageKey start = PageStart.of(after);
        return Page.of(
                query.param("createdAt", PageStart.parameter(start.createdAt()))
                        .param("id", start.id())
                        .param("most", Page.checkSize(size) + 1)
                        .query((row, number) -> summary(row))
                        .list(),
                size,
                LoomSummary::key);
    }

    private static LoomSummary summary(ResultSet row) throws SQLException {
        return new LoomSummary(
                row.getObject("id", UUID.class),
                row.getString("name"),
                row.getString("vehicle_name"),
                row.getInt("vehicle_year"),
                row.getString("content_hash"),
                row.getInt("segments"),
                row.getInt("devices"),
                row.getInt("wires"),
                row.getLong("version"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                row.getObject("updated_at", OffsetDateTime.class).toInstant());
    }
}
