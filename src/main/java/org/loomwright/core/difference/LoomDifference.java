package org.loomwright.core.difference;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.loom.Loom;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The difference between any two looms: every part that only one of them has, and every field in which a part that both have
 * differs. Parts are matched by kind and id: a segment that was split shows as one changed and one added. Empty exactly when the
 * looms are equal.
 *
 * <p>Deterministic; entries are in the order of {@link org.loomwright.core.finding.ThingKind} (loom, vehicle, nodes, segments,
 * openings, devices, points, wires, checks) and then of ids. Cost: linear in the size of both looms, apart from sorting.
 *
 * @param entries one for each part that differs
 */
public record LoomDifference(List<Entry> entries) {

    /**
     * One part that differs.
     *
     * @param thing kind and id, without a place in a document
     * @param change what became of it
     * @param fields what differs in it, in the order in which a part is described; for an added or removed part all that is said of it
     */
    public record Entry(Subject thing, Change change, List<FieldChange> fields) {

        public Entry {
            fields = List.copyOf(fields);
        }

        /** @return the entry in one line, for example {@code wire W3 changed: colour G, was GN} */
        public String text() {
            String said =
                    fields.stream()
                            .map(field -> field.text(change))
                            .collect(Collectors.joining("; "));
            return thing.words() + " " + change.words() + (said.isEmpty() ? "" : ": " + said);
        }
    }

    /** What became of a part. */
    public enum Change {
        /** Only the loom after has it. */
        ADDED("added"),
        /** Only the loom before has it. */
        REMOVED("removed"),
        /** Both have it, and it differs. */
        CHANGED("changed");

        private final String words;

        Change(String words) {
            this.words = words;
        }

        /** @return the change as a reader sees it */
        public String words() {
            return words;
        }
    }

    /**
     * One field of a part, with its values in words and with units.
     *
     * @param field what the field is called
     * @param before its value in the loom before, or null where it says nothing
     * @param after its value in the loom after, or null where it says nothing
     */
    public record FieldChange(String field, @Nullable String before, @Nullable String after) {

        private String text(Change change) {
            return switch (change) {
                case ADDED -> field + " " + words(after);
                case REMOVED -> field + " " + words(before);
                case CHANGED -> "%s %s, was %s".formatted(field, words(after), words(before));
            };
        }

        private static String words(@Nullable String value) {
            return value == null ? "none" : value;
        }
    }

    public LoomDifference {
        entries = List.copyOf(entries);
    }

    /**
     * @param before a loom
     * @param after any other loom
     * @return in what they differ
     */
    public static LoomDifference between(Loom before, Loom after) {
        Map<Subject, Map<String, @Nullable String>> old = PartWords.of(before);
        Map<Subject, Map<String, @Nullable String>> present = PartWords.of(after);
        Map<Subject, Entry> entries = new TreeMap<>(PartWords.ORDER);
        old.forEach(
                (thing, fields) -> {
                    if (!fields.equals(present.get(thing))) {
                        entries.put(thing, entry(thing, fields, present.get(thing)));
                    }
                });
        present.forEach(
                (thing, fields) -> {
                    if (!old.containsKey(thing)) {
                        entries.put(thing, entry(thing, null, fields));
                    }
                });
        return new LoomDifference(List.copyOf(entries.values()));
    }

    /** @return whether the looms are equal */
    public boolean isEmpty() {
        return entries.isEmpty();
    }

    private static Entry entry(
            Subject thing,
            @Nullable Map<String, @Nullable String> before,
            @Nullable Map<String, @Nullable String> after) {
        Change change =
                before == null ? Change.ADDED : after == null ? Change.REMOVED : Change.CHANGED;
        return new Entry(
                thing,
                change,
                changes(before == null ? Map.of() : before, after == null ? Map.of() : after));
    }

    private static List<FieldChange> changes(
            Map<String, @Nullable String> before, Map<String, @Nullable String> after) {
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        List<FieldChange> changes = new ArrayList<>();
        for (String name : names) {
            FieldChange change = new FieldChange(name, before.get(name), after.get(name));
            if (!Objects.equals(change.before(), change.after())) {
                changes.add(change);
            }
        }
        return changes;
    }
}
