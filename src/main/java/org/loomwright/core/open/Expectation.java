package org.loomwright.core.open;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.loom.DeviceKind;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What one service usually needs.
 *
 * @param service code of the service
 * @param kinds the kinds of device that it holds for; empty for every kind
 * @param need what is needed
 * @param from how many added consumers of the service there must be before it holds, at least 1
 * @param unless words, lower case: one of them in the name of a switch of the service says that it is not needed
 * @param why why it is asked, as a clause
 * @param provenance where that comes from
 */
public record Expectation(
        String service,
        Set<DeviceKind> kinds,
        Need need,
        int from,
        List<String> unless,
        String why,
        Provenance provenance) {

    /** Things that a service may need. */
    public enum Need {
        /** A fuse between the source and the consumer. */
        FUSE(OpenRule.FUSE),
        /** A switch of its own, in the feed or on the earth side. */
        SWITCH(OpenRule.SWITCH),
        /** The contact of a relay in the feed. */
        RELAY(OpenRule.RELAY),
        /** A wire to earth, or a word that the body earths it. */
        OWN_EARTH(OpenRule.OWN_EARTH),
        /** Which battery terminal has to go to the body. */
        POLARITY(OpenRule.POLARITY),
        /** A lamp at the same node that lights it. */
        PANEL_LAMP(OpenRule.PANEL_LAMP),
        /** A sender that a wire leads to. */
        SENDER(OpenRule.SENDER),
        /** A lamp before the driver's eyes; one for the service. */
        TELL_TALE(OpenRule.TELL_TALE),
        /** A feed straight from the battery; one for the service. */
        ALWAYS_LIVE(OpenRule.ALWAYS_LIVE);

        private final OpenRule rule;

        Need(OpenRule rule) {
            this.rule = rule;
        }

        /** @return the rule that asks for it */
        public OpenRule rule() {
            return rule;
        }
    }

    public Expectation {
        kinds = Set.copyOf(kinds);
        unless = List.copyOf(unless);
        if (from < 1) {
            throw new IllegalArgumentException("an expectation begins at 1, was " + from);
        }
    }

    boolean isOf(DeviceKind kind) {
        return kinds.isEmpty() || kinds.contains(kind);
    }

    boolean isLiftedBy(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return unless.stream().anyMatch(lower::contains);
    }
}
