package org.loomwright.api;

import io.swagger.v3.oas.annotations.Parameter;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finder.Sighting;
import org.loomwright.core.quantity.Length;

import java.math.BigDecimal;
import java.util.Objects;

/** What somebody sees of a wire, as the parameters of a request. */
record SightingParameters(
        @Parameter(
                        description =
                                "In letters or words, for example GN, or 'green or blue with a dark"
                                        + " tracer'.")
                @Nullable String colour,
        @Parameter(description = "Conductor size of the catalogue, for example 14/.012.")
                @Nullable String size,
        @Parameter(description = "Number of strands counted.") @Nullable Integer strands,
        @Parameter(description = "Diameter over the insulation.") @Nullable BigDecimal outsideMm,
        @Parameter(description = "Where on the vehicle: a breakout, end or device by id or words.")
                @Nullable String place) {

    private static final int DECIMALS = 3;

    Sighting sighting() {
        return new Sighting(
                Objects.requireNonNullElse(colour, ""),
                size,
                strands,
                outsideMm == null ? null : outside(outsideMm),
                Objects.requireNonNullElse(place, ""));
    }

    private static Length outside(BigDecimal millimetres) {
        if (millimetres.stripTrailingZeros().scale() > DECIMALS
                || millimetres.signum() <= 0
                || millimetres.compareTo(BigDecimal.valueOf(100)) > 0) {
            throw InvalidRequestException.of(
                    "finder.diameter-not-sane",
                    "The parameter 'outsideMm' must be more than 0 and at most 100 mm, with at most"
                            + " three decimals.");
        }
        return Length.ofMillimetres(millimetres);
    }
}
