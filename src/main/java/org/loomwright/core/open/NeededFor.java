package org.loomwright.core.open;

/** What an answer is needed for. */
public enum NeededFor {
    /** To name a price. */
    PRICE,
    /** To do the work. */
    BUILD,
    /** For both. */
    BOTH;

    /** @return whether the answer is needed to name a price */
    public boolean isForPrice() {
        return this != BUILD;
    }

    /** @return whether the answer is needed to do the work */
    public boolean isForBuild() {
        return this != PRICE;
    }
}
