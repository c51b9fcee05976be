package org.loomwright.core.electrical.fault;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What is lost when one fuse opens.
 *
 * @param device id of the fuse or the fuse box
 * @param from one of its points
 * @param to another of its points
 * @param dark devices that get nothing any more, also because a relay no longer pulls in
 */
public record FuseLoss(String device, String from, String to, SortedSet<String> dark) {

    public FuseLoss {
        dark = Collections.unmodifiableSortedSet(new TreeSet<>(dark));
    }
}
