package org.loomwright.core.electrical.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.StandardScenario.Position;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Length;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.TestCatalogue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

class StandardScenariosTest {

    private static final Catalogue CATALOGUE = TestCatalogue.get();
    private static final StandardScenarios STANDARD = ElectricalFiles.scenarios();

    private static Scenario scenario(Loom loom, String name) {
        return STANDARD.of(loom, CATALOGUE).stream()
                .filter(scenario -> scenario.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static Stream<Loom> demoLooms() {
        return Stream.of(Simulated.demoMain(), Simulated.demoEngine(), Simulated.demoAmended());
    }

    @Test
    void everyServiceOfTheTableIsInTheCatalogue() {
        assertThat(STANDARD.rows())
                .hasSize(14)
                .allSatisfy(
                        row -> {
                            assertThat(row.provenance().source()).isNotBlank();
                            assertThat(row.on())
                                    .allSatisfy(
                                            position ->
                                                    assertThat(
                                                                    CATALOGUE.findService(
                                                                            position.service()))
                                                            .isPresent());
                        });
    }

    @Test
    void theHoursOfTheScenariosMakeADay() {
        BigDecimal hours =
                STANDARD.rows().stream()
                        .map(StandardScenario::hoursPerDay)
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(hours).isEqualByComparingTo("24");
    }

    @ParameterizedTest
    @MethodSource("demoLooms")
    void everyLoomIsAbleToBeInAllOfThem(Loom loom) {
        Simulation simulation = Simulated.simulation(loom);
        List<Scenario> scenarios = STANDARD.of(loom, CATALOGUE);
        assertThat(scenarios)
                .extracting(Scenario::name)
                .isEqualTo(STANDARD.rows().stream().map(StandardScenario::name).toList());
        assertThat(scenarios)
                .allSatisfy(
                        scenario ->
                                assertThat(Simulated.run(simulation, scenario).wires())
                                        .hasSameSizeAs(loom.wires().values()));
    }

    @Test
    void aWinterNightSetsTheSwitchesThatAPersonWouldSet() {
        assertThat(scenario(Simulated.demoMain(), "wet winter night, at speed").closed())
                .isEqualTo(
                        Map.of(
                                "IGN-SWITCH", Set.of("IGN"),
                                "LIGHT-SWITCH", Set.of("SIDE", "HEAD"),
                                "DIP-SWITCH", Set.of("DIP"),
                                "PANEL-SWITCH", Set.of("OUT"),
                                "WIPER-SWITCH", Set.of("MOTOR"),
                                "HEATER-SWITCH", Set.of("MOTOR")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "parked|",
                "ignition on, engine off|IGN-LAMP OIL-LAMP FUEL-GAUGE TEMP-GAUGE COIL FUEL-PUMP",
                "turning left, by day|FLASH-FRONT-NS FLASH-REAR-NS FLASHER-LAMP",
                "turning right, by day|FLASH-FRONT-OS FLASH-REAR-OS FLASHER-LAMP",
                "reversing, brake on|STOPLAMP-OS STOPLAMP-NS REVERSELAMP-OS REVERSELAMP-NS",
                "horn, by day at speed|HORN-OS HORN-NS",
                "hot summer traffic, idle|FAN-MOTOR STOPLAMP-OS STOPLAMP-NS",
                "'night, main beam, at speed'|BEAM-LAMP HEADLAMP-OS HEADLAMP-NS",
                "everything at once|FAN-MOTOR HORN-OS FOGLAMP-NS INTERIOR-LAMP BOOT-LAMP SOCKET"
            })
    void whatTheNameSaysIsLit(String name, @Nullable String loads) {
        Loom loom = Simulated.demoAmended();
        Set<String> working = working(Simulated.run(loom, scenario(loom, strip(name))));
        if (loads == null) {
            assertThat(working).isEmpty();
        } else {
            assertThat(working).contains(loads.split(" "));
        }
    }

    private static String strip(String quoted) {
        return quoted.replace("'", "");
    }

    private static Set<String> working(Readings readings) {
        Set<String> working = new TreeSet<>();
        for (ElementReading load : readings.of(Element.LOAD)) {
            if (Math.abs(load.across().millivolts()) > 6_000) {
                working.add(load.device());
            }
        }
        return working;
    }

    @Test
    void theStarterIsNeverSwitchedOn() {
        assertThat(STANDARD.of(Simulated.demoAmended(), CATALOGUE))
                .allSatisfy(
                        scenario ->
                                assertThat(scenario.closed()).doesNotContainKey("STARTER-PUSH"));
    }

    @Test
    void whatASwitchIsRecordedToServeCountsBeforeItsName() {
        Device device =
                new Device(
                        "K1",
                        "heater switch",
                        DeviceKind.SWITCH,
                        null,
                        new Particulars("horns", null, null, null, List.of()),
                        points("FEED", "OUT"));
        List<Scenario> scenarios = STANDARD.of(List.of(device), CATALOGUE);
        assertThat(scenarios.stream().filter(s -> !s.closed().isEmpty()))
                .extracting(Scenario::name)
                .containsExactly("horn, by day at speed", "everything at once");
    }

    @ParameterizedTest
    @CsvSource({
        "IGN+ACC|IGN|ON|?, FEED IGN ACC START, ACC IGN",
        "IGN+ACC|IGN|ON|?, FEED IGN START, IGN",
        "IGN+ACC|IGN|ON|?, FEED OUT, OUT",
        "IGN+ACC|IGN|ON|?, FEED X Y, ''",
        "FAST|HIGH|*, FEED SLOW FAST, FAST",
        "FAST|HIGH|*, MOTOR EARTH, MOTOR",
        "DIP|?, FEED MAIN DIP, DIP",
        "DIP|?, 1 2, 1 2",
        "*, SWITCH, SWITCH"
    })
    void theFirstPositionThatASwitchHasIsTaken(String position, String points, String closed) {
        List<Set<String>> alternatives =
                Arrays.stream(position.split("\\|"))
                        .map(text -> Set.of(text.split("\\+")))
                        .toList();
        Device device = device("K1", "switch", points.split(" "));
        assertThat(
                        String.join(
                                " ",
                                new TreeSet<>(new Position("fan", alternatives).closedOn(device))))
                .isEqualTo(closed);
    }

    private static Device device(String id, String name, String... points) {
        return new Device(id, name, DeviceKind.SWITCH, null, points(points));
    }

    private static List<Point> points(String... names) {
        return Arrays.stream(names)
                .map(name -> new Point(name, "N1", Length.ofMillimetres(50)))
                .toList();
    }

    @Test
    void twoScenariosOfOneNameAreRefused() {
        StandardScenario row = STANDARD.rows().getFirst();
        assertThatThrownBy(() -> new StandardScenarios(List.of(row, row)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("parked");
    }
}
