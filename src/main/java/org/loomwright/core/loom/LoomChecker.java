package org.loomwright.core.loom;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The one place that proves a document to be a loom: a tree, connected and rooted at its datum, every wire end on an existing
 * point, lengths positive and sane, ids unique, every colour, size, covering and terminal known to the catalogue; a colour
 * may also be one that the document declares, if its letters leave every pair readable in one way only.
 *
 * <p>All faults are reported together, each naming the thing, the rule and the place in the document as it was handed in. A
 * document without a segment, or with lists longer than {@link LoomLimits} allows, is refused for that alone. Cost: linear in the size of the
 * document.
 */
public final class LoomChecker {

    private final LoomDocument document;
    private final Catalogue catalogue;
    private final Faults faults = new Faults();

    private LoomChecker(LoomDocument document, Catalogue catalogue) {
        this.document = document;
        this.catalogue = catalogue;
    }

    /**
     * @param document what somebody wrote down
     * @param catalogue the tables that it refers to
     * @return the proven loom, or every fault
     */
    public static Outcome<Loom> check(LoomDocument document, Catalogue catalogue) {
        return new LoomChecker(document, catalogue).run();
    }

    private Outcome<Loom> run() {
        checkSizes();
        if (faults.found().isEmpty()) {
            checkParts();
        }
        List<Finding> found = faults.found();
        return found.isEmpty() ? Outcome.accepted(new Loom(document)) : Outcome.rejected(found);
    }

    private void checkSizes() {
        Subject loom = new Subject(ThingKind.LOOM, "", "");
        faults.addUnless(
                !document.segments().isEmpty(),
                "no-segment",
                loom,
                "The loom has no segment; it needs at least one.");
        faults.checkCount(loom, "nodes", document.nodes().size(), LoomLimits.MOST_NODES);
        faults.checkCount(loom, "segments", document.segments().size(), LoomLimits.MOST_NODES);
        faults.checkCount(loom, "devices", document.devices().size(), LoomLimits.MOST_DEVICES);
        faults.checkCount(loom, "wires", document.wires().size(), LoomLimits.MOST_WIRES);
        faults.checkCount(
                loom, "end-to-end checks", document.checks().size(), LoomLimits.MOST_NODES);
        faults.checkCount(
                loom, "own colours", document.customColours().size(), LoomLimits.MOST_OWN_COLOURS);
    }

    private void checkParts() {
        faults.checkText(new Subject(ThingKind.LOOM, "", "/name"), "name", document.name());
        new VehicleCheck(faults).check(document.vehicle());
        Set<String> nodes = checkNodes();
        checkSegmentIds();
        Catalogue coloured =
                new CustomColourCheck(catalogue, faults).check(document.customColours());
        new SegmentCheck(faults, coloured).checkAll(document.segments());
        new TreeCheck(document, nodes, faults).check();
        new WiringCheck(document, nodes, coloured, faults).check();
        checkEndToEnds(nodes);
    }

    private Set<String> checkNodes() {
        List<Subject> subjects = subjects(ThingKind.NODE, document.nodes(), Node::id, "/nodes/");
        for (int i = 0; i < subjects.size(); i++) {
            faults.checkText(subjects.get(i), "name", document.nodes().get(i).name());
        }
        return faults.checkIds(subjects);
    }

    private void checkSegmentIds() {
        faults.checkIds(
                subjects(ThingKind.SEGMENT, document.segments(), Segment::id, "/segments/"));
        List<Subject> openings = new ArrayList<>();
        for (int i = 0; i < document.segments().size(); i++) {
            String under = "/segments/" + i + "/openings/";
            openings.addAll(
                    subjects(
                            ThingKind.OPENING,
                            document.segments().get(i).openings(),
                            Opening::id,
                            under));
        }
        faults.checkIds(openings);
    }

    private void checkEndToEnds(Set<String> nodes) {
        List<Subject> subjects =
                subjects(ThingKind.CHECK, document.checks(), EndToEnd::id, "/checks/");
        faults.checkIds(subjects);
        for (int i = 0; i < subjects.size(); i++) {
            EndToEnd check = document.checks().get(i);
            Subject subject = subjects.get(i);
            for (String node : new HashSet<>(List.of(check.from(), check.to()))) {
                faults.addUnless(
                        nodes.contains(node),
                        "node-unknown",
                        subject,
                        "Check %s refers to node %s, which does not exist.",
                        check.id(),
                        node);
            }
            faults.addUnless(
                    !check.from().equals(check.to()),
                    "check-nowhere",
                    subject,
                    "Check %s runs from node %s to itself.",
                    check.id(),
                    check.from());
            faults.checkLength(
                    subject, "measured length", check.measured(), LoomLimits.LONGEST_CHECK);
        }
    }

    /** Names every part of one list by its id and its place in the document. */
    static <T> List<Subject> subjects(
            ThingKind kind, List<T> parts, Function<T, String> id, String under) {
        return IntStream.range(0, parts.size())
                .mapToObj(i -> new Subject(kind, id.apply(parts.get(i)), under + i))
                .toList();
    }
}
