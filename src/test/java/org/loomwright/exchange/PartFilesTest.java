package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.catalogue.JointType;
import org.loomwright.core.catalogue.Parts;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.RelayType;
import org.loomwright.core.catalogue.RelayType.Form;
import org.loomwright.core.catalogue.TerminalType;
import org.loomwright.core.catalogue.TypicalLoad;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.TestCatalogue;

import java.io.StringReader;
import java.util.List;
import java.util.function.Function;

/** Terminals, joints, relays and usual consumers: every row loads, says where it comes from and goes with the other tables. */
class PartFilesTest {

    private final Parts parts = TestCatalogue.get().parts();

    private static TerminalType terminal(String code) {
        return TestCatalogue.get().getTerminal(code);
    }

    @ParameterizedTest
    @ValueSource(strings = {"terminals", "joints", "relays", "typical-loads"})
    void everyRowOfTheFileIsLoaded(String table) {
        int loaded =
                switch (table) {
                    case "terminals" -> TestCatalogue.get().terminals().size();
                    case "joints" -> parts.joints().size();
                    case "relays" -> parts.relays().size();
                    default -> parts.loads().size();
                };

        assertThat(CatalogueTables.find(table).orElseThrow().rows()).hasSize(loaded).isNotEmpty();
    }

    @Test
    void everyRowSaysWhereItComesFrom() {
        List<Provenance> told =
                List.of(
                                parts.joints().stream().map(JointType::provenance),
                                parts.relays().stream().map(RelayType::provenance),
                                parts.relays().stream().map(RelayType::coilProvenance),
                                parts.loads().stream().map(TypicalLoad::provenance))
                        .stream()
                        .flatMap(rows -> rows)
                        .toList();

        assertThat(told).allSatisfy(row -> assertThat(row.source()).isNotBlank());
    }

    @Test
    void aTerminalTakesConductorsWithinItsBounds() {
        TestCatalogue.get().sizes().stream()
                .filter(size -> size.designation().equals("14/0.30"))
                .forEach(
                        size -> {
                            assertThat(terminal("bullet-4.7").takes(size.metal())).isTrue();
                            assertThat(terminal("ring-10").takes(size.metal())).isFalse();
                            assertThat(terminal("screw-end").takes(size.metal())).isTrue();
                        });
        assertThat(terminal("bullet-4.7").takes(metal("44/0.30"))).isFalse();
        assertThat(terminal("bullet-4.7-large-bore").takes(metal("44/0.30"))).isTrue();
    }

    private static CrossSection metal(String size) {
        return TestCatalogue.get().getSize(size).metal();
    }

    @Test
    void colouredInsulatedCrimpsAreNotOfThePeriodAndBulletsRingsScrewsAre() {
        for (TerminalType terminal : TestCatalogue.get().terminals()) {
            if (terminal.code().contains("insulated")) {
                assertThat(terminal.ofPeriod()).as(terminal.code()).isFalse();
            }
        }
        for (String code : List.of("bullet-4.7", "ring-5", "screw-end", "lamp-contact", "solder")) {
            assertThat(terminal(code).ofPeriod()).as(code).isTrue();
        }
    }

    @Test
    void theSmallestJointForSoManyBulletsIsFound() {
        assertThat(parts.findJointFor(2, "bullet-4.7"))
                .map(JointType::code)
                .contains("snap-single");
        assertThat(parts.findJointFor(3, "bullet-4.7"))
                .map(JointType::code)
                .contains("snap-four-way");
        assertThat(parts.findJointFor(5, "bullet-4.7"))
                .map(JointType::code)
                .contains("snap-eight-way");
        assertThat(parts.findJointFor(9, "bullet-4.7")).isEmpty();
        assertThat(parts.findJoint("snap-double")).map(JointType::endsOfAGroup).contains(2);
    }

    @Test
    void aRelaysPointsSayWhatItsContactsDo() {
        assertThat(parts.findRelay("make-30"))
                .map(relay -> relay.points().form())
                .contains(Form.MAKE);
        assertThat(parts.findRelay("changeover-30"))
                .map(relay -> relay.points().form())
                .contains(Form.CHANGEOVER);
        assertThat(parts.findRelay("magnet")).isEmpty();
    }

    /** Every published figure is marked so, and no other. */
    @Test
    void onlyTheCoilsOfRelaysArePublished() {
        assertThat(parts.relays())
                .allSatisfy(
                        relay -> {
                            assertThat(relay.coilProvenance().status()).isEqualTo(Status.FOUND);
                            assertThat(relay.provenance().status()).isEqualTo(Status.MEMORY);
                        });
    }

    /** 21 W at 12 V is 1.75 A, and twice that at 6 V. */
    @Test
    void wattsAndAmperesBecomeCurrentsAtTheVehiclesVoltage() {
        TypicalLoad reversing = parts.loadsOf("reversing-lamps").getFirst();
        assertThat(reversing.highAt(Voltage.ofMillivolts(12_000)))
                .isEqualTo(Current.ofMilliamperes(1_750));
        assertThat(reversing.highAt(Voltage.ofMillivolts(6_000)))
                .isEqualTo(Current.ofMilliamperes(3_500));

        TypicalLoad horns = parts.loadsOf("horns").getFirst();
        assertThat(horns.lowAt(Voltage.ofMillivolts(12_000)))
                .isEqualTo(Current.ofMilliamperes(9_000));
        assertThat(horns.highAt(Voltage.ofMillivolts(6_000)))
                .isEqualTo(Current.ofMilliamperes(20_000));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a,joint,1,1,ring-5,MEMORY,x | cannot join 1 ends in 1 groups",
                "a,joint,5,2,ring-5,MEMORY,x | cannot join 5 ends in 2 groups",
                "a,joint,two,1,ring-5,MEMORY,x | two"
            })
    void aWrongJointIsNamed(String row, String reason) {
        String header = "code,name,ends,groups,terminal,status,source";
        assertRefused(header, row, PartFiles::joint, reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a,r,make,0.2,0.1,FOUND,x,0.6,30,30,87,,86,85,MEMORY,x | cannot take 0.2 A to 0.1"
                        + " A",
                "a,r,make,0.1,0.2,FOUND,x,1.6,30,30,87,,86,85,MEMORY,x | cannot pull in at 1.6",
                "a,r,make,0.1,0.2,FOUND,x,0.6,0,30,87,,86,85,MEMORY,x | cannot carry 0 A",
                "a,r,make,0.1,0.2,FOUND,x,0.6,30,30,87,87a,86,85,MEMORY,x | those of CHANGEOVER",
                "a,r,latch,0.1,0.2,FOUND,x,0.6,30,30,87,,86,85,MEMORY,x | LATCH"
            })
    void aWrongRelayIsNamed(String row, String reason) {
        String header =
                "code,name,form,coilLeastA,coilMostA,coilStatus,coilSource,pullIn,contactA,common,makes,breaks,coil,coilReturn,status,source";
        assertRefused(header, row, PartFiles::relay, reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a,,5 W,horns,lamp,1,5,4,watts,FOUND,x | cannot take 5 to 4",
                "a,,5 W,horns,lamp,0,5,5,watts,FOUND,x | is 0 pieces",
                "a,,5 W,horns,gadget,1,5,5,watts,FOUND,x | GADGET",
                "a,,5 W,horns,lamp,1,5,5,candles,FOUND,x | CANDLES"
            })
    void aWrongLoadIsNamed(String row, String reason) {
        String header =
                "circuit,part,printed,service,deviceKind,pieces,low,high,unit,status,source";
        assertRefused(header, row, PartFiles::load, reason);
    }

    private static <T> void assertRefused(
            String header, String row, Function<CSVRecord, T> reading, String reason) {
        assertThatThrownBy(
                        () ->
                                CatalogueFiles.rows(
                                        "t.csv", new StringReader(header + "\n" + row), reading))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("row 1 of")
                .hasMessageContaining(reason);
    }
}
