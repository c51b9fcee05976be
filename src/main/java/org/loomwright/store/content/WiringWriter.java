package org.loomwright.store.content;

import static org.loomwright.store.content.Column.numbers;
import static org.loomwright.store.content.Column.texts;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.springframework.jdbc.core.simple.JdbcClient;

import java.util.List;

/** Writes the devices, their points and the wires between them. */
final class WiringWriter {

    private final JdbcClient jdbc;

    WiringWriter(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void write(long contentId, LoomDocument document) {
        writeDevices(contentId, document.devices());
        writePoints(contentId, Placed.under(document.devices(), Device::id, Device::points));
        writeFuses(
                contentId,
                Placed.under(
                        document.devices(), Device::id, device -> device.particulars().fuses()));
        writeWires(contentId, document.wires());
    }

    private void writeDevices(long contentId, List<Device> devices) {
        jdbc.sql(
                        """
                        insert into device (
                            content_id, device_id, name, kind, load_ma,
                            serves, rating_ma, voltage_mv, needs_earth)
                        select ?, part.*
                        from unnest(
                            ?::text[], ?::text[], ?::text[], ?::bigint[],
                            ?::text[], ?::bigint[], ?::bigint[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(texts(devices, Device::id))
                .param(texts(devices, Device::name))
                .param(texts(devices, device -> Words.of(device.kind())))
                .param(numbers(devices, device -> milliamperes(device.load())))
                .param(texts(devices, device -> device.particulars().serves()))
                .param(numbers(devices, device -> milliamperes(device.particulars().rating())))
                .param(numbers(devices, device -> millivolts(device.particulars().voltage())))
                .param(texts(devices, device -> word(device.particulars().needsEarth())))
                .update();
    }

    private static @Nullable Long milliamperes(@Nullable Current current) {
        return current == null ? null : current.milliamperes();
    }

    private static @Nullable Long millivolts(@Nullable Voltage voltage) {
        return voltage == null ? null : voltage.millivolts();
    }

    private static @Nullable String word(@Nullable Enum<?> constant) {
        return constant == null ? null : Words.of(constant);
    }

    private void writePoints(long contentId, List<Placed<Point>> points) {
        jdbc.sql(
                        """
                        insert into device_point (
                            content_id, device_id, point_name, node_id, tail_um, takes)
                        select ?, part.*
                        from unnest(
                            ?::text[], ?::text[], ?::text[], ?::bigint[], ?::bigint[]) as part
                        """)
                .param(contentId)
                .param(texts(points, Placed::owner))
                .param(texts(points, point -> point.part().name()))
                .param(texts(points, point -> point.part().node()))
                .param(numbers(points, point -> point.part().tail().micrometres()))
                .param(numbers(points, point -> point.part().takes()))
                .update();
    }

    private void writeFuses(long contentId, List<Placed<FittedFuse>> fuses) {
        jdbc.sql(
                        """
                        insert into device_fuse (
                            content_id, device_id, from_point, to_point, style, marked_ma)
                        select ?, part.*
                        from unnest(
                            ?::text[], ?::text[], ?::text[], ?::text[], ?::bigint[]) as part
                        """)
                .param(contentId)
                .param(texts(fuses, Placed::owner))
                .param(texts(fuses, fuse -> fuse.part().from()))
                .param(texts(fuses, fuse -> fuse.part().to()))
                .param(texts(fuses, fuse -> Words.of(fuse.part().style())))
                .param(numbers(fuses, fuse -> fuse.part().marked().milliamperes()))
                .update();
    }

    private void writeWires(long contentId, List<Wire> wires) {
        jdbc.sql(
                        """
                        insert into wire (
                            content_id, wire_id, circuit, body, tracer, size,
                            a_device, a_point, a_terminal, a_fitted,
                            b_device, b_point, b_terminal, b_fitted, condition)
                        select ?, part.*
                        from unnest(
                            ?::text[], ?::text[], ?::text[], ?::text[], ?::text[],
                            ?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[],
                            ?::text[], ?::text[], ?::text[]) as part
                        """)
                .param(contentId)
                .param(texts(wires, Wire::id))
                .param(texts(wires, Wire::circuit))
                .param(texts(wires, wire -> wire.colour().body()))
                .param(texts(wires, wire -> wire.colour().tracer()))
                .param(texts(wires, Wire::size))
                .param(texts(wires, wire -> wire.a().device()))
                .param(texts(wires, wire -> wire.a().point()))
                .param(texts(wires, wire -> wire.a().terminal()))
                .param(texts(wires, wire -> word(wire.a().fitted())))
                .param(texts(wires, wire -> wire.b().device()))
                .param(texts(wires, wire -> wire.b().point()))
                .param(texts(wires, wire -> wire.b().terminal()))
                .param(texts(wires, wire -> word(wire.b().fitted())))
                .param(texts(wires, wire -> Words.of(wire.condition())))
                .update();
    }
}
