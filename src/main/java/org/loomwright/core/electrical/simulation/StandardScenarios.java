package org.loomwright.core.electrical.simulation;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The states in which every loom is looked at. A switch belongs to the service that it is recorded to serve, or else to the first one
 * whose words stand in its name. Services that a loom has no switch for are left out; two scenarios may then be the same for it, and both
 * are listed. Immutable and thread-safe.
 */
public final class StandardScenarios {

    private final List<StandardScenario> rows;

    /**
     * @param rows the table, in the order in which people read it
     * @throws IllegalArgumentException if a name stands twice
     */
    public StandardScenarios(List<StandardScenario> rows) {
        this.rows = List.copyOf(rows);
        Set<String> names = new HashSet<>();
        for (StandardScenario row : rows) {
            if (!names.add(row.name())) {
                throw new IllegalArgumentException("there are two scenarios '" + row.name() + "'");
            }
        }
    }

    /** @return the table, with the hours of each scenario and where the row comes from */
    public List<StandardScenario> rows() {
        return rows;
    }

    /**
     * @param loom a proven loom
     * @param catalogue the services
     * @return one scenario for each row, in the same order and with the same name
     */
    public List<Scenario> of(Loom loom, Catalogue catalogue) {
        return of(loom.devices().values(), catalogue);
    }

    /**
     * @param devices whatever is there, each id once
     * @param catalogue the services
     * @return one scenario for each row, in the same order and with the same name
     */
    public List<Scenario> of(Collection<Device> devices, Catalogue catalogue) {
        Map<Device, String> services = new LinkedHashMap<>();
        for (Device device : devices) {
            if (device.kind() == DeviceKind.SWITCH || device.kind() == DeviceKind.SOCKET) {
                serviceOf(device, catalogue)
                        .ifPresent(service -> services.put(device, service.code()));
            }
        }
        return rows.stream().map(row -> scenario(row, services)).toList();
    }

    private static Optional<Service> serviceOf(Device device, Catalogue catalogue) {
        String code = device.particulars().serves();
        return code == null
                ? catalogue.findServiceByWords(device.name())
                : catalogue.findService(code);
    }

    private static Scenario scenario(StandardScenario row, Map<Device, String> services) {
        Map<String, Set<String>> closed = new LinkedHashMap<>();
        services.forEach(
                (device, service) ->
                        row.on().stream()
                                .filter(position -> position.service().equals(service))
                                .map(position -> position.closedOn(device))
                                .filter(points -> !points.isEmpty())
                                .findFirst()
                                .ifPresent(points -> closed.put(device.id(), points)));
        return new Scenario(row.name(), closed, row.engine(), row.conductors(), row.ambient());
    }
}
