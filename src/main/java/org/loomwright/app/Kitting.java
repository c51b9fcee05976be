package org.loomwright.app;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.electrical.check.current.CheckedFinding;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Kits;
import org.loomwright.core.kit.Question;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.kit.expansion.KitBench;
import org.loomwright.core.kit.expansion.KitExpansion;
import org.loomwright.core.kit.expansion.KitPlan;
import org.loomwright.core.loom.Loom;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Turns wishes into amendments: asks what a kit has to know, says what it comes to, and adds it to a specification. */
@Service
public class Kitting {

    private final Kits kits;
    private final KitBench bench;
    private final Specifications specifications;
    private final Analyses analyses;
    private final Electrics electrics;

    Kitting(
            Kits kits,
            KitBench bench,
            Specifications specifications,
            Analyses analyses,
            Electrics electrics) {
        this.kits = kits;
        this.bench = bench;
        this.specifications = specifications;
        this.analyses = analyses;
        this.electrics = electrics;
    }

    /**
     * What somebody wants of a kit.
     *
     * @param kit its id
     * @param answers by question
     * @param otherwiseUsual whether what is not answered is answered as usual
     */
    public record Wish(String kit, Map<String, Answer> answers, boolean otherwiseUsual) {

        public Wish {
            answers = Map.copyOf(answers);
        }
    }

    /**
     * A kit with its questions for one loom.
     *
     * @param recipe the kit
     * @param questions its questions with what the loom offers
     */
    public record Asked(Recipe recipe, List<Question> questions) {

        public Asked {
            questions = List.copyOf(questions);
        }
    }

    /**
     * What a kit comes to.
     *
     * @param plan the amendments with the reasons
     * @param findings what the electrical checks find with it and did not find without it
     */
    public record Planned(KitPlan plan, List<CheckedFinding> findings) {

        public Planned {
            findings = List.copyOf(findings);
        }
    }

    /**
     * A specification with a kit added.
     *
     * @param specification as it stands now
     * @param planned what was added
     */
    public record Added(StoredSpecification specification, Planned planned) {}

    /** @return every kit that there is */
    public List<Recipe> all() {
        return kits.all();
    }

    /**
     * @param specificationId of a specification
     * @param kit id of a kit
     * @return its questions for the amended loom, or that there is no such kit
     * @throws NotFoundException if there is no such specification
     */
    @Transactional(readOnly = true)
    public Outcome<Asked> ask(UUID specificationId, String kit) {
        StoredSpecification specification = specifications.get(specificationId);
        Loom loom =
                amended(stock(specification), specifications.wishes(specification).amendments())
                        .loom();
        return kits.find(kit).map(recipe -> new Asked(recipe, questions(recipe, loom)));
    }

    private List<Question> questions(Recipe recipe, Loom loom) {
        return Kits.questionsFor(recipe, loom, bench.catalogue(), bench.behaviours());
    }

    /**
     * Nothing is stored.
     *
     * @param specificationId of a specification
     * @param wish what is wanted
     * @return what it comes to, or every reason why it cannot be
     * @throws NotFoundException if there is no such specification
     */
    @Transactional(readOnly = true)
    public Outcome<Planned> plan(UUID specificationId, Wish wish) {
        return plan(specifications.get(specificationId), wish);
    }

    /**
     * Adds a kit to a specification, or nothing at all.
     *
     * @param specificationId of a specification
     * @param version the version that the wish was made from
     * @param wish what is wanted
     * @return the changed specification with what was added, or every reason why it cannot be
     * @throws NotFoundException if there is no such specification
     * @throws StaleVersionException if it was changed meanwhile
     */
    @Transactional
    public Outcome<Added> add(UUID specificationId, long version, Wish wish) {
        StoredSpecification before = specifications.get(specificationId);
        return plan(before, wish)
                .then(
                        planned ->
                                specifications
                                        .change(
                                                specificationId,
                                                version,
                                                with(before, planned.plan()))
                                        .map(changed -> new Added(changed, planned)));
    }

    private Specifications.Wishes with(StoredSpecification specification, KitPlan plan) {
        Specifications.Wishes wishes = specifications.wishes(specification);
        return new Specifications.Wishes(
                wishes.title(),
                joined(wishes.amendments(), plan.amendments()),
                wishes.settings(),
                wishes.accepted());
    }

    private static List<Amendment> joined(List<Amendment> some, List<Amendment> more) {
        List<Amendment> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    private Outcome<Planned> plan(StoredSpecification specification, Wish wish) {
        Specifications.Wishes wishes = specifications.wishes(specification);
        Loom stock = stock(specification);
        AmendedLoom before = amended(stock, wishes.amendments());
        return kits.find(wish.kit())
                .then(
                        recipe ->
                                new KitExpansion(bench)
                                        .expand(
                                                stock,
                                                wishes.amendments(),
                                                recipe,
                                                answers(recipe, before.loom(), wish)))
                .map(
                        plan -> {
                            AmendedLoom after =
                                    amended(stock, joined(wishes.amendments(), plan.amendments()));
                            return new Planned(
                                    plan,
                                    added(
                                            new WiredLoom(stock, before, wishes.settings()),
                                            new WiredLoom(stock, after, wishes.settings())));
                        });
    }

    private Map<String, Answer> answers(Recipe recipe, Loom loom, Wish wish) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        if (wish.otherwiseUsual()) {
            answers.putAll(Kits.usualAnswers(questions(recipe, loom)));
        }
        answers.putAll(wish.answers());
        return answers;
    }

    private Loom stock(StoredSpecification specification) {
        return analyses.proven(specification.draft().stock().document());
    }

    private AmendedLoom amended(Loom stock, List<Amendment> amendments) {
        return analyses.apply(stock, amendments).orElseThrow(Kitting::broken);
    }

    private static IllegalStateException broken(List<Finding> reasons) {
        return new IllegalStateException("what was proven does not hold any more: " + reasons);
    }

    private List<CheckedFinding> added(WiredLoom before, WiredLoom after) {
        Set<String> known = new HashSet<>();
        electrics
                .report(before, Changes.LEFT_OUT)
                .plainFindings()
                .forEach(finding -> known.add(key(finding)));
        return electrics.report(after, Changes.LEFT_OUT).findings().stream()
                .filter(checked -> !known.contains(key(checked.finding().finding())))
                .toList();
    }

    private static String key(Finding finding) {
        return finding.code() + " " + finding.subject().words() + " " + finding.severity();
    }
}
