package org.loomwright.core.electrical.simulation;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Temperature;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One state that every vehicle gets into, told by the services that are switched on.
 *
 * @param name what a person calls it
 * @param engine how the engine runs
 * @param conductors temperature of the metal of the wires
 * @param ambient temperature of the air round them
 * @param on which services are on
 * @param hoursPerDay how long it lasts on the day for which charging is balanced; all together are that day
 * @param lasts whether it may last for minutes, so that charging matters in it
 * @param provenance where the row comes from
 */
public record StandardScenario(
        String name,
        Scenario.Engine engine,
        Temperature conductors,
        Temperature ambient,
        List<Position> on,
        BigDecimal hoursPerDay,
        boolean lasts,
        Provenance provenance) {

    private static final String FEED = "FEED";

    /**
     * How the switches of a service stand.
     *
     * @param service code of the service
     * @param alternatives each a set of points; the first of which a switch has all is closed. {@link #EVERY} is every point but the feed;
     *     {@link #ONLY} the same where the switch has no second contact
     */
    public record Position(String service, List<Set<String>> alternatives) {

        /** Every contact. */
        public static final String EVERY = "*";

        /** The contact of a switch that has no other. */
        public static final String ONLY = "?";

        public Position {
            alternatives = alternatives.stream().map(Set::copyOf).toList();
        }

        /** What is closed on that switch, empty where no alternative fits. */
        Set<String> closedOn(Device device) {
            Set<String> contacts = contactsOf(device);
            return alternatives.stream()
                    .map(points -> resolved(points, contacts, device))
                    .filter(points -> !points.isEmpty() && contacts.containsAll(points))
                    .findFirst()
                    .orElse(Set.of());
        }

        private static Set<String> resolved(
                Set<String> points, Set<String> contacts, Device device) {
            boolean hasOnlyOne = contacts.size() == 1 || device.points().size() == 2;
            return points.contains(EVERY) || points.contains(ONLY) && hasOnlyOne
                    ? contacts
                    : points;
        }

        /** Points other than the feed and the earth, to which contacts go; of a socket its feed, where things are plugged in. */
        private static Set<String> contactsOf(Device device) {
            boolean isSocket = device.kind() == DeviceKind.SOCKET;
            Set<String> contacts = new TreeSet<>();
            for (Point point : device.points()) {
                boolean isFeed = point.name().equals(FEED) && !isSocket;
                if (!isFeed && !point.name().equals("EARTH")) {
                    contacts.add(point.name());
                }
            }
            return contacts;
        }
    }

    public StandardScenario {
        on = List.copyOf(on);
        if (hoursPerDay.signum() < 0) {
            throw new IllegalArgumentException(
                    "scenario '%s' cannot last %s h".formatted(name, hoursPerDay));
        }
    }
}
