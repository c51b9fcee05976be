package org.loomwright.api;

import org.loomwright.core.workorder.WorkOrderStatus;

import java.util.Optional;
import java.util.stream.Stream;

/** How a work order's status is written in JSON and in addresses: {@code awaiting-loom}. */
final class StatusWords {

    private StatusWords() {}

    static String of(WorkOrderStatus status) {
        return status.words().replace(' ', '-');
    }

    static Optional<WorkOrderStatus> find(String word) {
        return Stream.of(WorkOrderStatus.values())
                .filter(status -> of(status).equals(word))
                .findFirst();
    }
}
