package org.loomwright.document.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.quantity.Length;
import org.loomwright.document.sheet.content.CutGroup;
import org.loomwright.document.sheet.content.WireChange;
import org.loomwright.document.sheet.content.WireChange.Kind;
import org.loomwright.document.sheet.content.WireWork;

class WireWorkTest {

    private final JobSheet sheet = TestJobs.spotLamps();
    private final WireWork work =
            new WireWork(sheet.change(), sheet.amendments(), sheet.catalogue());

    @Test
    void everyWireIsAddedChangedRemovedOrKept() {
        assertThat(work.of(Kind.ADDED)).map(wire -> wire.wire().id()).containsExactly("W10", "W11");
        assertThat(work.of(Kind.CHANGED)).map(wire -> wire.wire().id()).containsExactly("W2", "W3");
        assertThat(work.of(Kind.REMOVED)).map(wire -> wire.wire().id()).containsExactly("W5");
    }

    @Test
    void aWireMovedToAPointAtTheSamePlaceIsKeptAndOneOfAnotherSizeIsMade() {
        assertThat(work.made()).map(wire -> wire.wire().id()).containsExactly("W10", "W11", "W3");
        assertThat(work.of(Kind.CHANGED))
                .flatMap(WireChange::differences)
                .containsExactly(
                        "end A on fuse box F1, 1, was on fuse box F1, 2",
                        "size 28/0.30, was 14/0.30");
    }

    @Test
    void eachChangeNamesTheOrdersBehindIt() {
        assertThat(work.of(Kind.CHANGED))
                .map(WireChange::why)
                .containsExactly("A6", "A5: 55 W bulbs");
        assertThat(work.of(Kind.REMOVED))
                .map(WireChange::why)
                .containsExactly("A7: not needed any more");
    }

    @Test
    void theCutGroupsHoldEveryWireToMakeOnceAndAddUp() {
        var groups = CutGroup.of(work, sheet.change());

        assertThat(groups)
                .map(group -> group.wireClass().colour() + " " + group.wireClass().size())
                .containsExactly("B 14/0.30", "UR 28/0.30", "UY 14/0.30");
        assertThat(Length.sum(groups.stream().map(CutGroup::total).toList()))
                .isEqualTo(work.cutInAll())
                .isEqualTo(Length.ofMillimetres(1650 + 2310 + 1950));
    }

    @Test
    void onlyTheNewSegmentIsANewBranchAndAllThatWireRunsThroughIsTouched() {
        assertThat(work.newBranches()).map(SegmentChange::segment).containsExactly("S6");
        assertThat(work.touched())
                .map(SegmentChange::segment)
                .containsExactlyInAnyOrder("S1", "S2", "S2X", "S3", "S4", "S5", "S6");
        assertThat(work.coveredLengthTouched())
                .isEqualTo(Length.ofMillimetres(600 + 700 + 300 + 300 + 450 + 550 + 400));
    }
}
