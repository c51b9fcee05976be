package org.loomwright.core.electrical.simulation;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.WireResistance;
import org.loomwright.core.electrical.network.Branch;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The branches of a loom's net: its wires, and the elements of its devices as a scenario and a state have them. */
final class Circuit {

    /** So much in series with a source of as many more volts makes a constant current, to 20 µA at 20 V. */
    private static final Resistance CONSTANT_CURRENT = Resistance.ofOhms(new BigDecimal(1_000_000));

    /** Begins the id of every branch that is a wire. */
    static final String WIRE = "wire ";

    private final Wiring wiring;
    private final WireResistance resistance;
    private final ElectricalSettings settings;
    private final List<Placed> elements = new ArrayList<>();
    private final Map<String, Placed> generators = new HashMap<>();
    private final Map<String, Placed> fields = new HashMap<>();

    Circuit(
            Wiring wiring,
            ElectricalTables tables,
            Behaviours behaviours,
            ElectricalSettings settings) {
        this.wiring = wiring;
        this.resistance = new WireResistance(tables);
        this.settings = settings;
        wiring.devices().values().forEach(device -> elements.addAll(behaviours.of(device)));
        for (Placed element : elements) {
            if (element.element() == Element.GENERATOR) {
                generators.put(element.device().id(), element);
            } else if (element.element() == Element.FIELD) {
                fields.put(element.device().id(), element);
            }
        }
    }

    List<Placed> elements() {
        return elements;
    }

    static String idOf(Wiring.Conductor wire) {
        return WIRE + wire.wire();
    }

    /** The wires at one temperature; they do not depend on the state. */
    List<Branch> wires(Temperature conductors) {
        Map<String, LinearResistance> perMetre = new HashMap<>();
        List<Branch> branches = new ArrayList<>();
        for (Wiring.Conductor wire : wiring.conductors()) {
            LinearResistance linear =
                    perMetre.computeIfAbsent(
                            wire.size(), size -> resistance.perMetre(size, conductors));
            branches.add(
                    Branch.resistor(
                            idOf(wire), wire.from(), wire.to(), linear.times(wire.length())));
        }
        return branches;
    }

    /** The element's branch, or nothing where it is open. */
    Optional<Branch> branch(Placed element, Scenario scenario, State state) {
        String device = element.device().id();
        return switch (element.element()) {
            case SOURCE -> Optional.of(battery(element));
            case GENERATOR -> generator(element, scenario, state);
            case CUT_OUT -> contact(element, state.generates());
            case LINK, FUSE, SENSE -> contact(element, true);
            case CONTACT -> contact(element, scenario.isClosed(element));
            case MAKE -> contact(element, state.pulledIn().contains(device));
            case BREAK -> contact(element, !state.pulledIn().contains(device));
            case ENGINE_OFF -> contact(element, scenario.engine() == Scenario.Engine.OFF);
            case EARTH -> Optional.of(resistor(element, settings.earth()));
            case LOAD, COIL -> isUsed(element, scenario) ? load(element) : Optional.empty();
            case FIELD -> field(element, state);
            case NONE -> Optional.empty();
        };
    }

    private Optional<Branch> contact(Placed element, boolean closed) {
        return closed ? Optional.of(resistor(element, settings.contact())) : Optional.empty();
    }

    private static Branch resistor(Placed element, Resistance resistance) {
        return Branch.resistor(element.id(), element.fromNode(), element.toNode(), resistance);
    }

    /** What is plugged into a socket draws only in scenarios that say so. */
    private static boolean isUsed(Placed element, Scenario scenario) {
        return element.device().kind() != DeviceKind.SOCKET || scenario.isClosed(element);
    }

    private Optional<Branch> load(Placed element) {
        Current load = loadOf(element);
        return load == null || load.milliamperes() <= 0
                ? Optional.empty()
                : Optional.of(resistor(element, Resistance.of(system(), load)));
    }

    private @Nullable Current loadOf(Placed element) {
        Device device = element.device();
        boolean unknownCoil = element.element() == Element.COIL && device.load() == null;
        return unknownCoil ? settings.relayCoil() : device.load();
    }

    private Branch battery(Placed element) {
        return source(
                element, settings.batteryResistance(), State.scaled(settings.battery(), system()));
    }

    /** The current of a source counts from its earth to its live side: positive when it gives. */
    private static Branch source(Placed element, Resistance inside, Voltage emf) {
        return new Branch(element.id(), element.toNode(), element.fromNode(), inside, emf);
    }

    /** Joined to the output inside an alternator that works; with a dynamo the regulator keeps the current about constant. */
    private Optional<Branch> field(Placed element, State state) {
        boolean isDynamo = element.device().kind() == DeviceKind.DYNAMO;
        Current usual = isDynamo ? settings.dynamoField() : settings.alternatorField();
        Placed generator = generators.get(element.device().id());
        if (generator == null || !state.isSteady(generator)) {
            return Optional.of(resistor(element, Resistance.of(system(), usual)));
        }
        return Optional.of(
                isDynamo
                        ? constant(element, element.fromNode(), element.toNode(), usual)
                        : Branch.resistor(
                                element.id(),
                                element.fromNode(),
                                generator.fromNode(),
                                settings.contact()));
    }

    private static Branch constant(Placed element, String from, String to, Current current) {
        double volts = current.toDoubleAmperes() * CONSTANT_CURRENT.toDoubleOhms();
        return new Branch(
                element.id(), from, to, CONSTANT_CURRENT, Voltage.roundedFromVolts(volts));
    }

    /** What a dynamo has to give its own field beside its output. */
    Current ownField(Placed generator) {
        boolean isOwn =
                generator.device().kind() == DeviceKind.DYNAMO
                        && fields.containsKey(generator.device().id());
        return isOwn ? settings.dynamoField() : Current.ZERO;
    }

    /** The field that decides whether the generator gives anything, if it has one. */
    Optional<Placed> findField(Placed generator) {
        return Optional.ofNullable(fields.get(generator.device().id()));
    }

    private Optional<Branch> generator(Placed element, Scenario scenario, State state) {
        return switch (state.modeOf(element)) {
            case STANDING, UNEXCITED ->
                    element.device().kind() == DeviceKind.DYNAMO
                            ? Optional.of(resistor(element, settings.generatorResistance()))
                            : Optional.empty();
            case BUILDING, REGULATING ->
                    Optional.of(
                            source(
                                    element,
                                    settings.generatorResistance(),
                                    State.scaled(settings.regulated(), system())));
            case LIMITED -> {
                Current output = State.outputOf(element, scenario.engine(), settings);
                yield Optional.of(
                        constant(
                                element,
                                element.toNode(),
                                element.fromNode(),
                                output.plus(ownField(element))));
            }
        };
    }

    private Voltage system() {
        return wiring.system();
    }
}
