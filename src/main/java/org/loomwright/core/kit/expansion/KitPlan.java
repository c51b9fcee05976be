package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.Amendment;

import java.util.List;

/**
 * What a kit comes to in one loom.
 *
 * @param recipe id of the recipe
 * @param amendments what to append to the specification's amendments; each can be edited afterwards like any other
 * @param notes why, and of what to think
 */
public record KitPlan(String recipe, List<Amendment> amendments, List<KitNote> notes) {

    public KitPlan {
        amendments = List.copyOf(amendments);
        notes = List.copyOf(notes);
    }
}
