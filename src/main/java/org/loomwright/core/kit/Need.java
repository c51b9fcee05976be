package org.loomwright.core.kit;

/**
 * What the vehicle must be like before a kit is any use.
 *
 * @param kind which property of the vehicle
 * @param value what it must be
 * @param text why, in one sentence
 * @param when under which answers
 */
public record Need(Kind kind, String value, String text, When when) {

    /** Properties of a vehicle. */
    public enum Kind {
        /** Which battery terminal goes to the body: {@code positive} or {@code negative}. */
        EARTH,
        /** The system's voltage in volts. */
        VOLTS,
        /** The code of a service that some device of the loom must belong to. */
        SERVICE
    }
}
