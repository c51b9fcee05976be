package org.loomwright.store.content;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** Reads the devices, their points and the wires between them. */
final class WiringReader {

    private static final String POINTS =
            """
            select device_id, point_name, node_id, tail_um, takes
            from device_point
            where content_id = ?
            """;

    private static final String DEVICES =
            """
            select device_id, name, kind, load_ma, serves, rating_ma, voltage_mv, needs_earth
            from device
            where content_id = ?
            """;

    private static final String FUSES =
            """
            select device_id, from_point, to_point, style, marked_ma
            from device_fuse
            where content_id = ?
            """;

    private static final String WIRES =
            """
            select wire_id, circuit, body, tracer, size,
                a_device, a_point, a_terminal, a_fitted,
                b_device, b_point, b_terminal, b_fitted, condition
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
        RowsByOwner<FittedFuse> fuses =
                new RowsByOwner<>(jdbc, FUSES, contentId, (row, number) -> fuse(row));
        return jdbc.sql(DEVICES)
                .param(contentId)
                .query((row, number) -> device(row, points, fuses))
                .list();
    }

    List<Wire> readWires(long contentId) {
        return jdbc.sql(WIRES).param(contentId).query((row, number) -> wire(row)).list();
    }

    private static Point point(ResultSet row) throws SQLException {
        return new Point(
                row.getString("point_name"),
                row.getString("node_id"),
                Length.ofMicrometres(row.getLong("tail_um")),
                row.getObject("takes", Integer.class));
    }

    private static FittedFuse fuse(ResultSet row) throws SQLException {
        return new FittedFuse(
                row.getString("from_point"),
                row.getString("to_point"),
                Words.parse(FuseStyle.class, row.getString("style")),
                Current.ofMilliamperes(row.getLong("marked_ma")));
    }

    private static Device device(
            ResultSet row, RowsByOwner<Point> points, RowsByOwner<FittedFuse> fuses)
            throws SQLException {
        String id = row.getString("device_id");
        return new Device(
                id,
                row.getString("name"),
                Words.parse(DeviceKind.class, row.getString("kind")),
                current(row, "load_ma"),
                particulars(row, fuses.of(id)),
                points.of(id));
    }

    private static Particulars particulars(ResultSet row, List<FittedFuse> fuses)
            throws SQLException {
        Integer millivolts = row.getObject("voltage_mv", Integer.class);
        return new Particulars(
                row.getString("serves"),
                current(row, "rating_ma"),
                millivolts == null ? null : Voltage.ofMillivolts(millivolts),
                word(row, "needs_earth", EarthPolarity.class),
                fuses);
    }

    private static @Nullable Current current(ResultSet row, String column) throws SQLException {
        Long milliamperes = row.getObject(column, Long.class);
        return milliamperes == null ? null : Current.ofMilliamperes(milliamperes);
    }

    private static <E extends Enum<E>> @Nullable E word(ResultSet row, String column, Class<E> type)
            throws SQLException {
        String word = row.getString(column);
        return word == null ? null : Words.parse(type, word);
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
                row.getString(side + "_terminal"),
                word(row, side + "_fitted", Fitting.class));
    }
}
