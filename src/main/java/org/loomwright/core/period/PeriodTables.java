package org.loomwright.core.period;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.period.PeriodPart.Kind;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** When parts were usual, and what can be seen where. Immutable and thread-safe. */
public final class PeriodTables {

    private final List<PeriodPart> parts;
    private final List<Place> places;

    /**
     * @param catalogue the coverings and terminals that the rows name
     * @param parts when parts were usual
     * @param places the first that fits is taken
     * @throws IllegalArgumentException if a row names what the catalogue does not have, or stands twice
     */
    public PeriodTables(Catalogue catalogue, List<PeriodPart> parts, List<Place> places) {
        this.parts = List.copyOf(parts);
        this.places = List.copyOf(places);
        Set<String> seen = new HashSet<>();
        for (PeriodPart part : parts) {
            checkCode(part, catalogue);
            if (!seen.add(part.kind() + " " + part.code())) {
                throw new IllegalArgumentException(part.code() + " is there twice");
            }
        }
    }

    private static void checkCode(PeriodPart part, Catalogue catalogue) {
        switch (part.kind()) {
            case COVERING -> catalogue.getCovering(part.code());
            case TERMINAL -> catalogue.getTerminal(part.code());
            case SIZE -> {
                if (catalogue.sizes().stream()
                        .noneMatch(size -> part.isFor(Kind.SIZE, size.designation()))) {
                    throw new IllegalArgumentException("no size is like " + part.code());
                }
            }
            case DEVICE, WORD, FUSE -> {
                // not in the catalogue
            }
        }
    }

    /** @return when parts were usual, in the order of the table */
    public List<PeriodPart> parts() {
        return parts;
    }

    /** @return what can be seen where, in the order of the table */
    public List<Place> places() {
        return places;
    }

    Optional<PeriodPart> find(Kind kind, String code) {
        return parts.stream().filter(part -> part.isFor(kind, code)).findFirst();
    }

    /** The first row whose word stands in the name. */
    Optional<PeriodPart> findWord(String name) {
        List<String> words = Arrays.asList(name.toLowerCase(Locale.ROOT).split("[^a-z0-9]+"));
        return parts.stream()
                .filter(part -> part.kind() == Kind.WORD && words.contains(part.code()))
                .findFirst();
    }

    Optional<Place> findPlace(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return places.stream().filter(place -> place.isIn(lower)).findFirst();
    }
}
