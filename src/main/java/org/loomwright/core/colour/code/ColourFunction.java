package org.loomwright.core.colour.code;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.WireColour;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * One use of one colour.
 *
 * @param colour body and tracer
 * @param function what such a wire is there for, in words
 * @param services codes of the services that fit, in order; empty where the function is general or no service fits
 * @param leg where in its circuit the wire stands
 * @param provenance where the row comes from
 */
public record ColourFunction(
        WireColour colour,
        String function,
        SortedSet<String> services,
        Leg leg,
        Provenance provenance) {

    public ColourFunction {
        services = Collections.unmodifiableSortedSet(new TreeSet<>(services));
    }

    /** @return whether it holds for every circuit that stands there */
    public boolean isGeneral() {
        return services.isEmpty();
    }

    /** @return whether the row was read in a publication */
    public boolean isPublished() {
        return provenance.status() == Provenance.Status.FOUND;
    }

    /** @return whether it is there for all of these services; a general row is there for any */
    public boolean covers(Collection<String> all) {
        return isGeneral() || (!all.isEmpty() && services.containsAll(all));
    }

    /** @return whether nothing that is known of a wire speaks against this being its function */
    public boolean mayBe(Set<String> serves, Set<Leg> legs) {
        boolean sharesService = isGeneral() || serves.stream().anyMatch(services::contains);
        return sharesService && (leg == Leg.OTHER || legs.contains(leg));
    }
}
