package org.loomwright.store.content;

import org.loomwright.app.LoomContent;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.Hand;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** Reads a whole content, one table after another, and puts it in order. */
final class ContentReader {

    private final JdbcClient jdbc;
    private final SegmentReader segments;
    private final WiringReader wiring;

    ContentReader(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.segments = new SegmentReader(jdbc);
        this.wiring = new WiringReader(jdbc);
    }

    private record Head(String hash, String name, String datum, VehicleSheet vehicle) {}

    LoomContent read(long contentId) {
        Head head = readHead(contentId);
        LoomDocument document =
                new LoomDocument(
                        head.name(),
                        head.vehicle(),
                        head.datum(),
                        readNodes(contentId),
                        segments.read(contentId),
                        wiring.readDevices(contentId),
                        wiring.readWires(contentId),
                        readChecks(contentId),
                        readColours(contentId));
        return new LoomContent(head.hash(), document.ordered());
    }

    private Head readHead(long contentId) {
        List<String> remarks = readRemarks(contentId);
        return jdbc.sql(
                        """
                        select content_hash, name, datum,
                            vehicle_name, vehicle_year, hand, earth, system_voltage_mv
                        from loom_content
                        where content_id = ?
                        """)
                .param(contentId)
                .query(
                        (row, number) ->
                                new Head(
                                        row.getString("content_hash"),
                                        row.getString("name"),
                                        row.getString("datum"),
                                        vehicle(row, remarks)))
                .single();
    }

    private static VehicleSheet vehicle(ResultSet row, List<String> remarks) throws SQLException {
        return new VehicleSheet(
                row.getString("vehicle_name"),
                row.getInt("vehicle_year"),
                Words.parse(Hand.class, row.getString("hand")),
                Words.parse(EarthPolarity.class, row.getString("earth")),
                Voltage.ofMillivolts(row.getLong("system_voltage_mv")),
                remarks);
    }

    private List<String> readRemarks(long contentId) {
        return jdbc.sql(
                        """
                        select remark from vehicle_remark where content_id = ? order by position
                        """)
                .param(contentId)
                .query(String.class)
                .list();
    }

    private List<Node> readNodes(long contentId) {
        return jdbc.sql("select node_id, name from node where content_id = ?")
                .param(contentId)
                .query((row, number) -> new Node(row.getString("node_id"), row.getString("name")))
                .list();
    }

    private List<EndToEnd> readChecks(long contentId) {
        return jdbc.sql(
                        """
                        select check_id, from_node, to_node, measured_um
                        from end_to_end_check
                        where content_id = ?
                        """)
                .param(contentId)
                .query(
                        (row, number) ->
                                new EndToEnd(
                                        row.getString("check_id"),
                                        row.getString("from_node"),
                                        row.getString("to_node"),
                                        Length.ofMicrometres(row.getLong("measured_um"))))
                .list();
    }

    private List<CustomColour> readColours(long contentId) {
        return jdbc.sql("select letters, name, swatch from custom_colour where content_id = ?")
                .param(contentId)
                .query(
                        (row, number) ->
                                new CustomColour(
                                        row.getString("letters"),
                                        row.getString("name"),
                                        row.getString("swatch")))
                .list();
    }
}
