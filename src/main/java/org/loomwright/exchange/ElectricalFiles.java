package org.loomwright.exchange;

import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.BundleFactor;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorMetal;
import org.loomwright.core.catalogue.ConductorResistance;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.electrical.simulation.Behaviour;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.SettingRow;
import org.loomwright.core.electrical.simulation.StandardScenario;
import org.loomwright.core.electrical.simulation.StandardScenario.Position;
import org.loomwright.core.electrical.simulation.StandardScenarios;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.routing.Allowances;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Reads the tables about current from the CSV files under {@code shared/catalogue} on the class path. */
public final class ElectricalFiles {

    private static final String METALS = "conductor-metals.csv";

    private ElectricalFiles() {}

    /**
     * @param catalogue the conductor sizes that the resistances belong to
     * @return the tables
     * @throws IllegalStateException if a file is missing or a row is wrong, naming file and row
     * @throws IllegalArgumentException if two tables contradict each other
     */
    public static ElectricalTables load(Catalogue catalogue) {
        return load(TableSource.PRINTED, catalogue);
    }

    static ElectricalTables load(TableSource source, Catalogue catalogue) {
        List<ConductorMetal> metals = CatalogueFiles.rows(source, METALS, ElectricalFiles::metal);
        if (metals.size() != 1) {
            throw new IllegalStateException(
                    METALS + " must have one row, but has " + metals.size());
        }
        return new ElectricalTables(
                catalogue,
                CatalogueFiles.rows(
                        source, "conductor-resistances.csv", ElectricalFiles::resistance),
                metals.getFirst(),
                CatalogueFiles.rows(source, "fuses.csv", ElectricalFiles::fuse),
                CatalogueFiles.rows(source, "bundle-factors.csv", ElectricalFiles::bundleFactor));
    }

    /**
     * @return the table of what devices do
     * @throws IllegalStateException if the file is missing or a row is wrong, naming file and row
     */
    public static Behaviours behaviours() {
        return new Behaviours(
                CatalogueFiles.rows("device-behaviours.csv", ElectricalFiles::behaviour));
    }

    static Behaviour behaviour(CSVRecord row) {
        String to = row.get("to");
        return new Behaviour(
                DeviceKind.valueOf(constant(row, "kind")),
                row.get("from"),
                to.isEmpty() ? List.of() : List.of(to.split(" ")),
                Element.valueOf(constant(row, "element")),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    /**
     * @return what a loom document does not say and a simulation needs, each figure with where it comes from
     * @throws IllegalStateException if the file is missing or a row is wrong, naming file and row
     */
    public static List<SettingRow> settingRows() {
        return settingRows(TableSource.PRINTED);
    }

    /**
     * @return the settings of those rows, with the usual take-up of the wires
     * @throws IllegalStateException if the file is missing or a row is wrong, naming file and row
     * @throws IllegalArgumentException if a row is missing or unknown
     */
    public static ElectricalSettings settings() {
        return settings(TableSource.PRINTED);
    }

    static ElectricalSettings settings(TableSource source) {
        return ElectricalSettings.of(settingRows(source), Allowances.USUAL);
    }

    private static List<SettingRow> settingRows(TableSource source) {
        return CatalogueFiles.rows(source, "electrical-settings.csv", ElectricalFiles::setting);
    }

    private static SettingRow setting(CSVRecord row) {
        return new SettingRow(
                row.get("name"),
                new BigDecimal(row.get("value")),
                row.get("unit"),
                row.get("meaning"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    /**
     * @return the states in which every loom is looked at
     * @throws IllegalStateException if the file is missing or a row is wrong, naming file and row
     */
    public static StandardScenarios scenarios() {
        return new StandardScenarios(
                CatalogueFiles.rows("scenarios.csv", ElectricalFiles::scenario));
    }

    static StandardScenario scenario(CSVRecord row) {
        String on = row.get("on");
        return new StandardScenario(
                row.get("name"),
                Scenario.Engine.valueOf(constant(row, "engine")),
                Temperature.ofCelsius(new BigDecimal(row.get("conductorsC"))),
                Temperature.ofCelsius(new BigDecimal(row.get("ambientC"))),
                on.isEmpty()
                        ? List.of()
                        : Arrays.stream(on.split(" ")).map(ElectricalFiles::position).toList(),
                new BigDecimal(row.get("hoursPerDay")),
                yesOrNo(row.get("lasts")),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static Position position(String text) {
        int colon = text.indexOf(':');
        String service = colon < 0 ? text : text.substring(0, colon);
        String alternatives = colon < 0 ? Position.EVERY : text.substring(colon + 1);
        return new Position(
                service,
                Arrays.stream(alternatives.split("\\|"))
                        .map(points -> Set.of(points.split("\\+")))
                        .toList());
    }

    private static String constant(CSVRecord row, String column) {
        return row.get(column).toUpperCase(Locale.ROOT).replace('-', '_');
    }

    static ConductorResistance resistance(CSVRecord row) {
        return new ConductorResistance(
                row.get("designation"),
                milliohms(row, "resistanceMilliohmPerM"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    static ConductorMetal metal(CSVRecord row) {
        return new ConductorMetal(
                row.get("metal"),
                milliohms(row, "resistivityMilliohmMm2PerM"),
                Ratio.of(new BigDecimal(row.get("coefficientPerK"))),
                CatalogueFiles.provenance(row, "resistivityStatus", "resistivitySource"),
                CatalogueFiles.provenance(row, "coefficientStatus", "coefficientSource"));
    }

    static FuseRating fuse(CSVRecord row) {
        return new FuseRating(
                FuseStyle.valueOf(constant(row, "style")),
                Current.ofAmperes(new BigDecimal(row.get("markedA"))),
                Current.ofAmperes(new BigDecimal(row.get("continuousA"))),
                amperesOrNone(row.get("blowA")),
                row.get("colour"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static @Nullable Current amperesOrNone(String text) {
        return text.isEmpty() ? null : Current.ofAmperes(new BigDecimal(text));
    }

    static BundleFactor bundleFactor(CSVRecord row) {
        return new BundleFactor(
                Integer.parseInt(row.get("fromLoadedWires")),
                Ratio.of(new BigDecimal(row.get("factor"))),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static boolean yesOrNo(String text) {
        return switch (text) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new IllegalArgumentException("'" + text + "' is neither yes nor no");
        };
    }

    private static LinearResistance milliohms(CSVRecord row, String column) {
        return LinearResistance.ofMilliohmsPerMetre(new BigDecimal(row.get(column)));
    }
}
