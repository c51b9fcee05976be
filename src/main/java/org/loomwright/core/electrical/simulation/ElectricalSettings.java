package org.loomwright.core.electrical.simulation;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.core.routing.Allowances;

import java.util.List;
import java.util.Map;

/**
 * What a loom document does not say and a simulation needs. Everything may be edited; voltages are those of a 12 V system and are scaled
 * to the vehicle's.
 *
 * @param battery its electromotive force at 12 V nominal
 * @param batteryResistance inside it, at least 1 µΩ
 * @param regulated voltage that a generator keeps at its terminal, at 12 V nominal
 * @param generatorResistance inside it, at least 1 µΩ
 * @param dynamo what a dynamo gives
 * @param alternator what an alternator gives
 * @param generators what particular generators give instead, by device
 * @param contact resistance of every contact, link and fuse
 * @param earth resistance of every earth screw
 * @param relayCoil current of a relay's coil whose load is not recorded
 * @param pullIn share of the nominal voltage at which a relay pulls in
 * @param dropOut share of the nominal voltage below which it lets go, no more than pullIn
 * @param sense current from which a flasher works
 * @param flasherDuty share of the time that a working flasher's lamps are lit
 * @param dynamoField what the field of a dynamo takes while it gives current
 * @param alternatorField what the field of an alternator would take at nominal voltage without a lamp before it
 * @param leastExciting current in its field from which a generator works
 * @param allowances take-up of the wires
 */
public record ElectricalSettings(
        Voltage battery,
        Resistance batteryResistance,
        Voltage regulated,
        Resistance generatorResistance,
        GeneratorOutput dynamo,
        GeneratorOutput alternator,
        Map<String, GeneratorOutput> generators,
        Resistance contact,
        Resistance earth,
        Current relayCoil,
        Ratio pullIn,
        Ratio dropOut,
        Current sense,
        Ratio flasherDuty,
        Current dynamoField,
        Current alternatorField,
        Current leastExciting,
        Allowances allowances) {

    private static final Resistance LEAST_INSIDE = Resistance.ofNanoohms(1_000);

    /**
     * What a generator can give.
     *
     * @param idle with the engine idling
     * @param atSpeed with the engine at speed
     */
    public record GeneratorOutput(Current idle, Current atSpeed) {

        public GeneratorOutput {
            if (idle.milliamperes() < 0 || idle.compareTo(atSpeed) > 0) {
                throw new IllegalArgumentException(
                        "a generator gives 0 A to %s at idle, was %s".formatted(atSpeed, idle));
            }
        }

        private GeneratorOutput scaledTo(Current rating) {
            long most = Math.max(1, atSpeed.milliamperes());
            double share = (double) idle.milliamperes() / most;
            return new GeneratorOutput(
                    Current.ofMilliamperes(Math.round(rating.milliamperes() * share)), rating);
        }
    }

    /**
     * The same as the table {@code shared/catalogue/electrical-settings.csv}, which tells where each figure comes from, for code that has no
     * files. Dynamos of the 1950s and 1960s gave 20 to 22 A and relay coils take 0.15 to 0.2 A (published, owners' and trade pages). All others are
     * from memory: 12.6 V and 10 mΩ for a charged battery, 14.2 V regulated, nothing from a dynamo at idle, 20 A and 45 A from an
     * alternator, 3 mΩ for a contact, 2 mΩ for an earth screw, relays that pull in at 60 % and let go at 25 %, flashers from 0.5 A that are
     * lit half of the time, fields of 1.5 A and 3 A that work from 0.08 A.
     */
    public static final ElectricalSettings USUAL =
            new ElectricalSettings(
                    Voltage.ofMillivolts(12_600),
                    Resistance.ofNanoohms(10_000_000),
                    Voltage.ofMillivolts(14_200),
                    Resistance.ofNanoohms(20_000_000),
                    new GeneratorOutput(Current.ZERO, Current.ofMilliamperes(22_000)),
                    new GeneratorOutput(
                            Current.ofMilliamperes(20_000), Current.ofMilliamperes(45_000)),
                    Map.of(),
                    Resistance.ofNanoohms(3_000_000),
                    Resistance.ofNanoohms(2_000_000),
                    Current.ofMilliamperes(150),
                    new Ratio(600_000),
                    new Ratio(250_000),
                    Current.ofMilliamperes(500),
                    new Ratio(500_000),
                    Current.ofMilliamperes(1_500),
                    Current.ofMilliamperes(3_000),
                    Current.ofMilliamperes(80),
                    Allowances.USUAL);

    public ElectricalSettings {
        generators = Map.copyOf(generators);
        if (batteryResistance.compareTo(LEAST_INSIDE) < 0
                || generatorResistance.compareTo(LEAST_INSIDE) < 0) {
            throw new IllegalArgumentException(
                    "a source has at least %s inside, was %s and %s"
                            .formatted(LEAST_INSIDE, batteryResistance, generatorResistance));
        }
        if (contact.compareTo(Resistance.ZERO) < 0 || earth.compareTo(Resistance.ZERO) < 0) {
            throw new IllegalArgumentException("a contact's resistance is not negative");
        }
        if (relayCoil.milliamperes() <= 0) {
            throw new IllegalArgumentException("a relay's coil takes current, was " + relayCoil);
        }
        if (dropOut.compareTo(pullIn) > 0) {
            throw new IllegalArgumentException(
                    "a relay lets go at %s, above the %s where it pulls in"
                            .formatted(dropOut, pullIn));
        }
        if (flasherDuty.compareTo(Ratio.ZERO) <= 0 || flasherDuty.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(
                    "a flasher's lamps are lit for a share of the time, was " + flasherDuty);
        }
        if (leastExciting.milliamperes() <= 0
                || leastExciting.compareTo(dynamoField) > 0
                || leastExciting.compareTo(alternatorField) > 0) {
            throw new IllegalArgumentException(
                    "fields of %s and %s must reach the least of %s, which is more than nothing"
                            .formatted(dynamoField, alternatorField, leastExciting));
        }
    }

    /**
     * @param rows one for each name of {@code shared/catalogue/electrical-settings.csv}
     * @param allowances take-up of the wires
     * @return the settings that they make
     * @throws IllegalArgumentException if a row is missing, stands twice, is unknown or has another unit
     */
    public static ElectricalSettings of(List<SettingRow> rows, Allowances allowances) {
        return new SettingTable(rows).settings(allowances);
    }

    /**
     * @param generator a dynamo or an alternator
     * @return what it gives: as the settings say of it by its id, or else as its own rating says (at idle the usual share of it), or else the usual
     */
    public GeneratorOutput outputOf(Device generator) {
        GeneratorOutput usual = generator.kind() == DeviceKind.DYNAMO ? dynamo : alternator;
        Current rating = generator.particulars().rating();
        GeneratorOutput own = rating == null ? usual : usual.scaledTo(rating);
        return generators.getOrDefault(generator.id(), own);
    }
}
