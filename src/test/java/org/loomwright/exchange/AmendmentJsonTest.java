package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Side;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.LoomSketch;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

class AmendmentJsonTest {

    private static Outcome<List<Amendment>> read(String json) {
        return StrictJson.parse(json.getBytes(StandardCharsets.UTF_8))
                .then(node -> AmendmentReader.read(node, "/amendments"));
    }

    /** One of every kind; the sealed switch of the writer sees to it that none is forgotten there. */
    static Stream<Amendment> oneOfEveryKind() {
        return Stream.of(
                new Amendment.AddWire(
                        "A1", "why", LoomSketch.plainWire("W1", "LGN", "D1/1", "D2/1")),
                new Amendment.RemoveWire("A2", "", "W1"),
                new Amendment.ReplaceWire("A3", "", "W1", WireColour.parse("G"), "28/0.30"),
                new Amendment.MoveWireEnd("A4", "", "W1", Side.B, LoomSketch.end("D3/2")),
                new Amendment.ChangeTerminal("A5", "", "W1", Side.A, "ring-5"),
                new Amendment.BreakOutBranch(
                        "A6",
                        "",
                        "S1",
                        Length.ofMicrometres(250_500),
                        new Node("N8", "new breakout"),
                        "S8",
                        LoomSketch.plainSegment("S9", "N8", "N9", 300),
                        new Node("N9", "new end")),
                new Amendment.ExtendBranch(
                        "A7",
                        "",
                        LoomSketch.plainSegment("S9", "N1", "N9", 300),
                        new Node("N9", "new end")),
                new Amendment.ChangeLength("A8", "", "S1", Length.ofMillimetres(700)),
                new Amendment.RemoveBranch("A9", "", "S1"),
                new Amendment.AddDevice(
                        "A10", "", LoomSketch.plainDevice("D9", DeviceKind.RELAY, "N1", "N1")),
                new Amendment.RemoveDevice("A11", "", "D9"),
                new Amendment.ChangeCovering("A12", "", "S1", LoomSketch.BLACK_BRAID),
                new Amendment.AddOpening("A13", "", "S1", LoomSketch.grommet("O1", 120)),
                new Amendment.RemoveOpening("A14", "", "O1"),
                new Amendment.ChangeDevice(
                        "A15",
                        "no spare dynamo",
                        "D1",
                        "Alternator",
                        DeviceKind.ALTERNATOR,
                        Current.ofMilliamperes(100),
                        new Particulars(
                                "charging",
                                Current.ofMilliamperes(45_000),
                                Voltage.ofMillivolts(12_000),
                                EarthPolarity.NEGATIVE,
                                List.of())),
                new Amendment.ChangeDevice(
                        "A16",
                        "",
                        "F1",
                        "Fuse box",
                        DeviceKind.FUSE_BOX,
                        null,
                        new Particulars(
                                null,
                                null,
                                null,
                                null,
                                List.of(
                                        new FittedFuse(
                                                "1",
                                                "2",
                                                FuseStyle.GLASS_BLOW_MARKED,
                                                Current.ofMilliamperes(35_000))))),
                new Amendment.ChangeVehicle(
                        "A17", "", EarthPolarity.NEGATIVE, Voltage.ofMillivolts(12_000)));
    }

    @ParameterizedTest
    @MethodSource("oneOfEveryKind")
    void whatIsWrittenIsReadBack(Amendment amendment) {
        String json = AmendmentWriter.write(List.of(amendment)).toString();
        assertThat(read(json)).isEqualTo(Outcome.accepted(List.of(amendment)));
    }

    @Test
    void aDeviceIsChangedOnlyIntoAKindThatThereIs() {
        Outcome<List<Amendment>> outcome =
                read(
                        """
                        [{"id": "A1", "kind": "change-device", "device": "D1", "name": "x", "deviceKind": "magneto"},
                         {"id": "A2", "kind": "change-device", "device": "D1", "name": "x"},
                         {"id": "A3", "kind": "change-vehicle", "earth": "wet"}]\
                        """);
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Outcome.Rejected.class,
                        rejected -> {
                            @SuppressWarnings("unchecked")
                            List<Finding> reasons = rejected.reasons();
                            assertThat(reasons)
                                    .extracting(f -> f.code() + " " + f.subject().pointer())
                                    .containsExactly(
                                            "json.unknown-word /amendments/0/deviceKind",
                                            "json.missing-field /amendments/1/deviceKind",
                                            "json.unknown-word /amendments/2/earth",
                                            "json.missing-field /amendments/2/systemVoltageV");
                        });
    }

    @Test
    void everyKindIsTried() {
        assertThat(oneOfEveryKind().map(Object::getClass).distinct().count())
                .isEqualTo(Amendment.class.getPermittedSubclasses().length);
    }

    @Test
    void faultsOfSeveralAmendmentsAreReportedTogether() {
        Outcome<List<Amendment>> outcome =
                read(
                        """
                        [{"id": "A1", "kind": "remove-wire"},
                         {"id": "A2", "kind": "paint-it-red"},
                         {"id": "A3", "kind": "change-length", "segment": "S1", "lengthMm": "long"},
                         7]\
                        """);
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Outcome.Rejected.class,
                        rejected -> {
                            @SuppressWarnings("unchecked")
                            List<Finding> reasons = rejected.reasons();
                            assertThat(reasons)
                                    .extracting(finding -> finding.subject().pointer())
                                    .containsExactly(
                                            "/amendments/0/wire",
                                            "/amendments/1/kind",
                                            "/amendments/2/lengthMm",
                                            "/amendments/3");
                        });
    }

    @Test
    void somethingElseThanAListIsRefused() {
        assertThat(read("{}")).isInstanceOf(Outcome.Rejected.class);
    }
}
