package org.loomwright.document.sheet.electrical;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.electrical.fault.FuseLoss;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.style.Type;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Every fuse: what is fitted, what that carries, and what goes dark with it. */
final class FuseTable {

    private static final String UNKNOWN = "nobody has said";

    private final Loom loom;
    private final ElectricalSide side;

    FuseTable(Loom loom, ElectricalSide side) {
        this.loom = loom;
        this.side = side;
    }

    void set(Flow flow) {
        flow.heading("Fuses");
        List<FuseLoss> losses = side.report().losses();
        if (losses.isEmpty()) {
            flow.text("There is no fuse in this loom.");
            return;
        }
        Table table =
                new Table(
                        List.of(
                                Column.words("Fuse", 132),
                                Column.words("Fitted", 76),
                                Column.figures("Carries for\never A", 48),
                                Column.words("", 8),
                                Column.words("Where that\ncomes from", 74),
                                Column.words("Goes dark with it", 160)));
        losses.forEach(loss -> row(table, loss));
        flow.table(table);
    }

    private void row(Table table, FuseLoss loss) {
        Device device = loom.getDevice(loss.device());
        FittedFuse fitted = fitted(device, loss);
        Optional<FuseRating> rating = rating(fitted);
        table.row(
                Type.strong("%s, %s to %s".formatted(device.id(), loss.from(), loss.to()))
                        .then(device.name(), Type.SMALL),
                fitted == null
                        ? Type.strong(UNKNOWN)
                        : Type.strong("marked " + fitted.marked())
                                .then(fitted.style().words(), Type.SMALL),
                Type.figure(
                        rating.map(it -> Figures.signed(it.continuous().toAmperes())).orElse("–")),
                Cell.empty(),
                Type.source(rating.map(FuseRating::provenance).orElse(null)),
                Type.words(names(loss.dark())));
    }

    private static @Nullable FittedFuse fitted(Device device, FuseLoss loss) {
        return device.particulars().fuses().stream()
                .filter(
                        fuse ->
                                Set.of(fuse.from(), fuse.to())
                                        .equals(Set.of(loss.from(), loss.to())))
                .findFirst()
                .orElse(null);
    }

    private Optional<FuseRating> rating(@Nullable FittedFuse fitted) {
        return fitted == null
                ? Optional.empty()
                : side.basis().tables().findFuse(fitted.style(), fitted.marked());
    }

    private String names(Set<String> devices) {
        return devices.isEmpty()
                ? "nothing"
                : devices.stream()
                        .map(id -> loom.getDevice(id).name())
                        .collect(Collectors.joining("; "));
    }
}
