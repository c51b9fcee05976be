package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Question;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the new ends that answers ask for. Each is covered like the leg that it leaves, until somebody says otherwise. */
final class Branches {

    private final AmendedLoom base;
    private final Recipe recipe;
    private final Ids ids;
    private final Map<String, String> nodes = new LinkedHashMap<>();
    private final List<Amendment> amendments = new ArrayList<>();

    Branches(AmendedLoom base, Recipe recipe, Ids ids) {
        this.base = base;
        this.recipe = recipe;
        this.ids = ids;
    }

    void make(Map<String, Answer> answers) {
        for (Question question : recipe.questions()) {
            Answer answer = answers.get(question.id());
            if (question.kind() != Question.Kind.NODE || answer == null) {
                continue;
            }
            switch (answer) {
                case Answer.Word(String node) -> nodes.put(question.id(), node);
                case Answer.NewEnd end -> nodes.put(question.id(), newEnd(question, end));
                case Answer.Amount amount -> {}
            }
        }
    }

    /** Nodes by the question that they answer. */
    Map<String, String> nodes() {
        return nodes;
    }

    List<Amendment> amendments() {
        return amendments;
    }

    private String newEnd(Question question, Answer.NewEnd answer) {
        String name = recipe.circuit() + ", " + question.id().replace('-', ' ') + " end";
        Node end = new Node(ids.next("N"), name);
        Length at = answer.at();
        if (at == null) {
            Segment branch = branch(answer.from(), end, answer.length(), finishAt(answer.from()));
            amendments.add(new Amendment.ExtendBranch(ids.next("A"), reason(), branch, end));
        } else {
            Node breakout = new Node(ids.next("N"), name.replace(" end", " breakout"));
            Segment branch =
                    branch(breakout.id(), end, answer.length(), wholeFinish(answer.from()));
            amendments.add(
                    new Amendment.BreakOutBranch(
                            ids.next("A"),
                            reason(),
                            answer.from(),
                            at,
                            breakout,
                            ids.next("S"),
                            branch,
                            end));
        }
        return end.id();
    }

    private String reason() {
        return recipe.name() + ": a leg to where the new parts are.";
    }

    private Segment branch(String from, Node end, Length length, Finish like) {
        Finish finish =
                new Finish(
                        like.covering(),
                        like.baseYarn(),
                        like.tracers(),
                        like.picksPer25Mm(),
                        like.lacquerCoats(),
                        new Evidence(EvidenceKind.ASSUMED, "To match the leg that it leaves."));
        return new Segment(
                ids.next("S"), from, end.id(), length, List.of(), null, 0, finish, List.of());
    }

    private Finish finishAt(String node) {
        Loom loom = base.loom();
        Optional<Segment> arriving = loom.findArriving(node);
        return arriving.orElseGet(() -> loom.leaving(node).getFirst()).finish();
    }

    private Finish wholeFinish(String segment) {
        return base.loom().segments().values().stream()
                .filter(piece -> base.piece(piece.id()).recorded().id().equals(segment))
                .findFirst()
                .orElseThrow()
                .finish();
    }
}
