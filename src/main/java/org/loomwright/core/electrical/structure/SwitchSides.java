package org.loomwright.core.electrical.structure;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.DeviceKind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Added loads that are fed from the wrong side of a switch. What was recorded is left alone. */
final class SwitchSides {

    private final Wiring wiring;
    private final StructureSettings settings;
    private final List<Placed> loads;

    SwitchSides(Wiring wiring, StructureSettings settings) {
        this.wiring = wiring;
        this.settings = settings;
        this.loads = wiring.elements(Element.LOAD);
    }

    List<ElectricalFinding> findings() {
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Placed load : loads) {
            if (wiring.isNew(load.device()) && wiring.feedOf(load).isPresent()) {
                beforeSwitchOfSiblings(load).ifPresent(findings::add);
                onWhenParked(load).ifPresent(findings::add);
                withoutSideLamps(load).ifPresent(findings::add);
                switchedToEarth(load).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private String serviceOf(Placed load) {
        return wiring.serviceOf(load.device()).orElse("");
    }

    private Optional<ElectricalFinding> beforeSwitchOfSiblings(Placed load) {
        SortedSet<String> missing = commonSwitches(siblings(load));
        missing.removeAll(wiring.switchesOf(load));
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        finding(
                                load,
                                Severity.WARNING,
                                "%s is fed from before %s, which switches everything else that serves the same (%s)."
                                        .formatted(
                                                Words.of(load.device()),
                                                String.join(" and ", missing),
                                                serviceOf(load)),
                                "Take its feed from behind %s.".formatted(missing.last()),
                                null));
    }

    /** Other loads of the same service, those that were recorded if there are any. */
    private List<Placed> siblings(Placed load) {
        List<Placed> siblings =
                loads.stream()
                        .filter(other -> !other.device().equals(load.device()))
                        .filter(other -> !serviceOf(load).isEmpty())
                        .filter(other -> serviceOf(other).equals(serviceOf(load)))
                        .filter(other -> wiring.feedOf(other).isPresent())
                        .toList();
        List<Placed> recorded =
                siblings.stream().filter(other -> !wiring.isNew(other.device())).toList();
        return recorded.isEmpty() ? siblings : recorded;
    }

    private SortedSet<String> commonSwitches(List<Placed> siblings) {
        return siblings.stream()
                .map(wiring::switchesOf)
                .reduce(
                        (one, other) -> {
                            SortedSet<String> common = new TreeSet<>(one);
                            common.retainAll(other);
                            return common;
                        })
                .map(TreeSet::new)
                .orElseGet(TreeSet::new);
    }

    private Optional<ElectricalFinding> onWhenParked(Placed load) {
        boolean isToBeOff =
                settings.offWhenParked().contains(serviceOf(load))
                        || load.device().kind() == DeviceKind.RADIO
                        || load.device().kind() == DeviceKind.GAUGE;
        if (!isToBeOff || !isAlwaysLive(load)) {
            return Optional.empty();
        }
        Set<String> own = wiring.switchesOf(load);
        String text =
                own.isEmpty()
                        ? "%s is fed from before the ignition switch and stays on when the car is parked (%s)."
                                .formatted(Words.of(load.device()), practice())
                        : "%s is fed from before the ignition switch; %s can leave it on when the car is parked (%s)."
                                .formatted(
                                        Words.of(load.device()),
                                        String.join(" and ", new TreeSet<>(own)),
                                        practice());
        return Optional.of(
                finding(
                        load,
                        own.isEmpty() ? Severity.WARNING : Severity.NOTE,
                        text,
                        "Feed it, or the coil of its relay, from a fuse behind the ignition"
                                + " switch.",
                        settings.fedSource()));
    }

    private boolean isAlwaysLive(Placed load) {
        return wiring.commandOf(load)
                .filter(supply -> supply == Supply.BATTERY || supply == Supply.BATTERY_FUSED)
                .isPresent();
    }

    private Optional<ElectricalFinding> withoutSideLamps(Placed load) {
        boolean follows =
                wiring.commandOf(load)
                        .filter(supply -> supply == Supply.SIDE_LAMPS || supply == Supply.HEADLAMPS)
                        .isPresent();
        if (follows || !settings.withSideLamps().contains(serviceOf(load))) {
            return Optional.empty();
        }
        String supply = wiring.commandOf(load).map(Supply::words).orElse("nothing");
        return Optional.of(
                finding(
                        load,
                        Severity.WARNING,
                        "%s should burn only with the side lamps, but its switch or relay is fed from: %s (%s)."
                                .formatted(Words.of(load.device()), supply, practice()),
                        "Take the feed of its switch from the side-lamp contact of the lighting"
                                + " switch, and check local rules.",
                        settings.fedSource()));
    }

    /** A switch in the earth side leaves the feed live up to the load, and a way to the body past the switch turns the load on. */
    private Optional<ElectricalFinding> switchedToEarth(Placed load) {
        SortedSet<String> earthSide = wiring.earthSwitchesOf(load);
        SortedSet<String> feedSide = wiring.switchesOf(load);
        feedSide.removeAll(earthSide);
        if (earthSide.isEmpty() || !feedSide.isEmpty()) {
            return Optional.empty();
        }
        boolean hasOtherWays =
                load.device().kind() == DeviceKind.RADIO
                        || load.device().kind() == DeviceKind.SOCKET;
        String consequence =
                hasOtherWays
                        ? "its case, aerial or plug can reach the body past the switch"
                        : "it is live when off, and a chafed wire behind it turns it on";
        return Optional.of(
                finding(
                        load,
                        hasOtherWays ? Severity.WARNING : Severity.NOTE,
                        "%s is switched only on its earth side, by %s: %s."
                                .formatted(
                                        Words.of(load.device()),
                                        String.join(" and ", earthSide),
                                        consequence),
                        "Put the switch in the feed.",
                        null));
    }

    private String practice() {
        return settings.fedSource().source();
    }

    private static ElectricalFinding finding(
            Placed load,
            Severity severity,
            String text,
            String remedy,
            @Nullable Provenance source) {
        return new ElectricalFinding(
                new Finding(
                        "electrical.wrong-side-of-switch",
                        severity,
                        Words.subject(load.device()),
                        text),
                "",
                null,
                null,
                source,
                remedy);
    }
}
