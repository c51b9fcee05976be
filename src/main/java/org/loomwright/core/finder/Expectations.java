package org.loomwright.core.finder;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.finder.Settings.Setting;
import org.loomwright.core.finding.Outcome.Accepted;
import org.loomwright.core.finding.Outcome.Rejected;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What a voltmeter should show on a wire, switch by switch: with everything on that leads to it, with each of those off by itself, and
 * with each switch on that joins it to the body. All other switches are off, the conductors are at 20 °C. Read at the end farther from
 * the source. Cost: one simulation for each line.
 */
public final class Expectations {

    private static final Temperature COOL = Temperature.ofCelsius(20);

    private final TracedLoom traced;
    private final Simulation simulation;
    private final Settings settings;

    /**
     * @param traced a loom
     * @param simulation of the same loom
     */
    public Expectations(TracedLoom traced, Simulation simulation) {
        this.traced = traced;
        this.simulation = simulation;
        this.settings = new Settings(traced);
    }

    /**
     * @param wire id of a wire of the loom
     * @return what to expect on it, the fullest state first
     * @throws IllegalArgumentException if the loom has no such wire
     */
    public List<Expected> of(String wire) {
        Wire there = traced.loom().getWire(wire);
        Set<Setting> feeding = settings.feeding(there);
        List<Expected> expected = new ArrayList<>();
        if (traced.tracing().get(wire).supply() == Supply.GENERATOR) {
            add(there, feeding, Engine.AT_SPEED, expected);
        }
        add(there, feeding, Engine.OFF, expected);
        for (Setting off : feeding) {
            Set<Setting> rest = new LinkedHashSet<>(feeding);
            rest.remove(off);
            add(there, rest, Engine.OFF, expected);
        }
        for (Setting earthing : settings.earthing(there)) {
            Set<Setting> more = new LinkedHashSet<>(feeding);
            more.add(earthing);
            add(there, more, Engine.OFF, expected);
        }
        return List.copyOf(expected);
    }

    private void add(Wire wire, Set<Setting> on, Engine engine, List<Expected> expected) {
        switch (simulation.run(scenario(on, engine))) {
            case Accepted<Readings>(Readings readings) ->
                    expected.add(expected(state(on, engine), voltage(wire, readings)));
            case Rejected<Readings> rejected -> {
                // A contact that no scenario can close tells nothing.
            }
        }
    }

    private static Scenario scenario(Set<Setting> on, Engine engine) {
        Map<String, Set<String>> closed = new TreeMap<>();
        on.forEach(
                setting ->
                        closed.computeIfAbsent(setting.device(), device -> new TreeSet<>())
                                .add(setting.contact()));
        return new Scenario("finding a wire", closed, engine, COOL);
    }

    private @Nullable Voltage voltage(Wire wire, Readings readings) {
        WireTrace trace = traced.tracing().get(wire.id());
        Side far = trace.source() == Side.B ? Side.A : Side.B;
        return readings.points().get(wire.end(far).place());
    }

    private static String state(Set<Setting> on, Engine engine) {
        String switches =
                on.isEmpty()
                        ? "every switch off"
                        : on.stream().map(Setting::words).collect(Collectors.joining(", "))
                                + " on, all else off";
        return switch (engine) {
            case OFF -> switches;
            case IDLE -> switches + ", engine idling";
            case AT_SPEED -> switches + ", engine at speed";
        };
    }

    private static Expected expected(String state, @Nullable Voltage volts) {
        String shown =
                volts == null
                        ? "nothing certain, because nothing is joined to it,"
                        : "about %s V"
                                .formatted(
                                        volts.toVolts()
                                                .setScale(1, RoundingMode.HALF_UP)
                                                .toPlainString());
        return new Expected(state, volts, "%s with %s".formatted(shown, state));
    }
}
