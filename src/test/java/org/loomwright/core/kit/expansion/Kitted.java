package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Kits;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.ColourFiles;
import org.loomwright.exchange.CurrentRuleFiles;
import org.loomwright.exchange.DemoFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.KitFiles;
import org.loomwright.exchange.LoomReader;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Kits on the demonstration loom, with the project's own tables. */
final class Kitted {

    static final Behaviours BEHAVIOURS = ElectricalFiles.behaviours();

    static final KitBench BENCH =
            new KitBench(
                    TestCatalogue.get(),
                    TestCatalogue.electrical(),
                    BEHAVIOURS,
                    ElectricalFiles.scenarios(),
                    new SparseCholesky(),
                    CurrentRuleFiles.load(),
                    ColourFiles.load(TestCatalogue.get()),
                    KitFiles.terminals(),
                    KitSettings.USUAL);

    static final Kits KITS = KitFiles.load(TestCatalogue.get());

    static final Loom DEMO =
            LoomReader.read(DemoFiles.json(DemoFiles.MAIN))
                    .then(document -> LoomChecker.check(document, TestCatalogue.get()))
                    .orElseThrow(Kitted::refusal);

    /** What the owner of the demonstration vehicle wants added. */
    static final List<Amendment> ADDITIONS =
            AmendmentReader.read(
                            DemoFiles.json(DemoFiles.ADDITIONS).required("amendments"),
                            "/amendments")
                    .orElseThrow(Kitted::refusal);

    private Kitted() {}

    static Recipe recipe(String id) {
        return KITS.find(id).orElseThrow(Kitted::refusal);
    }

    static Map<String, Answer> usual(Recipe recipe, Loom loom) {
        return new LinkedHashMap<>(
                Kits.usualAnswers(
                        Kits.questionsFor(recipe, loom, TestCatalogue.get(), BEHAVIOURS)));
    }

    static Outcome<KitPlan> expand(
            Loom stock, List<Amendment> existing, Recipe recipe, Map<String, Answer> answers) {
        return new KitExpansion(BENCH).expand(stock, existing, recipe, answers);
    }

    static KitPlan plan(Loom stock, String kit) {
        Recipe recipe = recipe(kit);
        return expand(stock, List.of(), recipe, usual(recipe, stock)).orElseThrow(Kitted::refusal);
    }

    static Loom amended(Loom stock, List<Amendment> amendments) {
        return Amendments.apply(stock, amendments, TestCatalogue.get())
                .map(AmendedLoom::loom)
                .orElseThrow(Kitted::refusal);
    }

    /** The demonstration loom in another vehicle. */
    static Loom demo(EarthPolarity earth, long millivolts) {
        LoomDocument old = DEMO.document();
        VehicleSheet sheet = old.vehicle();
        VehicleSheet other =
                new VehicleSheet(
                        sheet.name(),
                        sheet.year(),
                        sheet.hand(),
                        earth,
                        Voltage.ofMillivolts(millivolts),
                        sheet.notStandard());
        return checked(
                new LoomDocument(
                        old.name(),
                        other,
                        old.datum(),
                        old.nodes(),
                        old.segments(),
                        old.devices(),
                        old.wires(),
                        old.checks()));
    }

    static Loom checked(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get()).orElseThrow(Kitted::refusal);
    }

    static List<Amendment> joined(List<Amendment> one, List<Amendment> other) {
        List<Amendment> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }

    static Readings read(Loom loom, Scenario scenario) {
        return new Simulation(
                        loom,
                        TestCatalogue.get(),
                        TestCatalogue.electrical(),
                        BEHAVIOURS,
                        BENCH.settings().electrical(),
                        BENCH.solver())
                .run(scenario)
                .orElseThrow(Kitted::refusal);
    }

    static IllegalStateException refusal(List<Finding> reasons) {
        return new IllegalStateException(
                String.join(
                        "\n", reasons.stream().map(it -> it.code() + " " + it.text()).toList()));
    }
}
