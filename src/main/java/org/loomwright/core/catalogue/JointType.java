package org.loomwright.core.catalogue;

/**
 * Where several wire ends meet without a device: a sleeve for bullets, or rings under one screw.
 *
 * @param code short name, for example {@code snap-four-way}
 * @param name the joint in words
 * @param ends how many wire ends find room, at least 2
 * @param groups how many separate connections it makes, each of at least 2 ends
 * @param terminal code of the terminal that goes in
 * @param provenance where the row comes from
 */
public record JointType(
        String code, String name, int ends, int groups, String terminal, Provenance provenance) {

    public JointType {
        if (groups < 1 || ends < 2 * groups || ends % groups != 0) {
            throw new IllegalArgumentException(
                    "%s cannot join %d ends in %d groups".formatted(code, ends, groups));
        }
    }

    /** @return how many wire ends each of its connections takes */
    public int endsOfAGroup() {
        return ends / groups;
    }
}
