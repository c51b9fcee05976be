package org.loomwright.app;

/** A loom is so large that it cannot be calculated while somebody waits. */
public final class TooMuchWorkException extends RefusalException {

    private final String detail;

    private TooMuchWorkException(String message, String detail) {
        super(message);
        this.detail = detail;
    }

    /** @return its bundles cannot be packed */
    public static TooMuchWorkException ofPacking(String loom) {
        return new TooMuchWorkException(
                "packing the bundles of loom %s takes too long".formatted(loom),
                "Loom %s has so many different bundles of so many wires that packing them takes minutes. Analyse it in parts, or with packing set to normal."
                        .formatted(loom));
    }

    /** @return its electrical side cannot be looked at */
    public static TooMuchWorkException ofElectrics(String loom, int wires, int most) {
        return new TooMuchWorkException(
                "the electrical side of loom %s takes too long".formatted(loom),
                "Loom %s has %d wires; its electrical side can be looked at up to %d. Look at it in parts."
                        .formatted(loom, wires, most));
    }

    /** @return what is too much, and what can be done, for whoever asked */
    public String detail() {
        return detail;
    }
}
