package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.loom.DeviceKind;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which terminal a new wire gets on which kind of device. Immutable and thread-safe. */
public final class UsualTerminals {

    private final Map<DeviceKind, Row> rows = new EnumMap<>(DeviceKind.class);

    /**
     * One row.
     *
     * @param kind of the device
     * @param terminal code of the terminal in the catalogue
     * @param shared code of the terminal for a second wire on the same point
     * @param provenance who says so
     */
    public record Row(DeviceKind kind, String terminal, String shared, Provenance provenance) {}

    /**
     * @param rows one for each kind of device
     * @throws IllegalArgumentException if a kind is missing or stands twice
     */
    public UsualTerminals(List<Row> rows) {
        rows.forEach(this::add);
        for (DeviceKind kind : DeviceKind.values()) {
            if (!this.rows.containsKey(kind)) {
                throw new IllegalArgumentException("no usual terminal for a " + kind.words());
            }
        }
    }

    private void add(Row row) {
        if (rows.put(row.kind(), row) != null) {
            throw new IllegalArgumentException("two usual terminals for a " + row.kind().words());
        }
    }

    Row of(DeviceKind kind) {
        @Nullable Row row = rows.get(kind);
        if (row == null) {
            throw new IllegalArgumentException("no usual terminal for a " + kind.words());
        }
        return row;
    }
}
