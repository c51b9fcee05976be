package org.loomwright.core.finding;

/** How much a finding matters. */
public enum Severity {
    /** Worth knowing; nothing needs doing. */
    NOTE,
    /** Someone should look before the work goes on. */
    WARNING,
    /** Wrong: the work cannot go on like this. */
    FAULT
}
