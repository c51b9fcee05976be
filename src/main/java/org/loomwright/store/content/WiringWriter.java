package org.loomwright.store.content;

import static org.loomwright.store.content.Column.numbers;
import static org.loomwright.store.content.Column.texts;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
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
        writeWires(contentId, document.wires());
    }

    private void writeDevices(long contentId, List<Device> devices) {
        jdbc.sql(
                        """
                        insert into device (content_id, device_id, name, kind, load_ma)
                        select ?, part.*
                        from unnest(?::text[], ?::text[], ?::text[], ?::bigint[]) as part
                        """)
                .param(contentId)
                .param(texts(devices, Device::id))
                .param(texts(devices, Device::name))
                .param(texts(devices, device -> Words.of(device.kind())))
                .param(
                        numbers(
                                devices,
                                device -> {
                                    Current load = device.load();
                                    return load == null ? null : load.milliamperes();
                                }))
                .update();
    }

    private void writePoints(long contentId, List<Placed<Point>> points) {
        jdbc.sql(
                        """
                        insert into device_point (
                            content_id, device_id, point_name, node_id, tail_um)
                        select ?, part.*
                        from unnest(?::text[], ?::text[], ?::text[], ?::bigint[]) as part
                        """)
                .param(contentId)
                .param(texts(points, Placed::owner))
                .param(texts(points, point -> point.part().name()))
                .param(texts(points, point -> point.part().node()))
                .param(numbers(points, point -> point.part().tail().micrometres()))
                .update();
    }

    private void writeWires(long contentId, List<Wire> wires) {
        jdbc.sql(
                        """
                        insert into wire (
                            content_id, wire_id, circuit, body, tracer, size,
                            a_device, a_point, a_terminal, b_device, b_point, b_terminal, condition)
                        select ?, part.*
                        from unnest(
                            ?::text[], ?::text[], ?::text[], ?::text[], ?::text[],
                            ?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[],
                            ?::text[]) as part
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
                .param(texts(wires, wire -> wire.b().device()))
                .param(texts(wires, wire -> wire.b().point()))
                .param(texts(wires, wire -> wire.b().terminal()))
                .param(texts(wires, wire -> Words.of(wire.condition())))
                .update();
    }
}
