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
 * The charging balance of one loom. A generator gives what the settings say of it; or else its recorded rating at speed and the usual
 * share of that at idle; or else what its kind usually gives. The starter is left out: it runs for seconds. Immutable and
 * thread-safe.
 */
public final class ChargingBalances {

    private final Loom loom;
    private final Catalogue catalogue;
    private final Behaviours behaviours;
    private final ElectricalSettings electrical;
    private final ChargingSettings settings;

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
        this.behaviours = behaviours;
        this.electrical = electrical;
        this.settings = settings;
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
        return loom.devices().values().stream()
                .flatMap(device -> behaviours.of(device).stream())
                .filter(element -> element.element() == Element.GENERATOR)
                .map(Placed::device)
                .map(this::outputOf)
                .map(
                        output ->
                                switch (engine) {
                                    case OFF -> Current.ZERO;
                                    case IDLE -> output.idle();
                                    case AT_SPEED -> output.atSpeed();
                                })
                .reduce(Current.ZERO, Current::plus);
    }

    private GeneratorOutput outputOf(Device generator) {
        GeneratorOutput said = electrical.generators().get(generator.id());
        GeneratorOutput usual =
                generator.kind() == DeviceKind.DYNAMO
                        ? electrical.dynamo()
                        : electrical.alternator();
        Current rating = generator.particulars().rating();
        if (said != null || rating == null) {
            return said == null ? usual : said;
        }
        double share = usual.idle().toDoubleAmperes() / usual.atSpeed().toDoubleAmperes();
        return new GeneratorOutput(
                Current.roundedFromAmperes(rating.toDoubleAmperes() * share), rating);
    }

    private Current drawn(Readings readings) {
        double amperes =
                readings.elements().stream()
                        .filter(
                                reading ->
                                        reading.element() == Element.LOAD
                                                || reading.element() == Element.COIL)
                        .mapToDouble(this::averageAmperes)
                        .sum();
        return Current.roundedFromAmperes(amperes);
    }

    private double averageAmperes(ElementReading reading) {
        Device device = loom.getDevice(reading.device());
        if (device.kind() == DeviceKind.STARTER) {
            return 0;
        }
        Ratio duty =
                Tracing.serviceOf(device, catalogue)
                        .map(service -> settings.duties().getOrDefault(service.code(), Ratio.ONE))
                        .orElse(Ratio.ONE);
        return Math.abs(reading.current().toDoubleAmperes()) * duty.toDouble();
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
