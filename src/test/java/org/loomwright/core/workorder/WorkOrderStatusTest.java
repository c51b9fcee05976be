package org.loomwright.core.workorder;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

class WorkOrderStatusTest {

    @Test
    void everyStatusCanBeReachedFromAnEnquiry() {
        assertThat(reachableFrom(WorkOrderStatus.ENQUIRY))
                .isEqualTo(EnumSet.allOf(WorkOrderStatus.class));
    }

    @Test
    void aJobIsOverOnlyWhenClosedDeclinedOrCancelled() {
        assertThat(WorkOrderStatus.values())
                .filteredOn(WorkOrderStatus::isOver)
                .containsExactly(
                        WorkOrderStatus.CLOSED,
                        WorkOrderStatus.DECLINED,
                        WorkOrderStatus.CANCELLED);
    }

    @Test
    void fromEveryOpenStatusAJobCanComeToAnEnd() {
        assertThat(WorkOrderStatus.values())
                .allSatisfy(
                        status ->
                                assertThat(reachableFrom(status))
                                        .anyMatch(WorkOrderStatus::isOver));
    }

    @Test
    void noCoverGoesOnWithoutTheHoldPointBeingPossible() {
        assertThat(WorkOrderStatus.IN_WORK.canMoveTo(WorkOrderStatus.AT_HOLD_POINT)).isTrue();
        assertThat(WorkOrderStatus.AT_HOLD_POINT.canMoveTo(WorkOrderStatus.TESTING)).isFalse();
    }

    @Test
    void holdingAndStoppingNeedAReason() {
        assertThat(WorkOrderStatus.values())
                .filteredOn(WorkOrderStatus::needsReason)
                .containsExactlyInAnyOrder(
                        WorkOrderStatus.ON_HOLD,
                        WorkOrderStatus.DECLINED,
                        WorkOrderStatus.CANCELLED);
    }

    private static Set<WorkOrderStatus> reachableFrom(WorkOrderStatus start) {
        Set<WorkOrderStatus> reached = EnumSet.noneOf(WorkOrderStatus.class);
        Deque<WorkOrderStatus> waiting = new ArrayDeque<>(List.of(start));
        while (!waiting.isEmpty()) {
            WorkOrderStatus status = waiting.removeLast();
            if (reached.add(status)) {
                waiting.addAll(status.next());
            }
        }
        return reached;
    }
}
