package org.loomwright.core.open;

import java.util.Locale;

/**
 * The rules that ask, with what each answer is needed for and how much it weighs. Weights are our own choice: 10 to 12 for a part that is
 * missing, because it changes what is made; 3 to 6 for a fact that decides about parts; 1 or 2 for a fact that decides about a step of the
 * work. A missing part weighs at least as much as all the facts that a wire, or a fuse with two wires, brings with it.
 */
public enum OpenRule {
    /** An added consumer that no source reaches. */
    FEED(NeededFor.BOTH, 12),
    /** An added consumer from which no way leads back. */
    RETURN(NeededFor.BOTH, 12),
    /** An added consumer without a fuse before it. */
    FUSE(NeededFor.BOTH, 10),
    /** An added consumer that nothing switches. */
    SWITCH(NeededFor.BOTH, 10),
    /** An added consumer of much current without a relay. */
    RELAY(NeededFor.BOTH, 10),
    /** An added gauge without a sender. */
    SENDER(NeededFor.BOTH, 10),
    /** Something that has to work with the ignition off, and cannot. */
    ALWAYS_LIVE(NeededFor.BOTH, 10),
    /** Added lamps without a tell-tale. */
    TELL_TALE(NeededFor.BOTH, 10),
    /** An added gauge that is not lit. */
    PANEL_LAMP(NeededFor.BOTH, 8),
    /** An added consumer that is earthed through its body, without a word that it can be. */
    OWN_EARTH(NeededFor.BOTH, 6),
    /** An added consumer of which nobody knows what it serves. Weighs as much as the most that the answer can lead to. */
    SERVICE(NeededFor.BOTH, 0),
    /** An added consumer without its current. */
    LOAD(NeededFor.BOTH, 5),
    /** A recorded consumer without its current. */
    STOCK_LOAD(NeededFor.BUILD, 2),
    /** An added thing that works with one earth only, and nobody said which. */
    POLARITY(NeededFor.BOTH, 5),
    /** An added thing on a vehicle that is not a 12 V one. */
    VOLTAGE(NeededFor.BOTH, 4),
    /** A fuse that protects additions, without its marking. */
    FUSE_RATING(NeededFor.BOTH, 4),
    /** A recorded fuse without its marking. */
    STOCK_FUSE_RATING(NeededFor.BUILD, 2),
    /** Contacts that carry additions, without their rating. */
    CONTACT_RATING(NeededFor.BUILD, 3),
    /** A recorded point that feeds an addition, and nobody counted its room. */
    ROOM(NeededFor.BUILD, 2),
    /** A leg that is covered anew, with ends of which nobody said when their terminals are fitted. */
    FITTED(NeededFor.BUILD, 2),
    /** A recorded finish that was assumed. */
    FINISH(NeededFor.BOTH, 4),
    /** A woven finish without its picks. */
    PICKS(NeededFor.BOTH, 2),
    /** A woven finish without a word about lacquer. */
    LACQUER(NeededFor.BOTH, 2),
    /** A recorded length that was not measured again, where others were. */
    READINGS(NeededFor.BUILD, 1),
    /** An opening through which a large part may go either way. */
    PASSES(NeededFor.BUILD, 2),
    /** A recorded wire at which nobody looked. */
    CONDITION(NeededFor.BOTH, 2),
    /** A vehicle without a word about what is not standard. */
    NOT_STANDARD(NeededFor.BOTH, 3);

    private final NeededFor neededFor;
    private final int weight;

    OpenRule(NeededFor neededFor, int weight) {
        this.neededFor = neededFor;
        this.weight = weight;
    }

    /** @return the stable name of the rule, for example {@code open.tell-tale} */
    public String code() {
        return "open." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @return what its answers are needed for */
    public NeededFor neededFor() {
        return neededFor;
    }

    /** @return how much one answer weighs; 0 where that depends on the tables */
    public int weight() {
        return weight;
    }
}
