package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.quantity.Ratio;

/**
 * Which share of its supply a load may lose out and back.
 *
 * <p>Source: handbooks disagree: 10 % at a component (key V1, and a period fault manual, Y2), 5 % in an engine maker's manual (V2), 3 %
 * for critical and 10 % for other circuits of small craft (V4). The widest published figure is followed as the limit, because everybody
 * calls what is beyond it too much; the strictest published one that fits the kind of circuit as the aim of new work. What is only
 * known from memory is never a limit.
 *
 * @param kind of circuit
 * @param limit what must not be exceeded, more than 0
 * @param aim what new work should keep, no more than the limit
 */
public record DropLimit(CircuitKind kind, Sourced<Ratio> limit, Sourced<Ratio> aim) {

    public DropLimit {
        if (limit.value().millionths() <= 0 || aim.value().compareTo(limit.value()) > 0) {
            throw new IllegalArgumentException(
                    "%s circuits aim at %s, beyond their limit of %s"
                            .formatted(kind, aim.value(), limit.value()));
        }
    }
}
