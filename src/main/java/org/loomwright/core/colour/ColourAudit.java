package org.loomwright.core.colour;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourFunction;
import org.loomwright.core.colour.code.ColourWords;
import org.loomwright.core.colour.code.SupplyColour;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Holds the recorded colour of every wire against what tracing says about it.
 *
 * <ul>
 *   <li>{@code colour.contradicts-feed}: the body colour belongs to another supply, or an earth is not black.
 *   <li>{@code colour.contradicts-function}: every published use of the colour is another one, and another colour is published for this.
 *   <li>{@code colour.not-in-code}: the list does not have this body with this tracer: a note on a wire that was recorded, a warning on a
 *       new one.
 *   <li>{@code colour.custom}: body or tracer is a colour that only this loom has. Nothing says what such a body is fed from.
 * </ul>
 *
 * What rests on memory is a note. So is everything about a vehicle that is older than the scheme. A wire that tracing cannot place is
 * not judged.
 */
public final class ColourAudit {

    private static final String NOT_IN_CODE = "colour.not-in-code";

    private final TracedLoom traced;
    private final ColourCode code;
    private final Set<String> added;
    private final Contradictions contradictions;
    private final ColourProposals proposals;

    private ColourAudit(TracedLoom traced, ColourCode code, Collection<String> added) {
        this.traced = traced;
        this.code = code;
        this.added = Set.copyOf(added);
        this.contradictions = new Contradictions(traced, code);
        this.proposals = new ColourProposals(traced, code);
    }

    /**
     * @param traced a loom as it was recorded
     * @param code the colour code
     * @return what was found, the worst first
     */
    public static List<Finding> of(TracedLoom traced, ColourCode code) {
        return of(traced, code, Set.of());
    }

    /**
     * @param traced a loom with its additions
     * @param code the colour code
     * @param added ids of the wires that are not there yet, whose colour can still be chosen
     * @return what was found, the worst first
     */
    public static List<Finding> of(TracedLoom traced, ColourCode code, Collection<String> added) {
        ColourAudit audit = new ColourAudit(traced, code, added);
        List<Finding> findings = new ArrayList<>();
        traced.loom().wires().values().forEach(wire -> audit.check(wire, findings));
        return findings.stream().sorted(Finding.WORST_FIRST).toList();
    }

    /**
     * @param traced a loom with its additions
     * @param code the colour code
     * @param added ids of the wires that are not there yet
     * @return those whose colour no list has, the worst first
     */
    public static List<Finding> outsideCode(
            TracedLoom traced, ColourCode code, Collection<String> added) {
        ColourAudit audit = new ColourAudit(traced, code, added);
        List<Finding> findings = new ArrayList<>();
        added.forEach(id -> audit.checkCode(traced.loom().getWire(id), findings));
        return findings.stream().sorted(Finding.WORST_FIRST).toList();
    }

    private void checkCode(Wire wire, List<Finding> findings) {
        List<BaseColour> own = own(wire.colour());
        if (!own.isEmpty()) {
            findings.add(custom(wire, own));
        } else if (code.functionsOf(wire.colour()).isEmpty()) {
            findings.add(notInCode(wire));
        }
    }

    private void check(Wire wire, List<Finding> findings) {
        WireTrace trace = traced.trace(wire);
        List<ColourFunction> uses = code.functionsOf(wire.colour());
        checkCode(wire, findings);
        if (contradictions.isByFeed(wire)) {
            findings.add(contradictsFeed(wire, trace));
        } else {
            contradictions
                    .findRightFunction(wire)
                    .map(right -> contradictsFunction(wire, trace, uses, right))
                    .ifPresent(findings::add);
        }
    }

    private List<BaseColour> own(WireColour colour) {
        return Stream.of(colour.body(), Objects.requireNonNullElse(colour.tracer(), ""))
                .flatMap(letters -> traced.catalogue().findOwnColour(letters).stream())
                .toList();
    }

    private Finding custom(Wire wire, List<BaseColour> own) {
        String which =
                own.stream()
                        .map(it -> "%s (%s)".formatted(it.letters(), it.name()))
                        .collect(Collectors.joining(" and "));
        return Finding.warning(
                "colour.custom",
                Subject.of(ThingKind.WIRE, wire.id()),
                "Wire %s is %s: %s %s; no published code has %s. Say it in words on the job."
                        .formatted(
                                wire.id(),
                                words(wire.colour()),
                                which,
                                own.size() == 1 ? "is this loom's own colour" : "are its own",
                                own.size() == 1 ? "it" : "them"));
    }

    private Finding notInCode(Wire wire) {
        Subject subject = Subject.of(ThingKind.WIRE, wire.id());
        if (added.contains(wire.id())) {
            return Finding.warning(
                    NOT_IN_CODE,
                    subject,
                    "New wire %s is to be %s; the list of the code has no such wire. It may be made, but nobody will find it in a list: say it in words on the job."
                            .formatted(wire.id(), words(wire.colour())));
        }
        return Finding.note(
                NOT_IN_CODE,
                subject,
                "Wire %s is recorded as %s; the list of the code has no such wire. Keep it if it is what you see. %s"
                        .formatted(wire.id(), words(wire.colour()), otherScheme())
                        .strip());
    }

    private Finding contradictsFeed(Wire wire, WireTrace trace) {
        List<SupplyColour> rows = code.suppliesOf(wire.colour());
        boolean isPublished = rows.stream().anyMatch(SupplyColour::isPublished);
        String says =
                rows.stream()
                        .map(row -> "%s is %s".formatted(row.colour(), sourced(row)))
                        .collect(Collectors.joining(", "));
        return finding(
                isPublished,
                "colour.contradicts-feed",
                wire,
                "Wire %s is recorded as %s, and %s; but it is %s. %s"
                        .formatted(
                                wire.id(),
                                words(wire.colour()),
                                says,
                                PathWords.of(trace),
                                right(wire)));
    }

    private static String sourced(SupplyColour row) {
        return "%s (%s%s)"
                .formatted(
                        row.words(),
                        row.provenance().status().words(),
                        row.isPublished() ? ", " + row.provenance().source() : "");
    }

    private Finding contradictsFunction(
            Wire wire, WireTrace trace, List<ColourFunction> uses, ColourFunction right) {
        String means = uses.stream().map(ColourAudit::sourced).collect(Collectors.joining("; or "));
        return finding(
                true,
                "colour.contradicts-function",
                wire,
                "Wire %s is recorded as %s, which is there for: %s; but it serves %s and is %s. %s would be right: %s."
                        .formatted(
                                wire.id(),
                                words(wire.colour()),
                                means,
                                services(trace),
                                PathWords.of(trace),
                                words(right.colour()),
                                sourced(right)));
    }

    private static String sourced(ColourFunction use) {
        return "%s (%s, %s)"
                .formatted(
                        use.function(),
                        use.provenance().status().words(),
                        use.provenance().source());
    }

    private String services(WireTrace trace) {
        String names =
                trace.serves().stream()
                        .flatMap(service -> traced.catalogue().findService(service).stream())
                        .map(service -> service.name())
                        .collect(Collectors.joining(", "));
        return names.isEmpty() ? "no service that the list knows" : names;
    }

    private String right(Wire wire) {
        return proposals
                .of(wire.id())
                .map(
                        proposal ->
                                "%s would be right: %s."
                                        .formatted(
                                                words(proposal.colour()),
                                                proposal.best().reasonWithSource()))
                .orElse("What would be right cannot be told.");
    }

    private Finding finding(boolean isPublished, String rule, Wire wire, String text) {
        Severity severity = isPublished && !isOlderThanScheme() ? Severity.WARNING : Severity.NOTE;
        return new Finding(
                rule,
                severity,
                Subject.of(ThingKind.WIRE, wire.id()),
                (text + " " + otherScheme()).strip());
    }

    private boolean isOlderThanScheme() {
        return vehicle().year() < ColourCode.SCHEME_SINCE;
    }

    private String otherScheme() {
        if (isOlderThanScheme()) {
            return "The vehicle is of %d and the code dates from about %d, so it may follow another scheme."
                    .formatted(vehicle().year(), ColourCode.SCHEME_SINCE);
        }
        return vehicle().notStandard().isEmpty()
                ? ""
                : "The vehicle is not as it left the factory, so the wire may follow another"
                        + " scheme.";
    }

    private VehicleSheet vehicle() {
        return traced.loom().document().vehicle();
    }

    private String words(WireColour colour) {
        return ColourWords.withLetters(colour, traced.catalogue());
    }
}
