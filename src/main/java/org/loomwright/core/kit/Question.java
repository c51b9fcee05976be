package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.electrical.tracing.Supply;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One thing that a recipe has to know.
 *
 * @param id unique in the recipe
 * @param text the question, as a person reads it
 * @param kind what sort of answer it takes
 * @param when under which earlier answers it is asked at all
 * @param optional whether it may be left open; the usual answer is taken then, if there is one
 * @param usual the usual answer in words, or null where the loom decides or nobody can know
 * @param choices for a choice, what there is to choose from
 * @param near for a node, a device or a wire: the devices that the likely answers stand at, the likeliest first
 * @param supplies for a wire, what it may be fed from
 * @param rank which of the likely answers is the usual one, from 1
 * @param least for an amount, the least that makes sense
 * @param most for an amount, the most that makes sense
 * @param provenance where the usual answer and the range come from
 */
public record Question(
        String id,
        String text,
        Kind kind,
        When when,
        boolean optional,
        @Nullable String usual,
        List<Choice> choices,
        List<Selector> near,
        List<Supply> supplies,
        int rank,
        @Nullable BigDecimal least,
        @Nullable BigDecimal most,
        Provenance provenance) {

    /** What sort of answer a question takes. */
    public enum Kind {
        /** A node of the loom, or a new end of it. */
        NODE,
        /** A device of the loom. */
        DEVICE,
        /** A wire of the loom. */
        WIRE,
        /** One of the choices. */
        CHOICE,
        /** Yes or no. */
        YES_NO,
        /** A current in amperes. */
        AMPERES,
        /** A power in watts. */
        WATTS,
        /** A length in millimetres. */
        LENGTH;

        /** @return whether the answer is a number */
        public boolean isAmount() {
            return switch (this) {
                case AMPERES, WATTS, LENGTH -> true;
                case NODE, DEVICE, WIRE, CHOICE, YES_NO -> false;
            };
        }
    }

    /**
     * Something to choose.
     *
     * @param value the answer
     * @param text what a person reads
     */
    public record Choice(String value, String text) {}

    public Question {
        choices = List.copyOf(choices);
        near = List.copyOf(near);
        supplies = List.copyOf(supplies);
    }

    /** @return the same question with these choices and this usual answer */
    public Question with(List<Choice> newChoices, @Nullable String newUsual) {
        return new Question(
                id,
                text,
                kind,
                when,
                optional,
                newUsual,
                newChoices,
                near,
                supplies,
                rank,
                least,
                most,
                provenance);
    }

    /** @return the usual answer, if there is one */
    public Optional<Answer> usualAnswer() {
        if (usual == null) {
            return Optional.empty();
        }
        return Optional.of(
                kind.isAmount()
                        ? new Answer.Amount(new BigDecimal(usual))
                        : new Answer.Word(usual));
    }
}
