package org.loomwright.core.finder;

import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.code.ColourCode;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What somebody sees of a wire's colour: one of these.
 *
 * @param options body and tracer together, at least one
 */
record SeenColour(List<Option> options) {

    /** Of the share of a colour what the body counts, in thousandths; own choice, because a body is easier to see. */
    private static final int BODY = 600;

    record Option(SeenPart body, SeenPart tracer) {

        boolean saysNothing() {
            return body.kind() != SeenPart.Kind.NAMED
                    && body.kind() != SeenPart.Kind.SHADE
                    && tracer.kind() == SeenPart.Kind.UNSAID;
        }
    }

    SeenColour {
        options = List.copyOf(options);
    }

    boolean saysNothing() {
        return options.stream().allMatch(Option::saysNothing);
    }

    /** How well a colour fits, if it does at all. */
    Optional<Fit> fit(WireColour actual, boolean hasFaded, ColourCode code) {
        return options.stream()
                .map(option -> fit(option, actual, hasFaded, code))
                .flatMap(Optional::stream)
                .max(Fit.WORST_FIRST);
    }

    private static Optional<Fit> fit(
            Option option, WireColour actual, boolean hasFaded, ColourCode code) {
        Optional<Fit> body = option.body().body(actual.body(), hasFaded, code);
        Optional<Fit> tracer = option.tracer().tracer(actual.tracer(), hasFaded, code);
        if (body.isEmpty() || tracer.isEmpty()) {
            return Optional.empty();
        }
        int share = (body.get().share() * BODY + tracer.get().share() * (1_000 - BODY)) / 1_000;
        List<String> reasons = new ArrayList<>();
        Stream.of(body.get().reason(), tracer.get().reason())
                .filter(reason -> !reason.isEmpty())
                .forEach(reasons::add);
        String exact = share == 1_000 ? "the colour is exactly that" : "the colour may be that";
        return Optional.of(Fit.of(share, reasons.isEmpty() ? exact : String.join("; ", reasons)));
    }

    static SeenColour exactly(WireColour colour) {
        return new SeenColour(
                List.of(
                        new Option(
                                SeenPart.exactly(Objects.requireNonNull(colour.body())),
                                SeenPart.exactlyOrNone(colour.tracer()))));
    }
}
