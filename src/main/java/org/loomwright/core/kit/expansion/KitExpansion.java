package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.colour.ColourProposals;
import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.FeedPart;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.VehicleSheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns a recipe and its answers into amendments to one specification. Pure: the same loom, amendments, recipe, answers and tables give the
 * same plan.
 *
 * <p>The plan is accepted only if the existing amendments and its own apply together; otherwise there are all the reasons and nothing
 * else. Wires and devices of the loom stay as they are, but for the changes that the recipe states and for wires that it allows to be renewed.
 *
 * <p>Rules, in order: answers are checked; new ends are made; a feed is the nearest point with the wanted supply and room, on whose way no
 * wire, contact or fuse would carry too much; a fuse is the smallest whose share its loads do not exceed; a wire is the smallest size that, beside
 * the loaded wires on its route, carries what its fuse carries; then wires grow until each new load keeps within its share of lost voltage.
 */
public final class KitExpansion {

    private final KitBench bench;

    /**
     * @param bench tables and rules
     */
    public KitExpansion(KitBench bench) {
        this.bench = bench;
    }

    /**
     * @param stock the loom as it was recorded
     * @param existing the specification's amendments so far
     * @param recipe the kit
     * @param answers by question
     * @return what to append to the amendments, with the reasons; or every reason why it cannot be
     */
    public Outcome<KitPlan> expand(
            Loom stock, List<Amendment> existing, Recipe recipe, Map<String, Answer> answers) {
        return Amendments.apply(stock, existing, bench.catalogue())
                .then(base -> expand(stock, existing, base, recipe, answers));
    }

    private Outcome<KitPlan> expand(
            Loom stock,
            List<Amendment> existing,
            AmendedLoom base,
            Recipe recipe,
            Map<String, Answer> given) {
        Map<String, String> facts = facts(base.loom().document().vehicle());
        Finds finds = new Finds(recipe, base.loom(), bench);
        finds.lookFirst(facts);
        AnswerCheck check = new AnswerCheck(base, given, facts);
        List<Finding> findings = new ArrayList<>(check.check(recipe, bench));
        findings.addAll(finds.look(check.answers(), facts));
        findings.addAll(new Needs(base.loom(), bench.catalogue()).check(recipe, facts));
        if (!findings.isEmpty()) {
            return Outcome.rejected(findings);
        }
        Ids ids = new Ids(stock.document(), existing, recipe.prefix());
        Branches branches = new Branches(base, recipe, ids);
        branches.make(check.answers());
        return apply(stock, existing, branches.amendments())
                .then(
                        branched -> {
                            Draft draft =
                                    new Draft(
                                            bench,
                                            recipe,
                                            branched.loom(),
                                            ids,
                                            finds,
                                            facts,
                                            check.answers(),
                                            branches.nodes());
                            draft.amendments.addAll(branches.amendments());
                            return fill(draft);
                        })
                .then(
                        plan ->
                                apply(stock, existing, plan.amendments())
                                        .map(
                                                amended ->
                                                        Recolouring.of(
                                                                plan, proposals(amended.loom()))));
    }

    private ColourProposals proposals(Loom loom) {
        Tracing tracing = Tracing.of(loom, bench.catalogue(), bench.behaviours());
        return new ColourProposals(
                TracedLoom.of(loom, tracing, bench.catalogue()), bench.colours());
    }

    private Outcome<AmendedLoom> apply(Loom stock, List<Amendment> existing, List<Amendment> more) {
        List<Amendment> all = new ArrayList<>(existing);
        all.addAll(more);
        return Amendments.apply(stock, all, bench.catalogue());
    }

    private Outcome<KitPlan> fill(Draft draft) {
        DeviceMaker devices = new DeviceMaker(draft);
        devices.weigh();
        for (FeedPart feed : draft.recipe.feeds()) {
            if (feed.when().holds(draft.facts)) {
                new FeedSearch(draft).find(feed);
            }
        }
        if (draft.findings.isEmpty()) {
            devices.make();
        }
        if (draft.findings.isEmpty()) {
            Sizing sizing = new Sizing(draft);
            ChangeMaker changes = new ChangeMaker(draft, sizing);
            changes.make();
            new WireMaker(draft).make(sizing);
            changes.clear();
            new Reminders(draft).tell();
            Rooms.check(draft);
        }
        return draft.findings.isEmpty()
                ? Outcome.accepted(new KitPlan(draft.recipe.id(), draft.amendments, draft.notes))
                : Outcome.rejected(draft.findings);
    }

    private static Map<String, String> facts(VehicleSheet vehicle) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put(
                "vehicle.earth",
                vehicle.earth() == EarthPolarity.POSITIVE ? "positive" : "negative");
        facts.put("vehicle.volts", vehicle.system().toVolts().stripTrailingZeros().toPlainString());
        return facts;
    }
}
