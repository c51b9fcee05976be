package org.loomwright.api;

import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.exchange.JsonThing;

import tools.jackson.databind.JsonNode;

/** What is sent to freeze a specification: who does it. */
final class FreezeBody {

    static final int LONGEST_NAME = 100;

    private FreezeBody() {}

    static Outcome<String> read(JsonNode json) {
        return JsonThing.read(
                json, "", ThingKind.SPECIFICATION, thing -> thing.line("by", LONGEST_NAME));
    }
}
