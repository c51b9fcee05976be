package org.loomwright.core.kit;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Point;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which devices of a loom are meant. What is empty does not matter; what is not must fit.
 *
 * @param kinds kinds of device, one of them
 * @param serves codes of services, one of them; where nobody said what a device serves, its name is asked
 * @param named lower-case words, one of them in its name
 * @param points names of points, all of them
 */
public record Selector(
        List<DeviceKind> kinds, List<String> serves, List<String> named, List<String> points) {

    public Selector {
        kinds = List.copyOf(kinds);
        serves = List.copyOf(serves);
        named = List.copyOf(named);
        points = List.copyOf(points);
    }

    /** @return whether the device is meant */
    public boolean fits(Device device, Catalogue catalogue) {
        return (kinds.isEmpty() || kinds.contains(device.kind()))
                && (serves.isEmpty()
                        || Tracing.serviceOf(device, catalogue)
                                .map(Service::code)
                                .filter(serves::contains)
                                .isPresent())
                && isNamed(device)
                && pointsOf(device).containsAll(points);
    }

    private boolean isNamed(Device device) {
        String name = device.name().toLowerCase(Locale.ROOT);
        return named.isEmpty() || named.stream().anyMatch(name::contains);
    }

    private static Set<String> pointsOf(Device device) {
        return device.points().stream()
                .map(Point::name)
                .collect(Collectors.toCollection(HashSet::new));
    }
}
