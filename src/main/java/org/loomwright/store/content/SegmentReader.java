package org.loomwright.store.content;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Opening.PassDirection;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** Reads the segments with everything that hangs on them. */
final class SegmentReader {

    private static final String SEGMENTS =
            """
            select segment_id, from_node, to_node, length_um, leaves_clock, leaves_angle_degrees,
                bend_degrees, covering, base_yarn, picks_per_25mm, lacquer_coats,
                evidence_kind, evidence_note
            from segment
            where content_id = ?
            """;

    private static final String TRACERS =
            """
            select segment_id, yarn from segment_tracer where content_id = ? order by position
            """;

    private static final String READINGS =
            """
            select segment_id, length_um from segment_reading where content_id = ? order by position
            """;

    private static final String OPENINGS =
            """
            select segment_id, opening_id, name, kind, position_um, clear_diameter_um, passes
            from opening
            where content_id = ?
            """;

    private final JdbcClient jdbc;

    SegmentReader(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private record Parts(
            RowsByOwner<String> tracers,
            RowsByOwner<Length> readings,
            RowsByOwner<Opening> openings) {}

    List<Segment> read(long contentId) {
        Parts parts =
                new Parts(
                        new RowsByOwner<>(
                                jdbc, TRACERS, contentId, (row, number) -> row.getString("yarn")),
                        new RowsByOwner<>(
                                jdbc,
                                READINGS,
                                contentId,
                                (row, number) -> length(row, "length_um")),
                        new RowsByOwner<>(
                                jdbc, OPENINGS, contentId, (row, number) -> opening(row)));
        return jdbc.sql(SEGMENTS)
                .param(contentId)
                .query((row, number) -> segment(row, parts))
                .list();
    }

    private static Segment segment(ResultSet row, Parts parts) throws SQLException {
        String id = row.getString("segment_id");
        return new Segment(
                id,
                row.getString("from_node"),
                row.getString("to_node"),
                length(row, "length_um"),
                parts.readings().of(id),
                departure(row),
                row.getInt("bend_degrees"),
                finish(row, parts.tracers().of(id)),
                parts.openings().of(id));
    }

    private static @Nullable Departure departure(ResultSet row) throws SQLException {
        Integer clock = row.getObject("leaves_clock", Integer.class);
        return clock == null ? null : new Departure(clock, row.getInt("leaves_angle_degrees"));
    }

    private static Finish finish(ResultSet row, List<String> tracers) throws SQLException {
        return new Finish(
                row.getString("covering"),
                row.getString("base_yarn"),
                tracers,
                row.getObject("picks_per_25mm", Integer.class),
                row.getInt("lacquer_coats"),
                new Evidence(
                        Words.parse(EvidenceKind.class, row.getString("evidence_kind")),
                        row.getString("evidence_note")));
    }

    private static Opening opening(ResultSet row) throws SQLException {
        return new Opening(
                row.getString("opening_id"),
                row.getString("name"),
                Words.parse(OpeningKind.class, row.getString("kind")),
                length(row, "position_um"),
                length(row, "clear_diameter_um"),
                Words.parse(PassDirection.class, row.getString("passes")));
    }

    private static Length length(ResultSet row, String column) throws SQLException {
        return Length.ofMicrometres(row.getLong(column));
    }
}
