package org.loomwright.core.electrical.charging;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.ElectricalSettings.GeneratorOutput;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/**
 * The charging balance of one loom. A generator gives what {@link ElectricalSettings#outputOf} says, beside its own field. Flashing lamps
 * count with the duty of {@link ElectricalSettings#flasherDuty}, other services with theirs; the starter is left out, because it runs for
 * seconds. Immutable and thread-safe.
 */
public final class ChargingBalances {

    private final Loom loom;
    private final Catalogue catalogue;
    private final ElectricalSettings electrical;
    private final ChargingSettings settings;
    private final List<GeneratorOutput> generators;

    /**
     * @param loom a proven loom
     * @param catalogue the services
     * @param behaviours what devices do
     * @param electrical the settings of the simulation
     * @param settings those of the balance
     */
    public ChargingBalances(
            Loom loom,
            Catalogue catalogue,
            Behaviours behaviours,
            ElectricalSettings electrical,
            ChargingSettings settings) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.electrical = electrical;
        this.settings = settings;
        this.generators =
                loom.devices().values().stream()
                        .flatMap(device -> behaviours.of(device).stream())
                        .filter(element -> element.element() == Element.GENERATOR)
                        .map(Placed::device)
                        .map(electrical::outputOf)
                        .toList();
    }

    /**
     * @param readings of this loom, one for each scenario
     * @return their balances, in the same order
     */
    public List<ChargingBalance> of(List<Readings> readings) {
        return readings.stream().map(this::of).toList();
    }

    /**
     * @param readings of this loom in one scenario
     * @return its balance
     */
    public ChargingBalance of(Readings readings) {
        Engine engine = readings.scenario().engine();
        Current output = output(engine);
        Current drawn = drawn(readings);
        Current balance = Current.ofMilliamperes(output.milliamperes() - drawn.milliamperes());
        return new ChargingBalance(
                readings.scenario().name(), engine, output, drawn, balance, hoursToFlat(balance));
    }

    /**
     * The days' worth of all scenarios together.
     *
     * @param balances of scenarios
     * @param hours how long each of them lasts, by name; the others do not count
     * @return how many ampere-hours the battery takes in that time, negative where it gives them, to a tenth
     */
    public static BigDecimal ampereHours(
            List<ChargingBalance> balances, Map<String, BigDecimal> hours) {
        return balances.stream()
                .map(
                        it ->
                                it.balance()
                                        .toAmperes()
                                        .multiply(
                                                hours.getOrDefault(it.scenario(), BigDecimal.ZERO)))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .setScale(1, RoundingMode.HALF_EVEN);
    }

    private Current output(Engine engine) {
        return generators.stream()
                .map(
                        output ->
                                switch (engine) {
                                    case OFF -> Current.ZERO;
                                    case IDLE -> output.idle();
                                    case AT_SPEED -> output.atSpeed();
                                })
                .reduce(Current.ZERO, Current::plus);
    }

    private Current drawn(Readings readings) {
        double spared = readings.of(Element.LOAD).stream().mapToDouble(this::sparedAmperes).sum();
        double lit = readings.drawnOnAverage(electrical.flasherDuty()).toDoubleAmperes();
        return Current.roundedFromAmperes(lit - spared);
    }

    /** What a load draws while it is on and does not draw while it is not. */
    private double sparedAmperes(ElementReading reading) {
        Device device = loom.getDevice(reading.device());
        double amperes = Math.abs(reading.current().toDoubleAmperes());
        if (device.kind() == DeviceKind.STARTER) {
            return amperes;
        }
        Ratio duty =
                Tracing.serviceOf(device, catalogue)
                        .map(service -> settings.duties().getOrDefault(service.code(), Ratio.ONE))
                        .orElse(Ratio.ONE);
        return amperes * (1 - duty.toDouble());
    }

    private @Nullable BigDecimal hoursToFlat(Current balance) {
        if (balance.milliamperes() >= 0) {
            return null;
        }
        double usable = settings.capacityAmpereHours() * settings.usable().toDouble();
        return BigDecimal.valueOf(usable / -balance.toDoubleAmperes())
                .setScale(1, RoundingMode.HALF_EVEN);
    }
}
