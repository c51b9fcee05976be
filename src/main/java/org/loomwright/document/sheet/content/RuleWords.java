package org.loomwright.document.sheet.content;

import java.util.Map;

/** Names of rules for a person. */
public final class RuleWords {

    private static final Map<String, String> NAMES =
            Map.ofEntries(
                    Map.entry("electrical.ammeter-overloaded", "ammeter beyond its scale"),
                    Map.entry("electrical.charge-negative", "battery loses charge"),
                    Map.entry("electrical.contact-overloaded", "contact beyond its rating"),
                    Map.entry("electrical.contact-rating-unknown", "contact of unknown rating"),
                    Map.entry("electrical.current-over-rating", "wire beyond its rating"),
                    Map.entry("electrical.earth-point-crowded", "too many rings on one screw"),
                    Map.entry("electrical.fuse-far-from-source", "fuse far from its source"),
                    Map.entry("electrical.fuse-marking", "what is marked on an old fuse"),
                    Map.entry("electrical.fuse-over-wire", "fuse larger than its wire"),
                    Map.entry("electrical.fuse-under-load", "fuse small for its load"),
                    Map.entry("electrical.load-unknown", "load of unknown current"),
                    Map.entry("electrical.no-room", "no room on a point"),
                    Map.entry("electrical.relay-overloaded", "relay beyond its rating"),
                    Map.entry("electrical.short-fuse-too-slow", "short: fuse opens too late"),
                    Map.entry("electrical.short-fuse-unknown", "short: fuse not known"),
                    Map.entry("electrical.short-unfused", "short: no fuse before the wire"),
                    Map.entry("electrical.switch-overloaded", "switch beyond its rating"),
                    Map.entry("electrical.terminal-size", "terminal of another wire size"),
                    Map.entry("electrical.unfused-new", "new wire without a fuse"),
                    Map.entry("electrical.unfused-original", "without a fuse as original"),
                    Map.entry("electrical.voltage-drop", "voltage lost out and back"),
                    Map.entry("colour.clash", "one colour at one place"),
                    Map.entry("colour.custom", "colour of this loom alone"),
                    Map.entry("colour.not-in-code", "colour that no list has"),
                    Map.entry("colour.new-differs", "new wire differs from the code"),
                    Map.entry("open.fitted", "when terminals are fitted"),
                    Map.entry("open.room", "room on a point"),
                    Map.entry("open.readings", "second readings of a length"),
                    Map.entry("open.load", "current of a load"),
                    Map.entry("open.stock-load", "current of a recorded load"),
                    Map.entry("open.fuse-rating", "marking of a fuse"),
                    Map.entry("open.stock-fuse-rating", "marking of a recorded fuse"),
                    Map.entry("open.contact-rating", "rating of contacts"),
                    Map.entry("open.passes", "which way an opening is passed"),
                    Map.entry("open.condition", "condition of a wire"),
                    Map.entry("open.not-standard", "what is not standard"),
                    Map.entry("opening.new-too-small", "new opening too small"),
                    Map.entry("opening.no-longer-passes", "no longer passes its opening"),
                    Map.entry("opening.too-small", "opening too small"));

    private RuleWords() {}

    /** @return the rule in words; where it has no name of its own, its code without the family */
    public static String of(String code) {
        String name = NAMES.get(code);
        return name == null ? code.substring(code.indexOf('.') + 1).replace('-', ' ') : name;
    }
}
