package org.loomwright.core.finder;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.LookAlike;

import java.util.Optional;
import java.util.Set;

/**
 * What somebody sees of a body or of a tracer.
 *
 * @param kind how it was seen
 * @param letters the colours that it may be, where colours were named
 * @param faded whether it was said to be faded
 */
record SeenPart(Kind kind, Set<String> letters, boolean faded) {

    enum Kind {
        /** Nobody said anything about it. */
        UNSAID,
        /** It is there but its colour cannot be told. */
        UNKNOWN,
        /** There is none. */
        NONE,
        /** It is one of the letters. */
        NAMED,
        /** It is dark or light, so it is one of the letters. */
        SHADE
    }

    static final SeenPart UNSAID = new SeenPart(Kind.UNSAID, Set.of(), false);
    static final SeenPart UNKNOWN = new SeenPart(Kind.UNKNOWN, Set.of(), false);
    static final SeenPart NONE = new SeenPart(Kind.NONE, Set.of(), false);

    SeenPart {
        letters = Set.copyOf(letters);
    }

    static SeenPart exactly(String letters) {
        return new SeenPart(Kind.NAMED, Set.of(letters), false);
    }

    /** What the tracer of a code written in letters is. */
    static SeenPart exactlyOrNone(@Nullable String letters) {
        return letters == null ? NONE : exactly(letters);
    }

    /** How well a body fits, if it does at all. */
    Optional<Fit> body(String actual, boolean hasFaded, ColourCode code) {
        return switch (kind) {
            case UNSAID, UNKNOWN, NONE -> Optional.of(Fit.silent());
            case NAMED, SHADE -> named(actual, hasFaded, code);
        };
    }

    /** How well a tracer fits, if it does at all. */
    Optional<Fit> tracer(@Nullable String actual, boolean hasFaded, ColourCode code) {
        return switch (kind) {
            case UNSAID ->
                    Optional.of(
                            actual == null
                                    ? Fit.of(1_000, "")
                                    : Fit.of(600, "its tracer may not have been seen"));
            case NONE ->
                    Optional.of(
                            actual == null
                                    ? Fit.of(1_000, "")
                                    : Fit.of(300, "its tracer may have gone"));
            case UNKNOWN ->
                    actual == null ? Optional.empty() : Optional.of(Fit.of(700, "has a tracer"));
            case NAMED, SHADE -> actual == null ? Optional.empty() : named(actual, hasFaded, code);
        };
    }

    private Optional<Fit> named(String actual, boolean hasFaded, ColourCode code) {
        if (letters.contains(actual)) {
            int share = kind == Kind.SHADE ? 800 : letters.size() > 1 ? 900 : 1_000;
            return Optional.of(Fit.of(share, ""));
        }
        return letters.stream()
                .sorted()
                .flatMap(seen -> code.between(seen, actual).stream())
                .map(pair -> alike(pair, actual, hasFaded))
                .max(Fit.WORST_FIRST);
    }

    private Fit alike(LookAlike pair, String actual, boolean hasFaded) {
        boolean isLikely = pair.when() == LookAlike.When.FADED && (faded || hasFaded);
        String other = pair.a().equals(actual) ? pair.b() : pair.a();
        return Fit.of(
                isLikely ? 600 : 450,
                "%s is taken for %s %s (%s)"
                        .formatted(
                                actual,
                                other,
                                pair.when().words(),
                                pair.provenance().status().words()));
    }
}
