package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.ChangeDevice;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.electrical.check.remedy.Proposal;
import org.loomwright.core.electrical.check.remedy.Proposal.Kind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which fuse would do. Exact: the table's fuses are tried. Advice on substitutes differs between owners; the continuous figure is followed. */
final class FuseAdvice {

    private final ElectricalTables tables;
    private final Ratio fuseLoad;

    FuseAdvice(ElectricalTables tables, Ratio fuseLoad) {
        this.tables = tables;
        this.fuseLoad = fuseLoad;
    }

    /** The greatest fuse of the style that does not carry more than the wire may and that the load leaves room for. */
    Optional<FuseRating> smaller(FuseStyle style, Current wire, Current load) {
        return tables.fuses().stream()
                .filter(fuse -> fuse.style() == style)
                .filter(fuse -> fuse.continuous().compareTo(wire) <= 0)
                .filter(fuse -> carries(fuse, load))
                .max(Comparator.comparing(FuseRating::continuous));
    }

    private boolean carries(FuseRating fuse, Current load) {
        return fuse.continuous().toDoubleAmperes() * fuseLoad.toDouble() >= load.toDoubleAmperes();
    }

    /** The smaller fuse in the same holder, where there is one. */
    Optional<Proposal> change(FuseUnit unit, FuseRating fuse, Current wire, Current load) {
        return smaller(fuse.style(), wire, load)
                .or(() -> smaller(FuseStyle.BLADE, wire, load))
                .map(
                        other ->
                                new Proposal(
                                        Kind.OTHER_FUSE,
                                        overWire(fuse, wire, wire, load),
                                        List.of(change(unit, other)),
                                        0));
    }

    private static Amendment change(FuseUnit unit, FuseRating other) {
        Device device = unit.device();
        Particulars now = device.particulars();
        List<FittedFuse> fuses = new ArrayList<>();
        for (FittedFuse fitted : now.fuses()) {
            fuses.add(
                    unit.isFilledBy(fitted)
                            ? new FittedFuse(
                                    fitted.from(), fitted.to(), other.style(), other.marked())
                            : fitted);
        }
        return new ChangeDevice(
                "fuse-" + device.id(),
                "Carries no more than the wires behind it.",
                device.id(),
                device.name(),
                device.kind(),
                device.load(),
                new Particulars(
                        now.serves(), now.rating(), now.voltage(), now.needsEarth(), fuses));
    }

    /**
     * @param least what the weakest wire behind it may carry
     * @param wire what the wire may carry that is told
     */
    String overWire(FuseRating fuse, Current least, Current wire, Current load) {
        return smaller(fuse.style(), least, load)
                .or(() -> smaller(FuseStyle.BLADE, least, load))
                .map(
                        other ->
                                "Fit a smaller fuse: %s, which carries %s; the greatest load behind it is %s."
                                        .formatted(
                                                FuseUnit.marking(other),
                                                Words.of(other.continuous()),
                                                Words.of(load)))
                .orElse(
                        "No smaller fuse leaves room for its load of %s: give the weak wires a fuse of their own of at most %s where they begin, or take wires that may carry %s."
                                .formatted(
                                        Words.of(load),
                                        Words.of(wire),
                                        Words.of(fuse.continuous())));
    }

    /**
     * @param wire what the weakest wire behind it may carry, or null where there is none
     */
    String underLoad(Current load, @Nullable Current wire) {
        String feed = "Give the largest added load a fused feed of its own, through a relay.";
        return tables.fuses().stream()
                .filter(fuse -> fuse.style() == FuseStyle.BLADE && carries(fuse, load))
                .filter(fuse -> wire != null && fuse.continuous().compareTo(wire) <= 0)
                .min(Comparator.comparing(FuseRating::continuous))
                .map(
                        fuse ->
                                "A %s A blade would do and still protects the weakest wire behind it. Or: %s"
                                        .formatted(fuse.marked().toAmperes().toPlainString(), feed))
                .orElse(
                        "A larger fuse would no longer protect the weakest wire behind it. "
                                + feed);
    }

    /** What to fit instead of a glass fuse. */
    String substitute(FuseRating glass) {
        return tables.fuses().stream()
                .filter(fuse -> fuse.style() == FuseStyle.BLADE)
                .filter(fuse -> fuse.continuous().compareTo(glass.continuous()) <= 0)
                .max(Comparator.comparing(FuseRating::continuous))
                .map(
                        blade ->
                                "As a substitute go by what it carries: a blade of at most %s (the next size made), not by the %s on the glass."
                                        .formatted(
                                                Words.of(blade.marked()), Words.of(glass.marked())))
                .orElse("There is no blade so small; keep to glass fuses.");
    }
}
