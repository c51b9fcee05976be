package org.loomwright.core.open;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.open.Expectation.Need;
import org.loomwright.core.quantity.Length;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The tables of this package: what services usually need, and how wide terminals are. Immutable and thread-safe. */
public final class Expectations {

    private final List<Expectation> rows;
    private final Map<String, Length> widths;

    /**
     * @param catalogue the services and terminals that the rows name
     * @param rows what services need; each need once for a service
     * @param widths how wide terminals are across, by code; the narrow ones may be left out
     * @throws IllegalArgumentException if a row names what the catalogue does not have, or stands twice
     */
    public Expectations(Catalogue catalogue, List<Expectation> rows, Map<String, Length> widths) {
        this.rows = List.copyOf(rows);
        this.widths = Map.copyOf(widths);
        checkServices(catalogue);
        widths.keySet().forEach(catalogue::getTerminal);
    }

    private void checkServices(Catalogue catalogue) {
        List<String> known = catalogue.services().stream().map(Service::code).toList();
        Set<String> seen = new HashSet<>();
        for (Expectation row : rows) {
            if (!known.contains(row.service())) {
                throw new IllegalArgumentException("there is no service " + row.service());
            }
            if (!seen.add(row.service() + " " + row.need())) {
                throw new IllegalArgumentException(
                        "%s needs %s twice".formatted(row.service(), row.need()));
            }
        }
    }

    /** @return every row, in the order of the table */
    public List<Expectation> rows() {
        return rows;
    }

    /** The rows of a service; none for an unknown one. */
    Stream<Expectation> of(Optional<Service> service) {
        return rows.stream()
                .filter(
                        row ->
                                service.map(Service::code)
                                        .filter(row.service()::equals)
                                        .isPresent());
    }

    /** That row, where the service needs it for that kind of device. */
    Optional<Expectation> find(Optional<Service> service, DeviceKind kind, Need need) {
        return of(service).filter(row -> row.need() == need && row.isOf(kind)).findFirst();
    }

    /** How wide the terminal is across, where the table says. */
    Optional<Length> width(String terminal) {
        return Optional.ofNullable(widths.get(terminal));
    }

    /**
     * The most that the rows of one service weigh together. Saying what a device serves cannot ask for more than this, which is why it
     * weighs so much.
     */
    int heaviestService() {
        Map<String, Integer> weights = new HashMap<>();
        rows.forEach(row -> weights.merge(row.service(), row.need().rule().weight(), Integer::sum));
        return weights.values().stream().mapToInt(Integer::intValue).max().orElse(1);
    }
}
