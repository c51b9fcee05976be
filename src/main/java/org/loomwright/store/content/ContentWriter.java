package org.loomwright.store.content;

import static org.loomwright.store.content.Column.numbers;
import static org.loomwright.store.content.Column.texts;

import org.loomwright.app.LoomContent;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.VehicleSheet;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Writes a whole content in the order in which its tables refer to one another. */
final class ContentWriter {

    private static final int FORMAT_VERSION = 1;

    private final JdbcClient jdbc;
    private final SegmentWriter segments;
    private final WiringWriter wiring;

    ContentWriter(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.segments = new SegmentWriter(jdbc);
        this.wiring = new WiringWriter(jdbc);
    }

    /** @return the new key, or empty if somebody else wrote the same content */
    Optional<Long> write(LoomContent content) {
        LoomDocument document = content.document();
        Optional<Long> key = writeHead(content.hash(), document);
        key.ifPresent(
                contentId -> {
                    writeRemarks(contentId, document.vehicle().notStandard());
                    writeNodes(contentId, document.nodes());
                    segments.write(contentId, document.segments());
                    wiring.write(contentId, document);
                    writeChecks(contentId, document.checks());
                    writeColours(contentId, document.customColours());
                });
        return key;
    }

    private Optional<Long> writeHead(String hash, LoomDocument document) {
        VehicleSheet vehicle = document.vehicle();
        return jdbc.sql(
                        """
                        insert into loom_content (
                            content_hash, format_version, name, datum,
                            vehicle_name, vehicle_year, hand, earth, system_voltage_mv)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?)
                        on conflict (content_hash) do nothing
                        returning content_id
                        """)
                .param(hash)
                .param(FORMAT_VERSION)
                .param(document.name())
                .param(document.datum())
                .param(vehicle.name())
                .param(vehicle.year())
                .param(Words.of(vehicle.hand()))
                .param(Words.of(vehicle.earth()))
                .param(vehicle.system().millivolts())
                .query(Long.class)
                .optional();
    }

    private void writeRemarks(long contentId, List<String> remarks) {
        jdbc.sql(
                        """
                        insert into vehicle_remark (content_id, position, remark)
                        select ?, part.*
                        from unnest(?::bigint[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(numbers(IntStream.range(0, remarks.size()).boxed().toList(), i -> i))
                .param(texts(remarks, remark -> remark))
                .update();
    }

    private void writeNodes(long contentId, List<Node> nodes) {
        jdbc.sql(
                        """
                        insert into node (content_id, node_id, name)
                        select ?, part.*
                        from unnest(?::text[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(texts(nodes, Node::id))
                .param(texts(nodes, Node::name))
                .update();
    }

    private void writeChecks(long contentId, List<EndToEnd> checks) {
        jdbc.sql(
                        """
                        insert into end_to_end_check (
                            content_id, check_id, from_node, to_node, measured_um)
                        select ?, part.*
                        from unnest(?::text[], ?::text[], ?::text[], ?::bigint[]) as part
                        """)
                .param(contentId)
                .param(texts(checks, EndToEnd::id))
                .param(texts(checks, EndToEnd::from))
                .param(texts(checks, EndToEnd::to))
                .param(numbers(checks, check -> check.measured().micrometres()))
                .update();
    }

    private void writeColours(long contentId, List<CustomColour> colours) {
        jdbc.sql(
                        """
                        insert into custom_colour (content_id, letters, name, swatch)
                        select ?, part.*
                        from unnest(?::text[], ?::text[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(texts(colours, CustomColour::letters))
                .param(texts(colours, CustomColour::name))
                .param(texts(colours, CustomColour::swatch))
                .update();
    }
}
