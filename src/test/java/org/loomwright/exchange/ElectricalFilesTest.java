package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.catalogue.BundleFactor;
import org.loomwright.core.catalogue.ConductorResistance;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.SettingRow;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.routing.Allowances;
import org.loomwright.testing.TestCatalogue;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The tables about current: they load, and a wrong row is refused with its place. */
class ElectricalFilesTest {

    private static final Provenance NOWHERE = new Provenance(Status.COMPUTED, "made up for a test");

    private final ElectricalTables tables = TestCatalogue.electrical();

    @Test
    void everyConductorSizeHasAResistanceWithItsSource() {
        assertThat(tables.resistances()).hasSameSizeAs(TestCatalogue.get().sizes());
        assertThat(tables.resistances())
                .allSatisfy(
                        row -> {
                            assertThat(row.provenance().status()).isNotEqualTo(Status.MEMORY);
                            assertThat(row.provenance().source()).isNotBlank();
                        });
    }

    @Test
    void everyFuseHasASource() {
        assertThat(tables.fuses())
                .hasSize(24)
                .allSatisfy(fuse -> assertThat(fuse.provenance().source()).isNotBlank());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "14/0.30,-18.9,FOUND,T1 | the resistance of 14/0.30 must be more than zero",
                "14/0.30,0,FOUND,T1 | the resistance of 14/0.30 must be more than zero",
                "14/0.30,18.9000001,FOUND,T1 | Rounding necessary",
                "14/0.30,eighteen,FOUND,T1 | e",
                "14/0.30,18.9,SURE,T1 | Status.SURE"
            })
    void aWrongRowOfResistancesIsNamed(String row, String reason) {
        String header = "designation,resistanceMilliohmPerM,status,source";
        assertRefused("t.csv", header, row, ElectricalFiles::resistance, reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "blade,10,15,,red,FOUND,U6 | a blade fuse marked 10 A cannot carry 15 A",
                "blade,10,0,,red,FOUND,U6 | a blade fuse marked 10 A cannot carry 0 A",
                "glass-blow-marked,35,17.5,17.5,,FOUND,U2 | cannot blow at 17.5 A",
                "torpedo,8,8,,white,FOUND,U5 | TORPEDO"
            })
    void aWrongRowOfFusesIsNamed(String row, String reason) {
        String header = "style,markedA,continuousA,blowA,colour,status,source";
        assertRefused("fuses.csv", header, row, ElectricalFiles::fuse, reason);
    }

    @Test
    void theTableOfSettingsSaysWhatTheCodeSays() {
        assertThat(ElectricalFiles.settings()).isEqualTo(ElectricalSettings.USUAL);
        assertThat(ElectricalFiles.settingRows())
                .allSatisfy(
                        row -> {
                            assertThat(row.provenance().source()).isNotBlank();
                            assertThat(row.meaning()).isNotBlank();
                        });
    }

    @Test
    void everySettingMustBeThereOnceInItsUnit() {
        List<SettingRow> rows = ElectricalFiles.settingRows();
        assertSettingsRefused(rows.subList(1, rows.size()), "battery-voltage is missing");

        List<SettingRow> twice = new ArrayList<>(rows);
        twice.add(rows.getFirst());
        assertSettingsRefused(twice, "battery-voltage stands twice");

        List<SettingRow> more = new ArrayList<>(rows);
        more.add(new SettingRow("colour", BigDecimal.ONE, "A", "none", NOWHERE));
        assertSettingsRefused(more, "no setting [colour]");

        List<SettingRow> odd = new ArrayList<>(rows);
        odd.set(0, new SettingRow("battery-voltage", BigDecimal.TEN, "A", "none", NOWHERE));
        assertSettingsRefused(odd, "battery-voltage is in V, was A");
    }

    private static void assertSettingsRefused(List<SettingRow> rows, String reason) {
        assertThatThrownBy(() -> ElectricalSettings.of(rows, Allowances.USUAL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(reason);
    }

    private static <T> void assertRefused(
            String file, String header, String row, Function<CSVRecord, T> reading, String reason) {
        assertThatThrownBy(
                        () ->
                                CatalogueFiles.rows(
                                        file, new StringReader(header + "\n" + row), reading))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("row 1 of")
                .hasMessageContaining(file)
                .hasMessageContaining(reason);
    }

    @Test
    void tablesMustNotContradictEachOther() {
        List<ConductorResistance> misprinted = new ArrayList<>(tables.resistances());
        misprinted.set(0, resistance("9/0.30", 2_940_000));
        assertThatThrownBy(() -> with(misprinted, factors(1, 1_000_000)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2.94 mΩ/m cannot be the resistance of 9/0.30");

        List<ConductorResistance> unknown = new ArrayList<>(tables.resistances());
        unknown.add(resistance("13/0.30", 20_000_000));
        assertThatThrownBy(() -> with(unknown, factors(1, 1_000_000)))
                .hasMessageContaining("resistance for 13/0.30, but no such size");

        List<ConductorResistance> missing = tables.resistances().subList(1, 30);
        assertThatThrownBy(() -> with(missing, factors(1, 1_000_000)))
                .hasMessageContaining("conductor size 9/0.30 has no resistance");

        List<ConductorResistance> twice = new ArrayList<>(tables.resistances());
        twice.add(twice.getFirst());
        assertThatThrownBy(() -> with(twice, factors(1, 1_000_000)))
                .hasMessageContaining("two resistances for 9/0.30");
    }

    @Test
    void bundleFactorsMustFall() {
        assertThatThrownBy(() -> with(tables.resistances(), List.of()))
                .hasMessageContaining("begin with 1 for 1 wire");
        assertThatThrownBy(
                        () ->
                                with(
                                        tables.resistances(),
                                        factors(1, 1_000_000, 4, 700_000, 7, 800_000)))
                .hasMessageContaining("7 wires have 0.8");
    }

    private static ElectricalTables with(
            List<ConductorResistance> resistances, List<BundleFactor> factors) {
        ElectricalTables good = TestCatalogue.electrical();
        return new ElectricalTables(
                TestCatalogue.get(), resistances, good.metal(), good.fuses(), factors);
    }

    private static ConductorResistance resistance(String size, long nanoohms) {
        return new ConductorResistance(size, new LinearResistance(nanoohms), NOWHERE);
    }

    private static List<BundleFactor> factors(int... pairs) {
        List<BundleFactor> factors = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            factors.add(new BundleFactor(pairs[i], new Ratio(pairs[i + 1]), NOWHERE));
        }
        return factors;
    }
}
