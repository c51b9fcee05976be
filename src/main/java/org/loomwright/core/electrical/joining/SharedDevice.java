package org.loomwright.core.electrical.joining;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * A device that both looms describe. It belongs to the loom whose name for it does not say that it is reached through another; else to
 * the one that knows more points of it, else more facts, else to the first.
 *
 * @param first as the first loom has it
 * @param second as the second loom has it
 */
record SharedDevice(Device first, Device second) {

    private static final String ELSEWHERE = "reached through";

    private static final List<ToIntFunction<Device>> WEIGHTS =
            List.of(
                    device -> device.name().toLowerCase(Locale.ROOT).contains(ELSEWHERE) ? 0 : 1,
                    device -> device.points().size(),
                    device -> facts(device).size());

    boolean belongsToFirst() {
        for (ToIntFunction<Device> weight : WEIGHTS) {
            int difference = weight.applyAsInt(first) - weight.applyAsInt(second);
            if (difference != 0) {
                return difference > 0;
            }
        }
        return true;
    }

    private Device owned() {
        return belongsToFirst() ? first : second;
    }

    private Device other() {
        return belongsToFirst() ? second : first;
    }

    /** What its owner says, with the points and facts that only the other loom knows. */
    Device merged() {
        Map<String, Point> points = new LinkedHashMap<>();
        owned().points().forEach(point -> points.put(point.name(), point));
        other().points().forEach(point -> points.putIfAbsent(point.name(), point));
        boolean saysNothing = owned().particulars().equals(Particulars.NONE);
        return new Device(
                owned().id(),
                owned().name(),
                owned().kind(),
                owned().load() == null ? other().load() : owned().load(),
                saysNothing ? other().particulars() : owned().particulars(),
                List.copyOf(points.values()));
    }

    List<Finding> contradictions(String firstLoom, String secondLoom) {
        List<Finding> findings = new ArrayList<>();
        Map<String, String> inSecond = facts(second);
        facts(first)
                .forEach(
                        (fact, one) -> {
                            String other = inSecond.get(fact);
                            if (other != null && !other.equals(one)) {
                                findings.add(
                                        Finding.warning(
                                                "electrical.looms-disagree",
                                                Subject.of(ThingKind.DEVICE, first.id()),
                                                "Of %s '%s' says %s %s, '%s' %s; %s counts."
                                                        .formatted(
                                                                first.id(),
                                                                firstLoom,
                                                                fact,
                                                                one,
                                                                secondLoom,
                                                                other,
                                                                belongsToFirst() ? one : other)));
                            }
                        });
        return findings;
    }

    private static Map<String, String> facts(Device device) {
        Particulars particulars = device.particulars();
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("kind", device.kind().words());
        if (device.load() != null) {
            facts.put("load", device.load().toString());
        }
        if (particulars.rating() != null) {
            facts.put("rating", particulars.rating().toString());
        }
        if (particulars.voltage() != null) {
            facts.put("voltage", particulars.voltage().toString());
        }
        if (particulars.serves() != null) {
            facts.put("service", particulars.serves());
        }
        if (particulars.needsEarth() != null) {
            facts.put("earth", particulars.needsEarth().name().toLowerCase(Locale.ROOT));
        }
        return facts;
    }
}
