package org.loomwright.store.content;

import static org.loomwright.store.content.Column.numbers;
import static org.loomwright.store.content.Column.texts;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.util.List;
import java.util.function.Function;

/** Writes the segments with everything that hangs on them. */
final class SegmentWriter {

    private final JdbcClient jdbc;

    SegmentWriter(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void write(long contentId, List<Segment> segments) {
        writeSegments(contentId, segments);
        writeTracers(
                contentId,
                Placed.under(segments, Segment::id, segment -> segment.finish().tracers()));
        writeReadings(contentId, Placed.under(segments, Segment::id, Segment::readings));
        writeOpenings(contentId, Placed.under(segments, Segment::id, Segment::openings));
    }

    private void writeSegments(long contentId, List<Segment> segments) {
        jdbc.sql(
                        """
                        insert into segment (
                            content_id, segment_id, from_node, to_node, length_um,
                            leaves_clock, leaves_angle_degrees, bend_degrees,
                            covering, base_yarn, picks_per_25mm, lacquer_coats,
                            evidence_kind, evidence_note)
                        select ?, part.*
                        from unnest(
                            ?::text[], ?::text[], ?::text[], ?::bigint[],
                            ?::bigint[], ?::bigint[], ?::bigint[],
                            ?::text[], ?::text[], ?::bigint[], ?::bigint[],
                            ?::text[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(texts(segments, Segment::id))
                .param(texts(segments, Segment::from))
                .param(texts(segments, Segment::to))
                .param(numbers(segments, segment -> segment.length().micrometres()))
                .param(departures(segments, Departure::clock))
                .param(departures(segments, Departure::angleDegrees))
                .param(numbers(segments, Segment::bendDegrees))
                .param(texts(segments, segment -> segment.finish().covering()))
                .param(texts(segments, segment -> segment.finish().baseYarn()))
                .param(numbers(segments, segment -> segment.finish().picksPer25Mm()))
                .param(numbers(segments, segment -> segment.finish().lacquerCoats()))
                .param(texts(segments, segment -> Words.of(segment.finish().evidence().kind())))
                .param(texts(segments, segment -> segment.finish().evidence().note()))
                .update();
    }

    private static @Nullable Long[] departures(
            List<Segment> segments, Function<Departure, Integer> value) {
        return numbers(
                segments,
                segment -> {
                    Departure leaves = segment.leaves();
                    return leaves == null ? null : value.apply(leaves);
                });
    }

    private void writeTracers(long contentId, List<Placed<String>> tracers) {
        jdbc.sql(
                        """
                        insert into segment_tracer (content_id, segment_id, position, yarn)
                        select ?, part.*
                        from unnest(?::text[], ?::bigint[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(texts(tracers, Placed::owner))
                .param(numbers(tracers, Placed::position))
                .param(texts(tracers, Placed::part))
                .update();
    }

    private void writeReadings(long contentId, List<Placed<Length>> readings) {
        jdbc.sql(
                        """
                        insert into segment_reading (content_id, segment_id, position, length_um)
                        select ?, part.*
                        from unnest(?::text[], ?::bigint[], ?::bigint[]) as part
                        """)
                .param(contentId)
                .param(texts(readings, Placed::owner))
                .param(numbers(readings, Placed::position))
                .param(numbers(readings, reading -> reading.part().micrometres()))
                .update();
    }

    private void writeOpenings(long contentId, List<Placed<Opening>> openings) {
        jdbc.sql(
                        """
                        insert into opening (
                            content_id, opening_id, segment_id, name, kind,
                            position_um, clear_diameter_um, passes)
                        select ?, part.*
                        from unnest(
                            ?::text[], ?::text[], ?::text[], ?::text[],
                            ?::bigint[], ?::bigint[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(texts(openings, opening -> opening.part().id()))
                .param(texts(openings, Placed::owner))
                .param(texts(openings, opening -> opening.part().name()))
                .param(texts(openings, opening -> Words.of(opening.part().kind())))
                .param(numbers(openings, opening -> opening.part().position().micrometres()))
                .param(numbers(openings, opening -> opening.part().clearDiameter().micrometres()))
                .param(texts(openings, opening -> Words.of(opening.part().passes())))
                .update();
    }
}
