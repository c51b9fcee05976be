package org.loomwright.core.electrical.charging;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Current;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Scenarios in which the battery makes up for the generator: {@code electrical.charge-negative}, one finding for each way of running the
 * engine, in the worst scenario. A car that never kept up is told as original. Immutable and thread-safe.
 */
public final class ChargingChecks {

    /** Own choice: what additions change by less than that comes from the last digits of a simulation. */
    private static final long LEAST_CHANGE_MILLIAMPERES = 100;

    private final ChargingSettings settings;

    /**
     * @param settings those of the balances
     */
    public ChargingChecks(ChargingSettings settings) {
        this.settings = settings;
    }

    /**
     * @param balances of the loom as it is to be, in scenarios that last: what is only there to find the greatest current says nothing about a
     *     battery
     * @param recorded of the loom as it was recorded, matched by the name of the scenario; the same list where nothing was added
     * @return what was found, the worst first
     */
    public List<ElectricalFinding> findings(
            List<ChargingBalance> balances, List<ChargingBalance> recorded) {
        Map<String, ChargingBalance> before = new HashMap<>();
        recorded.forEach(balance -> before.put(balance.scenario(), balance));
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Engine engine : Engine.values()) {
            balances.stream()
                    .filter(balance -> balance.engine() == engine && balance.isNegative())
                    .min(
                            (one, other) -> {
                                int order = one.balance().compareTo(other.balance());
                                return order != 0
                                        ? order
                                        : one.scenario().compareTo(other.scenario());
                            })
                    .ifPresent(worst -> findings.add(finding(worst, before.get(worst.scenario()))));
        }
        return findings.stream().sorted(ElectricalFinding.WORST_FIRST).toList();
    }

    private ElectricalFinding finding(ChargingBalance now, @Nullable ChargingBalance before) {
        return new ElectricalFinding(
                new Finding(
                        "electrical.charge-negative",
                        severity(now, before),
                        Subject.of(ThingKind.LOOM, ""),
                        text(now, before)),
                now.scenario(),
                amperes(now.drawn()),
                amperes(now.output()),
                settings.source(),
                remedy(now));
    }

    /** With the engine standing a battery is there to be used; at idle a dynamo gives nothing anyway. */
    private Severity severity(ChargingBalance now, @Nullable ChargingBalance before) {
        boolean worse = isWorse(now, before);
        return switch (now.engine()) {
            case OFF -> worse ? Severity.WARNING : Severity.NOTE;
            case IDLE -> worse ? Severity.WARNING : Severity.NOTE;
            case AT_SPEED -> {
                boolean soon =
                        Objects.requireNonNull(now.hoursToFlat())
                                        .compareTo(BigDecimal.valueOf(settings.soonHours()))
                                < 0;
                yield worse && soon ? Severity.FAULT : Severity.WARNING;
            }
        };
    }

    private static boolean isWorse(ChargingBalance now, @Nullable ChargingBalance before) {
        return before != null
                && before.balance().milliamperes() - now.balance().milliamperes()
                        > LEAST_CHANGE_MILLIAMPERES;
    }

    private String text(ChargingBalance now, @Nullable ChargingBalance before) {
        String figures =
                "In scenario '%s' (%s) the loads draw %s on average and the generator can give %s: the battery loses %s Ah every hour and is down by %s after %s h (%d Ah, %s)."
                        .formatted(
                                now.scenario(),
                                words(now.engine()),
                                amperes(now.drawn()),
                                amperes(now.output()),
                                lost(now),
                                settings.usable()
                                                .toFraction()
                                                .movePointRight(2)
                                                .stripTrailingZeros()
                                                .toPlainString()
                                        + " %",
                                Objects.requireNonNull(now.hoursToFlat()).toPlainString(),
                                settings.capacityAmpereHours(),
                                settings.source().status().words());
        return figures + compared(now, before);
    }

    private static String lost(ChargingBalance balance) {
        return amperes(balance.balance()).value().negate().toPlainString();
    }

    private static String compared(ChargingBalance now, @Nullable ChargingBalance before) {
        if (before == null) {
            return "";
        }
        if (!isWorse(now, before)) {
            return " It is so as original.";
        }
        return before.isNegative()
                ? " As original it lost %s Ah an hour; the additions draw %s more."
                        .formatted(lost(before), more(now, before))
                : " As original %s were left over; the additions draw %s more."
                        .formatted(amperes(before.balance()), more(now, before));
    }

    private static Figure more(ChargingBalance now, ChargingBalance before) {
        return amperes(
                Current.ofMilliamperes(now.drawn().milliamperes() - before.drawn().milliamperes()));
    }

    private static String words(Engine engine) {
        return switch (engine) {
            case OFF -> "engine off";
            case IDLE -> "at idle";
            case AT_SPEED -> "at speed";
        };
    }

    private static String remedy(ChargingBalance now) {
        BigDecimal least = now.drawn().toAmperes().setScale(0, RoundingMode.CEILING);
        return switch (now.engine()) {
            case OFF -> "Do not leave it like that for long with the engine off.";
            case IDLE, AT_SPEED ->
                    "A generator that gives at least %s A %s would carry it, or leave something off."
                            .formatted(least.toPlainString(), words(now.engine()));
        };
    }

    private static Figure amperes(Current current) {
        return new Figure(current.toAmperes().setScale(1, RoundingMode.HALF_UP), "A");
    }
}
