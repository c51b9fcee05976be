package org.loomwright.store.content;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** Reads the devices, their points and the wires between them. */
final class WiringReader {

    private static final String POINTS =
            """
            select device_id, point_name, node_id, tail_um from device_point where content_id = ?
            """;

    private static final String DEVICES =
            """
            select device_id, name, kind, load_ma from device where content_id = ?
            """;

    private static final String WIRES =
            """
            select wire_id, circuit, body, tracer, size,
                a_device, a_point, a_terminal, b_device, b_point, b_terminal, condition
            from wire
            where content_id = ?
            """;

    private final JdbcClient jdbc;

    WiringReader(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Device> readDevices(long contentId) {
        RowsByOwner<Point> points =
                new RowsByOwner<>(jdbc, POINTS, contentId, (row, number) -> point(row));
        return jdbc.sql(DEVICES)
                .param(contentId)
                .query((row, number) -> device(row, points))
                .list();
    }

    List<Wire> readWires(long contentId) {
        return jdbc.sql(WIRES).param(contentId).query((row, number) -> wire(row)).list();
    }

    private static Point point(ResultSet row) throws SQLException {
        return new Point(
                row.getString("point_name"),
                row.getString("node_id"),
                Length.ofMicrometres(row.getLong("tail_um")));
    }

    private static Device device(ResultSet row, RowsByOwner<Point> points) throws SQLException {
        String id = row.getString("device_id");
        return new Device(
                id,
                row.getString("name"),
                Words.parse(DeviceKind.class, row.getString("kind")),
                load(row),
                points.of(id));
    }

    private static @Nullable Current load(ResultSet row) throws SQLException {
        Long milliamperes = row.getObject("load_ma", Long.class);
        return milliamperes == null ? null : Current.ofMilliamperes(milliamperes);
    }

    private static Wire wire(ResultSet row) throws SQLException {
        return new Wire(
                row.getString("wire_id"),
                row.getString("circuit"),
                new WireColour(row.getString("body"), row.getString("tracer")),
                row.getString("size"),
                end(row, "a"),
                end(row, "b"),
                Words.parse(Condition.class, row.getString("condition")));
    }

    private static WireEnd end(ResultSet row, String side) throws SQLException {
        return new WireEnd(
                row.getString(side + "_device"),
                row.getString(side + "_point"),
                row.getString(side + "_terminal"));
    }
}
