package org.loomwright.core.loom;

import org.jspecify.annotations.Nullable;

import java.util.List;

/**
 * The covering of one segment, as found or as wanted.
 *
 * @param covering code of the covering in the catalogue
 * @param baseYarn letters of the main yarn colour, or null where the covering is not woven
 * @param tracers letters of the tracer yarns, in order round the braid
 * @param picksPer25Mm picks counted on 25 mm, or null when not counted
 * @param lacquerCoats coats of lacquer, 0 for none
 * @param evidence why we believe it
 */
public record Finish(
        String covering,
        @Nullable String baseYarn,
        List<String> tracers,
        @Nullable Integer picksPer25Mm,
        int lacquerCoats,
        Evidence evidence) {

    public Finish {
        tracers = List.copyOf(tracers);
    }
}
