package org.loomwright.api;

import org.loomwright.app.WorkOrderStore;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.loomwright.exchange.JsonThing;

import tools.jackson.databind.JsonNode;

import java.util.Objects;

/**
 * What is sent to open a work order.
 *
 * @param terms what is agreed
 * @param by who opens it
 */
record WorkOrderBody(WorkOrderStore.Terms terms, String by) {

    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_NOTES = 2_000;
    private static final int HASH_LENGTH = 64;

    /**
     * A move as it is sent.
     *
     * @param to where the work order is to go
     * @param by who moves it
     * @param reason why; may be empty
     */
    record MoveBody(WorkOrderStatus to, String by, String reason) {}

    static Outcome<WorkOrderBody> read(JsonNode json) {
        return JsonThing.read(
                json,
                "",
                ThingKind.WORK_ORDER,
                thing ->
                        new WorkOrderBody(
                                new WorkOrderStore.Terms(
                                        thing.line("revisionHash", HASH_LENGTH),
                                        thing.line("customer", LONGEST_NAME),
                                        thing.line("workshop", LONGEST_NAME),
                                        thing.findDay("dueDate"),
                                        optional(thing, "notes")),
                                thing.line("by", LONGEST_NAME)));
    }

    static Outcome<MoveBody> readMove(JsonNode json) {
        return JsonThing.read(
                json,
                "",
                ThingKind.WORK_ORDER,
                thing ->
                        new MoveBody(
                                thing.choice("to", WorkOrderStatus.class),
                                thing.line("by", LONGEST_NAME),
                                optional(thing, "reason")));
    }

    private static String optional(JsonThing thing, String field) {
        String text = Objects.requireNonNullElse(thing.findText(field), "");
        return text.isEmpty() ? text : thing.line(field, LONGEST_NOTES);
    }
}
