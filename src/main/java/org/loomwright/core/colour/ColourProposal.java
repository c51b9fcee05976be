package org.loomwright.core.colour;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.WireColour;

import java.util.List;

/**
 * The colour that a wire should have, and what else would do.
 *
 * @param best the first choice
 * @param alternatives what else would do, the better first
 */
public record ColourProposal(Choice best, List<Choice> alternatives) {

    /**
     * One colour with its reason.
     *
     * @param colour body and tracer
     * @param reason the rule that leads to it, in words
     * @param provenance where the rule comes from
     */
    public record Choice(WireColour colour, String reason, Provenance provenance) {

        /** @return the reason with its source, for example {@code ... (published, C4;C5)} */
        public String reasonWithSource() {
            return "%s (%s, %s)"
                    .formatted(reason, provenance.status().words(), provenance.source())
                    .replace("from memory, from memory", "from memory");
        }
    }

    public ColourProposal {
        alternatives = List.copyOf(alternatives);
    }

    /** @return whether a wire may have that colour: it is the first choice, or published for such a wire */
    public boolean isRight(WireColour colour) {
        return colour.equals(best.colour())
                || alternatives.stream()
                        .filter(it -> it.provenance().status() == Provenance.Status.FOUND)
                        .anyMatch(it -> it.colour().equals(colour));
    }

    /** @return the colour of the first choice */
    public WireColour colour() {
        return best.colour();
    }
}
