package org.loomwright.core.kit.expansion;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.colour.ColourProposals;
import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.Additions;
import org.loomwright.core.electrical.check.current.CurrentChecks;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.testing.TestCatalogue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** Every kit, with its usual answers, on the demonstration loom. */
class KitsOnDemoTest {

    private static final Temperature WARM = Temperature.ofCelsius(20);

    static Stream<String> kits() {
        return Kitted.KITS.all().stream().map(Recipe::id);
    }

    /** The loom that the kit is for: of 6 V where it turns 6 V into 12 V. */
    private static Loom loomFor(String kit) {
        return kit.equals("six-to-twelve")
                ? Kitted.demo(EarthPolarity.POSITIVE, 6_000)
                : Kitted.DEMO;
    }

    private static Loom with(String kit) {
        Loom stock = loomFor(kit);
        return Kitted.amended(stock, Kitted.plan(stock, kit).amendments());
    }

    @ParameterizedTest
    @MethodSource("kits")
    void everyKitAppliesAndGivesReasons(String kit) {
        Loom stock = loomFor(kit);
        KitPlan plan = Kitted.plan(stock, kit);
        assertThat(plan.amendments()).isNotEmpty();
        assertThat(Kitted.amended(stock, plan.amendments())).isNotEqualTo(stock);
        assertThat(plan.amendments())
                .extracting(Amendment::id)
                .allMatch(id -> id.startsWith(Kitted.recipe(kit).prefix() + "-A"));
        assertThat(plan.notes()).isNotEmpty();
        for (Amendment amendment : plan.amendments()) {
            if (amendment instanceof Amendment.AddWire added) {
                assertThat(rulesFor(plan, added.wire().id())).contains("size", "colour");
            }
        }
    }

    private static final CrossSection MOST_IN_A_BULLET =
            Objects.requireNonNull(
                    TestCatalogue.get().getTerminal("bullet-4.7-large-bore").mostConductor());

    @ParameterizedTest
    @MethodSource("kits")
    void everyTerminalTakesItsConductor(String kit) {
        Catalogue catalogue = TestCatalogue.get();
        for (Amendment amendment : Kitted.plan(loomFor(kit), kit).amendments()) {
            if (amendment instanceof Amendment.AddWire(String id, String reason, Wire wire)) {
                for (Side side : Side.values()) {
                    String terminal = wire.end(side).terminal();
                    CrossSection metal = catalogue.getSize(wire.size()).metal();
                    // No bullet takes more; a snap joint that is there takes nothing but bullets.
                    boolean isBeyondBullets =
                            terminal.startsWith("bullet") && metal.compareTo(MOST_IN_A_BULLET) > 0;
                    assertThat(catalogue.getTerminal(terminal).takes(metal))
                            .as("%s of %s on %s", terminal, wire.id(), wire.size())
                            .isEqualTo(!isBeyondBullets);
                }
            }
        }
    }

    @Test
    void aColourThatNobodyPublishedGivesWayToTheRulesOfTheCode() {
        KitPlan plan = Kitted.plan(Kitted.DEMO, "heated-seat");
        Loom loom = Kitted.amended(Kitted.DEMO, plan.amendments());
        ColourProposals proposals =
                new ColourProposals(
                        TracedLoom.of(
                                loom,
                                Tracing.of(loom, TestCatalogue.get(), Kitted.BEHAVIOURS),
                                TestCatalogue.get()),
                        Kitted.BENCH.colours());
        for (KitNote note : plan.notes()) {
            boolean isGuess =
                    note.rule().equals("colour")
                            && note.provenance().status() != Provenance.Status.FOUND;
            if (isGuess) {
                String wire = note.about().id();
                assertThat(proposals.of(wire))
                        .as(note.text())
                        .isPresent()
                        .get()
                        .matches(it -> it.isRight(loom.getWire(wire).colour()));
            }
        }
    }

    private static List<String> rulesFor(KitPlan plan, String wire) {
        return plan.notes().stream()
                .filter(note -> note.about().id().equals(wire))
                .map(KitNote::rule)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "reversing-lamps, REVERSE-LAMP/FEED, IGNITION_FUSED",
        "reversing-lamps, REVERSE-LAMP-2/FEED, IGNITION_FUSED",
        "fog-lamps, FOG-LAMP/FEED, BATTERY_FUSED",
        "fog-lamps, FOG-LAMP-2/FEED, BATTERY_FUSED",
        "fog-lamps, FOG-RELAY/86, SIDE_LAMPS",
        "radiator-fan, FAN-MOTOR/FEED, BATTERY_FUSED",
        "radiator-fan, FAN-RELAY/86, IGNITION_FUSED",
        "rear-fog-lamp, REAR-FOG-LAMP/FEED, HEADLAMPS",
        "power-socket, POWER-SOCKET/FEED, BATTERY_FUSED",
        "radio, RADIO/FEED, IGNITION_FUSED",
        "heated-rear-window, HEATED-WINDOW/FEED, BATTERY_FUSED",
        "heated-seat, HS-RELAY/86, IGNITION_FUSED",
        "extra-gauge, EXTRA-GAUGE/FEED, IGNITION_FUSED",
        "extra-gauge, EXTRA-GAUGE-LAMP/FEED, SIDE_LAMPS",
        "hazard-flashers, HAZARD-SWITCH/FEED, BATTERY_FUSED",
        "headlamp-relays, MAIN-RELAY/30, BATTERY_FUSED",
        "headlamp-relays, MAIN-RELAY/86, HEADLAMPS",
        "dynamo-to-alternator, LIGHT-SWITCH/FEED, BATTERY",
        "fuse-box, SECOND-FUSE-BOX/A2, IGNITION_FUSED",
        "screen-washer, WASHER-PUMP/FEED, IGNITION_FUSED",
        "courtesy-lamp, COURTESY-LAMP/FEED, BATTERY_FUSED",
        "loud-horns, LOUD-HORN/FEED, BATTERY_FUSED",
    })
    void whatIsAddedIsFedAsItShouldBe(String kit, String place, Supply supply) {
        Tracing tracing = Tracing.of(with(kit), TestCatalogue.get(), Kitted.BEHAVIOURS);
        assertThat(tracing.supplyAt(place)).contains(supply);
    }

    @ParameterizedTest
    @MethodSource("kits")
    void theChecksOfCurrentsFindNoFaultInWhatIsNew(String kit) {
        Loom stock = loomFor(kit);
        KitPlan plan = Kitted.plan(stock, kit);
        Loom loom = Kitted.amended(stock, plan.amendments());
        Set<String> wires = new HashSet<>();
        Set<String> devices = new HashSet<>();
        for (Amendment amendment : plan.amendments()) {
            if (amendment instanceof Amendment.AddWire added) {
                wires.add(added.wire().id());
            } else if (amendment instanceof Amendment.AddDevice added) {
                devices.add(added.device().id());
            }
        }
        assertThat(findings(loom, new Additions(wires, devices)))
                .filteredOn(it -> it.finding().severity() == Severity.FAULT)
                .filteredOn(
                        it ->
                                it.finding().subject().kind() == ThingKind.WIRE
                                                && wires.contains(it.finding().subject().id())
                                        || devices.contains(it.finding().subject().id()))
                .extracting(it -> it.finding().text())
                .allMatch(text -> isToldByTheKit(kit, text));
    }

    /** Two kits leave old wires behind a new fuse that were too thin for the old one as well, and say so. */
    private static boolean isToldByTheKit(String kit, String text) {
        String told =
                switch (kit) {
                    case "hazard-flashers" -> "The old wires to the flasher lamps may be thinner";
                    case "fuse-box" -> "Only the first wire of each circuit was looked at";
                    default -> "nothing";
                };
        return text.contains("but wire W0")
                && Kitted.plan(Kitted.DEMO, kit).notes().stream()
                        .anyMatch(note -> note.text().startsWith(told));
    }

    private static List<ElectricalFinding> findings(Loom loom, Additions additions) {
        CurrentChecks checks =
                new CurrentChecks(
                        loom,
                        TestCatalogue.get(),
                        TestCatalogue.electrical(),
                        Tracing.of(loom, TestCatalogue.get(), Kitted.BEHAVIOURS),
                        Kitted.BENCH.rules());
        List<Readings> readings =
                Kitted.BENCH.scenarios().of(loom, TestCatalogue.get()).stream()
                        .map(scenario -> Kitted.read(loom, scenario))
                        .toList();
        return checks.find(readings, null, additions);
    }

    private static long milliamperes(Loom loom, Scenario scenario, String device) {
        return Kitted.read(loom, scenario).ofDevice(device).stream()
                .mapToLong(reading -> Math.abs(reading.current().milliamperes()))
                .max()
                .orElse(0);
    }

    @Test
    void reversingLampsBurnWithIgnitionAndSwitchAlone() {
        Loom loom = with("reversing-lamps");
        Scenario off = Scenario.of("off", Engine.OFF, WARM).with("REVERSE-SWITCH", "OUT");
        Scenario on = off.with("IGN-SWITCH", "IGN");
        assertThat(milliamperes(loom, off, "REVERSE-LAMP")).isZero();
        assertThat(milliamperes(loom, on, "REVERSE-LAMP")).isBetween(1_500L, 1_900L);
        assertThat(milliamperes(loom, on, "REVERSE-LAMP-2")).isBetween(1_500L, 1_900L);
    }

    @Test
    void fogLampsFollowTheSideLamps() {
        Loom loom = with("fog-lamps");
        Scenario off = Scenario.of("off", Engine.OFF, WARM).with("FOG-SWITCH", "OUT");
        assertThat(milliamperes(loom, off, "FOG-LAMP")).isZero();
        assertThat(milliamperes(loom, off.with("LIGHT-SWITCH", "SIDE"), "FOG-LAMP"))
                .isBetween(4_000L, 4_900L);
    }

    @Test
    void rearFogLampBurnsOnlyWithTheHeadlampsOn() {
        Loom loom = with("rear-fog-lamp");
        Scenario switched = Scenario.of("on", Engine.OFF, WARM).with("REAR-FOG-SWITCH", "OUT");
        assertThat(milliamperes(loom, switched.with("LIGHT-SWITCH", "SIDE"), "REAR-FOG-LAMP"))
                .isZero();
        Scenario lit = switched.with("LIGHT-SWITCH", "SIDE", "HEAD");
        assertThat(milliamperes(loom, lit, "REAR-FOG-LAMP")).isPositive();
        assertThat(milliamperes(loom, lit, "REAR-FOG-WARNING")).isPositive();
    }

    @Test
    void theFanRunsWhenIgnitionAndThermostatSaySo() {
        Loom loom = with("radiator-fan");
        Scenario hot = Scenario.of("hot", Engine.OFF, WARM).with("FAN-SWITCH", "SWITCH");
        assertThat(milliamperes(loom, hot, "FAN-MOTOR")).isZero();
        Scenario running = hot.with("IGN-SWITCH", "IGN");
        assertThat(milliamperes(loom, running, "FAN-MOTOR")).isBetween(9_000L, 10_700L);
    }

    @Test
    void hazardFlashersLightAllFourLampsWithoutTheIgnition() {
        Loom loom = with("hazard-flashers");
        Scenario hazard =
                Scenario.of("hazard", Engine.OFF, WARM)
                        .with("HAZARD-SWITCH", "LEFT", "RIGHT", "WARNING");
        for (String lamp :
                List.of("FLASH-FRONT-OS", "FLASH-FRONT-NS", "FLASH-REAR-OS", "FLASH-REAR-NS")) {
            assertThat(milliamperes(loom, hazard, lamp)).as(lamp).isPositive();
        }
        assertThat(milliamperes(loom, hazard, "HAZARD-WARNING")).isPositive();
    }

    @Test
    void headlampsOnRelaysTakeTheirCurrentPastTheOldSwitches() {
        Loom loom = with("headlamp-relays");
        Scenario dipped =
                Scenario.of("dipped", Engine.OFF, WARM)
                        .with("LIGHT-SWITCH", "SIDE", "HEAD")
                        .with("DIP-SWITCH", "DIP");
        assertThat(milliamperes(loom, dipped, "HEADLAMP-OS")).isGreaterThan(3_000);
        assertThat(milliamperes(loom, dipped, "HEADLAMP-NS")).isGreaterThan(3_000);
        assertThat(milliamperes(loom, dipped, "DIP-SWITCH")).isLessThan(500);
    }

    @Test
    void eachHeadlampFilamentCanHaveItsOwnFuse() {
        Recipe recipe = Kitted.recipe("headlamp-relays");
        Map<String, Answer> answers = Kitted.usual(recipe, Kitted.DEMO);
        answers.put("fusing", new Answer.Word("side"));
        KitPlan plan =
                Kitted.expand(Kitted.DEMO, List.of(), recipe, answers).orElseThrow(Kitted::refusal);
        Loom loom = Kitted.amended(Kitted.DEMO, plan.amendments());
        Scenario main =
                Scenario.of("main beam", Engine.OFF, WARM)
                        .with("LIGHT-SWITCH", "SIDE", "HEAD")
                        .with("DIP-SWITCH", "MAIN");
        for (String fuse : List.of("MAIN-FUSE-OS", "MAIN-FUSE-NS")) {
            assertThat(milliamperes(loom, main, fuse)).as(fuse).isBetween(3_000L, 4_000L);
        }
        assertThat(milliamperes(loom, main, "DIP-FUSE-OS")).isZero();
        assertThat(milliamperes(loom, main, "HEADLAMP-NS")).isGreaterThan(3_000);
    }

    @Test
    void theAlternatorStandsInThePlaceOfTheDynamo() {
        Loom loom = with("dynamo-to-alternator");
        assertThat(loom.devices()).doesNotContainKey("DYNAMO").containsKey("ALTERNATOR");
        assertThat(loom.getDevice("CONTROL-BOX").kind()).isEqualTo(DeviceKind.CONNECTOR);
        assertThat(
                        loom.wires().values().stream()
                                .filter(wire -> wire.a().place().equals("CONTROL-BOX/D"))
                                .filter(wire -> wire.b().place().equals("CONTROL-BOX/A")))
                .isNotEmpty();
        for (String wire : List.of("W003", "W004", "W005")) {
            String size = loom.getWire(wire).size();
            assertThat(TestCatalogue.get().getSize(size).rating().milliamperes())
                    .as(wire)
                    .isGreaterThanOrEqualTo(45_000);
        }
        Scenario driving =
                Scenario.of("driving", Engine.AT_SPEED, WARM)
                        .with("IGN-SWITCH", "IGN")
                        .with("LIGHT-SWITCH", "SIDE", "HEAD")
                        .with("DIP-SWITCH", "DIP");
        assertThat(milliamperes(loom, driving, "HEADLAMP-OS")).isGreaterThan(3_000);
    }

    @Test
    void aChangeOfPolarityListsWhatMindsIt() {
        KitPlan plan = Kitted.plan(Kitted.DEMO, "polarity-change");
        Loom loom = Kitted.amended(Kitted.DEMO, plan.amendments());
        assertThat(loom.document().vehicle().earth()).isEqualTo(EarthPolarity.NEGATIVE);
        assertThat(plan.notes())
                .extracting(note -> note.about().id())
                .contains("BATTERY", "DYNAMO", "AMMETER", "COIL", "FUEL-PUMP");
        assertThat(loom.wires()).isEqualTo(Kitted.DEMO.wires());
    }

    @Test
    void aChangeToTwelveVoltsListsEveryLamp() {
        Loom six = Kitted.demo(EarthPolarity.POSITIVE, 6_000);
        KitPlan plan = Kitted.plan(six, "six-to-twelve");
        Loom loom = Kitted.amended(six, plan.amendments());
        assertThat(loom.document().vehicle().system().millivolts()).isEqualTo(12_000);
        List<String> lamps =
                loom.devices().values().stream()
                        .filter(device -> device.kind() == DeviceKind.LAMP)
                        .map(Device::id)
                        .toList();
        assertThat(plan.notes())
                .extracting(note -> note.about().id())
                .containsAll(lamps)
                .contains("BATTERY");
    }

    @ParameterizedTest
    @CsvSource({"POSITIVE, 6000", "NEGATIVE, 12000"})
    void kitsSuitOtherVehiclesToo(EarthPolarity earth, long millivolts) {
        Loom loom = Kitted.demo(earth, millivolts);
        for (String kit :
                List.of("reversing-lamps", "fog-lamps", "radiator-fan", "hazard-flashers")) {
            assertThat(Kitted.plan(loom, kit).amendments()).as(kit).isNotEmpty();
        }
    }
}
