package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Everything the trade's tables say that a loom document may refer to by its short name. Immutable and thread-safe.
 */
public final class Catalogue {

    private final Map<String, BaseColour> colours;
    private final Map<String, BaseColour> ownColours;
    private final Map<String, ConductorSize> sizes;
    private final Map<String, Covering> coverings;
    private final Map<String, TerminalType> terminals;
    private final List<OpeningSize> openingSizes;
    private final Map<String, Service> services;
    private final Parts parts;

    /**
     * @param colours basic colours
     * @param sizes conductor sizes
     * @param coverings kinds of covering
     * @param terminals kinds of terminal
     * @param openingSizes sizes of grommet, tube and clip
     * @param services what circuits are there for
     * @param parts joints, relays and usual consumers
     * @throws IllegalArgumentException if a short name stands twice in one table, or a table names what another one does not have
     */
    public Catalogue(
            List<BaseColour> colours,
            List<ConductorSize> sizes,
            List<Covering> coverings,
            List<TerminalType> terminals,
            List<OpeningSize> openingSizes,
            List<Service> services,
            Parts parts) {
        this.colours = byName(colours, BaseColour::letters);
        this.ownColours = Map.of();
        this.sizes = byName(sizes, ConductorSize::designation);
        this.coverings = byName(coverings, Covering::code);
        this.terminals = byName(terminals, TerminalType::code);
        this.openingSizes =
                openingSizes.stream()
                        .sorted(Comparator.comparing(OpeningSize::clearDiameter))
                        .toList();
        this.services = byName(services, Service::code);
        this.parts = parts;
        checkParts();
    }

    private Catalogue(Catalogue printed, List<BaseColour> own) {
        this.colours = printed.colours;
        this.ownColours = byName(own, BaseColour::letters);
        this.sizes = printed.sizes;
        this.coverings = printed.coverings;
        this.terminals = printed.terminals;
        this.openingSizes = printed.openingSizes;
        this.services = printed.services;
        this.parts = printed.parts;
        for (BaseColour colour : own) {
            if (colours.containsKey(colour.letters())) {
                throw new IllegalArgumentException("the code has " + colour.letters() + " itself");
            }
        }
    }

    /**
     * @param own colours that one loom has beside those of the code, in the place of any that were given before
     * @return the same tables, in which those can be found too
     * @throws IllegalArgumentException if the code has one of the letters, or one stands twice
     */
    public Catalogue withOwnColours(List<BaseColour> own) {
        return new Catalogue(this, own);
    }

    private void checkParts() {
        for (JointType joint : parts.joints()) {
            getTerminal(joint.terminal());
        }
        for (TypicalLoad load : parts.loads()) {
            String service = load.service();
            if (service != null && findService(service).isEmpty()) {
                throw unknown("service", service);
            }
        }
    }

    private static <T> Map<String, T> byName(List<T> rows, Function<T, String> name) {
        Map<String, T> map = new LinkedHashMap<>();
        for (T row : rows) {
            if (map.put(name.apply(row), row) != null) {
                throw new IllegalArgumentException(
                        "the catalogue has " + name.apply(row) + " twice");
            }
        }
        return map;
    }

    /** @return every basic colour of the code, in the order of the table */
    public List<BaseColour> colours() {
        return List.copyOf(colours.values());
    }

    /** @return those of the code, then those that only one loom has */
    public List<BaseColour> coloursWithOwn() {
        List<BaseColour> all = new ArrayList<>(colours.values());
        all.addAll(ownColours.values());
        return List.copyOf(all);
    }

    /** @return every conductor size, in the order of the table */
    public List<ConductorSize> sizes() {
        return List.copyOf(sizes.values());
    }

    /** @return every covering, in the order of the table */
    public List<Covering> coverings() {
        return List.copyOf(coverings.values());
    }

    /** @return every terminal, in the order of the table */
    public List<TerminalType> terminals() {
        return List.copyOf(terminals.values());
    }

    /** @return every service, in the order of the table */
    public List<Service> services() {
        return List.copyOf(services.values());
    }

    /** @return joints, relays and usual consumers */
    public Parts parts() {
        return parts;
    }

    /** @return the service, if there is one with this code */
    public Optional<Service> findService(String code) {
        return Optional.ofNullable(services.get(code));
    }

    /**
     * @param name what a person calls a device
     * @return the first service of the table that has a word in it
     */
    public Optional<Service> findServiceByWords(String name) {
        return services.values().stream().filter(service -> service.isIn(name)).findFirst();
    }

    /** @return the basic colour with these letters, if the code or the loom has one */
    public Optional<BaseColour> findColour(String letters) {
        return Optional.ofNullable(colours.get(letters))
                .or(() -> Optional.ofNullable(ownColours.get(letters)));
    }

    /** @return the colour that only the loom has, if these are its letters */
    public Optional<BaseColour> findOwnColour(String letters) {
        return Optional.ofNullable(ownColours.get(letters));
    }

    /** @return whether body and tracer are both known to the code or the loom */
    public boolean hasColour(WireColour colour) {
        String tracer = colour.tracer();
        return findColour(colour.body()).isPresent()
                && (tracer == null || findColour(tracer).isPresent());
    }

    /** @return the conductor size, if there is one with this designation */
    public Optional<ConductorSize> findSize(String designation) {
        return Optional.ofNullable(sizes.get(designation));
    }

    /** @return the covering, if there is one with this code */
    public Optional<Covering> findCovering(String code) {
        return Optional.ofNullable(coverings.get(code));
    }

    /** @return the terminal, if there is one with this code */
    public Optional<TerminalType> findTerminal(String code) {
        return Optional.ofNullable(terminals.get(code));
    }

    /**
     * @param kind what to look for
     * @param diameter what must pass
     * @return the smallest size of that kind that passes it, if the table has one
     */
    public Optional<OpeningSize> findOpeningFor(OpeningKind kind, Length diameter) {
        return openingSizes.stream()
                .filter(size -> size.kind() == kind)
                .filter(size -> !diameter.isLongerThan(size.clearDiameter()))
                .findFirst();
    }

    /**
     * @param designation a size that is known to exist, because the loom was checked
     * @return the conductor size
     * @throws IllegalArgumentException if it does not
     */
    public ConductorSize getSize(String designation) {
        return findSize(designation).orElseThrow(() -> unknown("conductor size", designation));
    }

    /**
     * @param code a covering that is known to exist, because the loom was checked
     * @return the covering
     * @throws IllegalArgumentException if it does not
     */
    public Covering getCovering(String code) {
        return findCovering(code).orElseThrow(() -> unknown("covering", code));
    }

    /**
     * @param code a terminal that is known to exist, because the loom was checked
     * @return the terminal
     * @throws IllegalArgumentException if it does not
     */
    public TerminalType getTerminal(String code) {
        return findTerminal(code).orElseThrow(() -> unknown("terminal", code));
    }

    private static IllegalArgumentException unknown(String what, String name) {
        return new IllegalArgumentException("the catalogue has no " + what + " " + name);
    }
}
