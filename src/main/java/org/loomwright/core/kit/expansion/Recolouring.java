package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourProposal;
import org.loomwright.core.colour.ColourProposals;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Holds the colours of a plan against the rules of the colour code. A colour that a recipe has from a publication stays, with a note where
 * the rules would have another; one that nobody published gives way to what the rules propose.
 */
final class Recolouring {

    private static final String RULE = "colour";

    private final ColourProposals proposals;
    private final List<Amendment> amendments = new ArrayList<>();
    private final List<KitNote> notes;
    private final Map<String, KitNote> toldColours = new LinkedHashMap<>();

    private Recolouring(ColourProposals proposals, KitPlan plan) {
        this.proposals = proposals;
        this.notes = new ArrayList<>(plan.notes());
        plan.notes().stream()
                .filter(note -> note.rule().equals(RULE))
                .forEach(note -> toldColours.put(note.about().id(), note));
    }

    static KitPlan of(KitPlan plan, ColourProposals proposals) {
        Recolouring recolouring = new Recolouring(proposals, plan);
        plan.amendments().forEach(recolouring::add);
        return new KitPlan(plan.recipe(), recolouring.amendments, recolouring.notes);
    }

    private void add(Amendment amendment) {
        amendments.add(amendment instanceof AddWire added ? coloured(added) : amendment);
    }

    private AddWire coloured(AddWire added) {
        Wire wire = added.wire();
        KitNote told = toldColours.get(wire.id());
        Optional<ColourProposal> proposal = proposals.of(wire.id());
        if (told == null || proposal.isEmpty() || proposal.get().isRight(wire.colour())) {
            return added;
        }
        ColourProposal.Choice best = proposal.get().best();
        Subject about = Subject.of(ThingKind.WIRE, wire.id());
        if (told.provenance().status() == Status.FOUND) {
            notes.add(
                    new KitNote(
                            about,
                            RULE,
                            "The rules of the code would have %s: %s."
                                    .formatted(best.colour(), best.reason()),
                            best.provenance()));
            return added;
        }
        notes.set(
                notes.indexOf(told),
                new KitNote(
                        about,
                        RULE,
                        "%s: %s. The recipe has %s, for which there is no publication."
                                .formatted(best.colour(), best.reason(), wire.colour()),
                        best.provenance()));
        return new AddWire(added.id(), added.reason(), with(wire, best.colour()));
    }

    private static Wire with(Wire wire, WireColour colour) {
        return new Wire(
                wire.id(),
                wire.circuit(),
                colour,
                wire.size(),
                wire.a(),
                wire.b(),
                wire.condition());
    }
}
