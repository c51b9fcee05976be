package org.loomwright.core.electrical.fault;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Current;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What short circuits mean for a loom: wires that nothing protects, fuses that are not known to come first. Old cars left much unfused; what is
 * original is told as such. Immutable and thread-safe.
 */
public final class ShortCircuitFindings {

    private static final Duration BRIEF = Duration.ofSeconds(10);
    private static final int MOST_NAMED = 4;

    private final Loom loom;
    private final Catalogue catalogue;
    private final FaultSettings settings;
    private final Predicate<String> isNew;

    /**
     * @param loom the loom
     * @param catalogue the tables that it refers to
     * @param settings those of the short circuits
     * @param isNew whether the wire with that id was added or is not the one that was there
     */
    public ShortCircuitFindings(
            Loom loom, Catalogue catalogue, FaultSettings settings, Predicate<String> isNew) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.settings = settings;
        this.isNew = isNew;
    }

    /**
     * @param shorts one for every wire
     * @return what was found, the worst first
     */
    public List<ElectricalFinding> of(List<ShortCircuit> shorts) {
        List<ElectricalFinding> findings = new ArrayList<>();
        Map<String, FuseOnWay> unmarked = new TreeMap<>();
        for (ShortCircuit shorted : shorts) {
            FuseOnWay fuse = shorted.fuse();
            if (fuse != null && fuse.rating() == null) {
                unmarked.putIfAbsent(fuse.device(), fuse);
            } else if (!shorted.heated().isEmpty() && !shorted.opensFirst()) {
                findings.add(fuse == null ? unfused(shorted) : tooSlow(shorted, fuse));
            }
        }
        unmarked.values().forEach(fuse -> findings.add(unknown(fuse)));
        return findings.stream().sorted(ElectricalFinding.WORST_FIRST).toList();
    }

    private ElectricalFinding unfused(ShortCircuit shorted) {
        boolean added = isNew.test(shorted.wire());
        Current rating = catalogue.getSize(loom.getWire(shorted.wire()).size()).rating();
        String text =
                "Wire %s has no fuse before it%s. If it touched the body at %s, about %s would flow: %s."
                        .formatted(
                                shorted.wire(),
                                added ? "" : ", as original",
                                shorted.place(),
                                rounded(shorted.current()),
                                burning(shorted));
        return new ElectricalFinding(
                new Finding(
                        "electrical.short-unfused",
                        added ? Severity.WARNING : Severity.NOTE,
                        Subject.of(ThingKind.WIRE, shorted.wire()),
                        text),
                shorted.scenario(),
                amperes(shorted.current()),
                null,
                settings.insulationSource(),
                added
                        ? "Put a fuse where the wire begins that carries no more than %s for ever."
                                .formatted(rating)
                        : "");
    }

    private ElectricalFinding tooSlow(ShortCircuit shorted, FuseOnWay fuse) {
        Heated weakest = shorted.weakest().orElseThrow();
        boolean added = isNew.test(shorted.wire()) || isNew.test(weakest.wire());
        Duration within = fuse.within();
        String opens =
                within == null
                        ? "is not known to open at that current"
                        : "may take up to %s (%s)"
                                .formatted(
                                        seconds(within), settings.openingSource().status().words());
        String text =
                "If wire %s%s touched the body at %s, about %s would flow: %s. Fuse %s %s."
                        .formatted(
                                shorted.wire(),
                                added ? "" : ", as original,",
                                shorted.place(),
                                rounded(shorted.current()),
                                burning(shorted),
                                fuse.words(),
                                opens);
        return new ElectricalFinding(
                new Finding(
                        "electrical.short-fuse-too-slow",
                        added ? Severity.FAULT : Severity.WARNING,
                        Subject.of(ThingKind.WIRE, shorted.wire()),
                        text),
                shorted.scenario(),
                within == null ? null : figure(within),
                within == null ? null : figure(weakest.harmed()),
                settings.openingSource(),
                slowRemedy(fuse, weakest));
    }

    private String slowRemedy(FuseOnWay fuse, Heated weakest) {
        return settings.mostContinuous(fuse.through(), weakest.harmed())
                .map(
                        most ->
                                "Fit a fuse that carries no more than %s for ever, or thicker wire in place of %s."
                                        .formatted(rounded(most), weakest.wire()))
                .orElse(
                        "Fit thicker wire in place of %s: no fuse is known to open in time."
                                .formatted(weakest.wire()));
    }

    private static ElectricalFinding unknown(FuseOnWay fuse) {
        return ElectricalFinding.of(
                Finding.note(
                        "electrical.short-fuse-unknown",
                        Subject.of(ThingKind.DEVICE, fuse.device()),
                        "What is marked on fuse %s is not recorded, so nobody can say whether it opens before a wire behind it is harmed."
                                .formatted(fuse.words())),
                "Write down the build and the marking of the fuse.");
    }

    /** The wires that are harmed soon, or else the first one. */
    private String burning(ShortCircuit shorted) {
        List<Heated> heated = shorted.heated();
        List<Heated> soon =
                heated.stream().filter(wire -> !isSlow(wire)).limit(MOST_NAMED).toList();
        List<Heated> named = soon.isEmpty() ? heated.subList(0, 1) : soon;
        int more = heated.size() - named.size();
        return "the metal of %s%s would be at %s (%s), if no heat gets away"
                .formatted(
                        named.stream()
                                .map(ShortCircuitFindings::after)
                                .collect(Collectors.joining(", ")),
                        more > 0 ? " and of %d more later".formatted(more) : "",
                        settings.insulation(),
                        settings.insulationSource().status().words());
    }

    private static boolean isSlow(Heated heated) {
        return heated.harmed().compareTo(BRIEF) > 0;
    }

    private static String after(Heated heated) {
        return isSlow(heated)
                ? "%s after more than %s".formatted(heated.wire(), seconds(BRIEF))
                : "%s after %s".formatted(heated.wire(), seconds(heated.harmed()));
    }

    private static String rounded(Current current) {
        return amperes(current).toString();
    }

    private static Figure amperes(Current current) {
        int decimals = current.milliamperes() < 10_000 ? 1 : 0;
        return new Figure(current.toAmperes().setScale(decimals, RoundingMode.HALF_UP), "A");
    }

    private static String seconds(Duration time) {
        return figure(time).toString();
    }

    private static Figure figure(Duration time) {
        BigDecimal seconds = BigDecimal.valueOf(time.toMillis(), 3);
        int decimals = time.compareTo(Duration.ofSeconds(1)) < 0 ? 2 : 1;
        return new Figure(
                time.toMillis() < 10 ? seconds : seconds.setScale(decimals, RoundingMode.HALF_UP),
                "s");
    }
}
