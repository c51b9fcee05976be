package org.loomwright.core.amendment;

import java.util.List;

/** Where a part of an amended loom comes from. */
public sealed interface Origin {

    /** The part is as it was recorded. */
    Origin STOCK = new Stock();

    /** As it was recorded. */
    record Stock() implements Origin {}

    /**
     * Made or changed.
     *
     * @param act what was done
     * @param amendments ids of the amendments that made it what it is: the one that added or cut it first, then those that
     *     changed it, in the order of the list
     */
    record ByAmendment(Act act, List<String> amendments) implements Origin {

        public ByAmendment {
            amendments = List.copyOf(amendments);
        }

        /** @return the amendment that added or cut the part; for a changed part the first that changed it */
        public String amendment() {
            return amendments.getFirst();
        }
    }

    /** What amendments did to a part. */
    enum Act {
        /** The part was not there before. */
        ADDED,
        /** The part was recorded and differs now. */
        CHANGED,
        /** A piece of a segment that was there: a breakout was made at one of its ends. */
        CUT
    }
}
