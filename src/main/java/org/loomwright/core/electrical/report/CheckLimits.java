package org.loomwright.core.electrical.report;

import org.loomwright.core.catalogue.BundleFactor;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.electrical.charging.ChargingSettings;
import org.loomwright.core.electrical.check.current.CurrentRules;
import org.loomwright.core.electrical.check.current.DropLimit;
import org.loomwright.core.electrical.check.current.Sourced;
import org.loomwright.core.electrical.fault.FaultSettings;
import org.loomwright.core.electrical.structure.StructureSettings;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Lists the limits of all electrical checks from the tables and settings that the checks themselves read. */
public final class CheckLimits {

    private static final int PERCENT_SHIFT = 2;

    private final List<CheckLimit> limits = new ArrayList<>();

    private CheckLimits() {}

    /**
     * @param basis what the checks rest on
     * @return every limit with its source, those of one subject after each other; ratings of sizes and fuses are in the catalogue
     */
    public static List<CheckLimit> of(ElectricalBasis basis) {
        CheckLimits all = new CheckLimits();
        all.currents(basis);
        all.fuses(basis.rules());
        all.drops(basis.rules());
        all.shorts(basis.faults());
        all.charging(basis.charging());
        all.structure(basis.structure());
        return List.copyOf(all.limits);
    }

    private void add(String check, String limit, Provenance provenance) {
        limits.add(new CheckLimit(check, limit, provenance));
    }

    private <T> void add(String check, Sourced<T> figure, String limit) {
        add(check, limit, figure.provenance());
    }

    private void currents(ElectricalBasis basis) {
        CurrentRules rules = basis.rules();
        add(
                "Current of a wire: its insulation stands",
                rules.insulation(),
                rules.insulation().value().toString());
        for (BundleFactor factor : basis.tables().bundleFactors()) {
            add(
                    "Current of a wire: share of its rating in a bundle",
                    "%s from %d loaded %s on"
                            .formatted(
                                    percent(factor.factor()),
                                    factor.fromLoadedWires(),
                                    factor.fromLoadedWires() == 1 ? "wire" : "wires"),
                    factor.provenance());
        }
        add(
                "Current of a wire: counts as loaded",
                rules.loadedFrom(),
                "from %s of its rating on".formatted(percent(rules.loadedFrom().value())));
        add(
                "Contact of unknown rating: more current",
                rules.contactGrowth(),
                "at most %s times as much as before".formatted(rules.contactGrowth().value()));
    }

    private void fuses(CurrentRules rules) {
        add(
                "Load of a fuse",
                rules.fuseLoad(),
                "at most %s of what it carries for ever"
                        .formatted(percent(rules.fuseLoad().value())));
        add("Fuse to its source, bare wire", rules.fuseWithinBare());
        add("Fuse to its source, covered wire", rules.fuseWithinCovered());
        add("Fuse to its source, from the battery itself", rules.fuseWithinBattery());
    }

    private void add(String check, Sourced<Length> most) {
        add(check, most, "at most " + most.value());
    }

    private void drops(CurrentRules rules) {
        for (CircuitKind kind : CircuitKind.values()) {
            DropLimit drop = rules.drops().get(kind);
            if (drop != null) {
                String check = "Voltage lost, " + kind.name().toLowerCase(Locale.ROOT);
                add(check, drop.limit(), "at most " + percent(drop.limit().value()));
                add(
                        check + ": aim of new work",
                        drop.aim(),
                        "at most " + percent(drop.aim().value()));
            }
        }
    }

    private void shorts(FaultSettings faults) {
        add(
                "Short circuit: insulation is harmed",
                "from %s of the metal on".formatted(faults.insulation()),
                faults.insulationSource());
        for (FaultSettings.Opening opening : faults.openings()) {
            add(
                    "Short circuit: fuse has opened",
                    "after %s s at %s times what it carries for ever"
                            .formatted(
                                    plain(BigDecimal.valueOf(opening.within().toMillis(), 3)),
                                    opening.multiple()),
                    faults.openingSource());
        }
    }

    private void charging(ChargingSettings charging) {
        add(
                "Charging: the battery holds",
                charging.capacityAmpereHours() + " Ah",
                charging.source());
        add(
                "Charging: the battery counts as flat",
                "when %s of it are taken".formatted(percent(charging.usable())),
                charging.source());
        add(
                "Charging: flat soon, at speed",
                "in less than %d h".formatted(charging.soonHours()),
                charging.source());
        charging.duties().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(
                        duty ->
                                add(
                                        "Charging: share of the time, "
                                                + duty.getKey().replace('-', ' '),
                                        percent(duty.getValue()),
                                        charging.source()));
    }

    private void structure(StructureSettings structure) {
        add(
                "Rings on one earth screw",
                "at most " + structure.mostRings(),
                structure.ringsSource());
        add("Off with the ignition", words(structure.offWhenParked()), structure.fedSource());
        add("Only with the side lamps", words(structure.withSideLamps()), structure.fedSource());
    }

    private static String words(Set<String> services) {
        return services.isEmpty()
                ? "none"
                : services.stream()
                        .sorted()
                        .map(code -> code.replace('-', ' '))
                        .collect(Collectors.joining(", "));
    }

    private static String percent(Ratio share) {
        return plain(share.toFraction().movePointRight(PERCENT_SHIFT)) + " %";
    }

    private static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
