package org.loomwright.document.sheet.style;

/** The sections of a job sheet in their order; they number themselves, so that one can point to another. */
public enum Part {
    /** Whose job it is, what it is about. */
    SUMMARY("Summary"),
    /** The loom to true proportions. */
    DRAWING("Loom drawing"),
    /** Which wires go in and come out. */
    WIRES("Wires to add, change and remove"),
    /** What to cut from which drum. */
    CUT_LIST("Cut list"),
    /** Every segment. */
    BRANCHES("Branch schedule"),
    /** Cuts through what changes. */
    CROSS_SECTIONS("Bundle cross-sections of the branches that change"),
    /** Currents, fuses, charging and what was found about them. */
    ELECTRICAL("Electrical summary"),
    /** Colours of new wires, and which may be mixed up. */
    COLOURS("Colours"),
    /** What the customer takes as it is. */
    ACCEPTED("Findings that the customer accepts"),
    /** Open questions. */
    OPEN("What nobody has said yet"),
    /** What figures are held against. */
    LIMITS("Checks, their limits and sources"),
    /** What must be thought of. */
    CAUTIONS("Cautions"),
    /** Boxes to sign. */
    SIGN_OFF("Sign-off");

    private final String words;

    Part(String words) {
        this.words = words;
    }

    /** @return number and name, as its heading and its bookmark show them */
    public String title() {
        return number() + "  " + words;
    }

    /** @return how a sentence points to it, for example {@code section 7} */
    public String reference() {
        return "section " + number();
    }

    private int number() {
        return ordinal() + 1;
    }
}
