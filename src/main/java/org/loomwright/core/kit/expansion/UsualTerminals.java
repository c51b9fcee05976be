package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.CrossSection;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which terminal a new wire gets on which kind of device. Immutable and thread-safe. */
public final class UsualTerminals {

    private final Map<DeviceKind, Row> rows = new EnumMap<>(DeviceKind.class);
    private final List<Substitute> substitutes;

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
     * What is taken instead of a terminal that does not take a conductor.
     *
     * @param terminal code of the terminal
     * @param instead code of the other one
     * @param provenance who says so
     */
    public record Substitute(String terminal, String instead, Provenance provenance) {}

    /**
     * @param rows one for each kind of device
     * @param substitutes what is taken instead, the first that does
     * @throws IllegalArgumentException if a kind is missing or stands twice
     */
    public UsualTerminals(List<Row> rows, List<Substitute> substitutes) {
        this.substitutes = List.copyOf(substitutes);
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

    /** That terminal, or the first substitute that takes the conductor; where none does, that terminal all the same. */
    String fitting(String terminal, CrossSection conductor, Catalogue catalogue) {
        if (catalogue.getTerminal(terminal).takes(conductor)) {
            return terminal;
        }
        return substitutes.stream()
                .filter(row -> row.terminal().equals(terminal))
                .map(Substitute::instead)
                .filter(instead -> catalogue.getTerminal(instead).takes(conductor))
                .findFirst()
                .orElse(terminal);
    }

    Row of(DeviceKind kind) {
        @Nullable Row row = rows.get(kind);
        if (row == null) {
            throw new IllegalArgumentException("no usual terminal for a " + kind.words());
        }
        return row;
    }
}
